#pragma once

#include <algorithm>
#include <cstdint>

namespace scalpmark::models::generic {

/// One number for an edge, whichever way round its ends are given.
inline std::uint64_t edge_key(int a, int b) {
  const auto low = static_cast<std::uint64_t>(std::min(a, b)),
             high = static_cast<std::uint64_t>(std::max(a, b));
  return low << 32 | high;
}

}  // namespace scalpmark::models::generic
