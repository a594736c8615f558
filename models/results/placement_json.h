#pragma once

#include <nlohmann/json.hpp>

#include "geometry/plan/plan.h"

namespace scalpmark::models {

/// A placement as the files write it (PLACEMENT of models/schema/plan.schema.json): lengths to 0.001 mm, null
/// for what is not there or was left out.
[[nodiscard]] nlohmann::ordered_json placement_json(const geometry::Placement& p);

}  // namespace scalpmark::models
