#pragma once

#include <cstddef>

namespace scalpmark::geometry {

/// The number of a vertex, face or corner, which are ints, as the index of a std::vector.
[[nodiscard]] constexpr std::size_t at(int number) {
  return static_cast<std::size_t>(number);
}

}  // namespace scalpmark::geometry
