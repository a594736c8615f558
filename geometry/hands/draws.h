#pragma once

#include <cmath>
#include <cstdint>

#include "geometry/base/angles.h"

namespace scalpmark::geometry {

/// The finalizer of SplitMix64 (Steele et al. 2014, OOPSLA).
[[nodiscard]] inline std::uint64_t mixed(std::uint64_t x) {
  x += 0x9e3779b97f4a7c15U;
  x = (x ^ (x >> 30)) * 0xbf58476d1ce4e5b9U;
  x = (x ^ (x >> 27)) * 0x94d049bb133111ebU;
  return x ^ (x >> 31);
}

/// Random numbers that depend on seed, placement and stream alone.
class Draws {
public:
  Draws(std::uint64_t seed, int placement)
      : state_(mixed(mixed(seed) ^ static_cast<std::uint64_t>(placement))) {}

  /// Above 0, up to 1.
  [[nodiscard]] double uniform(int stream) const {
    return (static_cast<double>(mixed(state_ + static_cast<std::uint64_t>(stream)) >> 11) + 1) * 0x1p-53;
  }
  /// Standard normal (Box and Muller 1958).
  [[nodiscard]] double normal(int stream) const {
    return std::sqrt(-2 * std::log(uniform(2 * stream))) * std::cos(2 * pi * uniform(2 * stream + 1));
  }

private:
  std::uint64_t state_;
};

}  // namespace scalpmark::geometry
