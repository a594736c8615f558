#pragma once

#include "geometry/base/message.h"
#include "geometry/hands/tolerance.h"

namespace scalpmark::viewer {

/// "Finding the four points": a cause's name, for a table.
[[nodiscard]] geometry::Message cause_name(geometry::Cause cause);

/// "Half of the trials lie within 0.8 cm of the site, 95 of 100 within 1.9 cm."
[[nodiscard]] geometry::Message tolerance_sentence(const geometry::Tolerance& tolerance);

/// The largest share, and the assumption that it follows from: the error entered, and where that comes from.
/// Empty without any error.
[[nodiscard]] geometry::Message largest_share_sentence(const geometry::Tolerance& tolerance,
                                                       const geometry::HandErrors& errors);

/// How far off at the cortex, and how deep that is taken to be.
[[nodiscard]] geometry::Message depth_sentence(const geometry::Tolerance& tolerance);

/// How much of the field at the wanted place placements leave, in a round model head. Empty where none is
/// known.
[[nodiscard]] geometry::Message field_left_sentence(const geometry::Tolerance& tolerance);

/// "Site mark and one front mark": a way to mark, for a table.
[[nodiscard]] geometry::Message way_name(geometry::MarkingWay way);

/// The best way to mark here, and what it gains. Empty where none was compared.
[[nodiscard]] geometry::Message best_way_sentence(const geometry::Tolerance& tolerance);

/// The ways to mark that were left out, and why. Empty where none was.
[[nodiscard]] geometry::Message left_out_sentence(const geometry::Tolerance& tolerance);

/// The one habit that would shrink a tolerance most, a sentence.
[[nodiscard]] geometry::Message habit_sentence(const geometry::Tolerance& tolerance);

}  // namespace scalpmark::viewer
