#pragma once

#include <nlohmann/json.hpp>

#include "geometry/plan/side_view.h"

namespace scalpmark::viewer {

/// Head and coil cut along the coil's front axis, for the page's picture of the rules: mm to 0.01.
[[nodiscard]] nlohmann::ordered_json side_json(const geometry::SideView& view);

}  // namespace scalpmark::viewer
