#pragma once

#include "geometry/base/message.h"
#include "geometry/hands/tolerance.h"

namespace scalpmark::viewer {

/// "Finding the four points": a cause's name, for a table.
[[nodiscard]] geometry::Message cause_name(geometry::Cause cause);

/// "Half of the placements lie within 0.8 cm of the site, 95 of 100 within 1.9 cm."
[[nodiscard]] geometry::Message tolerance_sentence(const geometry::Tolerance& tolerance);

/// The one habit that would shrink a tolerance most, a sentence.
[[nodiscard]] geometry::Message habit_sentence(const geometry::Tolerance& tolerance);

}  // namespace scalpmark::viewer
