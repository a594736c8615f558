#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace scalpmark::models {

/// One byte a voxel, 0 or 1.
using Mask = std::vector<std::uint8_t>;

/// How the voxels of a block lie in memory: the first index runs fastest.
struct Grid {
  std::array<int, 3> size{};
  std::array<std::ptrdiff_t, 3> step{};

  explicit Grid(const std::array<int, 3>& s)
      : size(s), step{1, s[0], static_cast<std::ptrdiff_t>(s[0]) * s[1]} {}
  [[nodiscard]] std::size_t count() const {
    return static_cast<std::size_t>(step[2]) * static_cast<std::size_t>(size[2]);
  }
  [[nodiscard]] std::array<int, 3> place(std::size_t v) const {
    const std::size_t nx = static_cast<std::size_t>(size[0]), ny = static_cast<std::size_t>(size[1]);
    return {static_cast<int>(v % nx), static_cast<int>(v / nx % ny), static_cast<int>(v / (nx * ny))};
  }
  /// Calls visit(index, axis) for the up to six voxels that share a side with this one.
  template <class Visit>
  void for_neighbours(std::size_t v, Visit visit) const {
    const std::array<int, 3> p = place(v);
    for (std::size_t a = 0; a < 3; ++a) {
      if (p[a] > 0) visit(static_cast<std::size_t>(static_cast<std::ptrdiff_t>(v) - step[a]), a);
      if (p[a] + 1 < size[a]) visit(static_cast<std::size_t>(static_cast<std::ptrdiff_t>(v) + step[a]), a);
    }
  }
};

}  // namespace scalpmark::models
