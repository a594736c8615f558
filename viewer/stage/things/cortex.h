#pragma once

#include <string>
#include <vector>

#include "geometry/brain/cortex.h"

namespace scalpmark::viewer {

/// "Brodmann area 9 (61 %), 46 (22 %)": the first one or two regions of a place; the words that both begin
/// with are said once.
[[nodiscard]] std::string shares_in_words(const std::vector<geometry::RegionShare>& shares);

}  // namespace scalpmark::viewer
