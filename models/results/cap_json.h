#pragma once

#include <nlohmann/json.hpp>

#include "geometry/hands/cap_today.h"

namespace scalpmark::models {

/// How today's cap sits, as the group that a check's file has for it (models/schema/check.schema.json): the
/// slip with what each part is known to, the move that undoes it, and where the coil laid by the marks on the
/// cap puts its pulse. Parts that the readings do not say are null. Lengths are written to 0.001 mm; signs
/// are those of geometry/hands/cap.h, and toward the midline counts as in a check.
[[nodiscard]] nlohmann::ordered_json cap_json(const geometry::CapToday& today);

}  // namespace scalpmark::models
