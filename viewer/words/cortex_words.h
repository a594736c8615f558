#pragma once

#include <string>
#include <vector>

#include "geometry/brain/cortex.h"

namespace scalpmark::viewer {

/// "16 to 19 mm": from the skin to the nearest cortex, and to the middle of the patch (geometry::CortexHit),
/// in whole millimetres, which is more than a template knows of anybody.
[[nodiscard]] std::string depth_in_words(const geometry::CortexHit& hit);

/// "mostly Brodmann area 6"; "Brodmann area 9, some 46", words that two regions begin with said once.
[[nodiscard]] std::string regions_in_words(const std::vector<geometry::RegionShare>& shares);

}  // namespace scalpmark::viewer
