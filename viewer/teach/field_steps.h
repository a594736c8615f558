#pragma once

#include <vector>

#include "geometry/head/head.h"
#include "viewer/teach/lesson.h"

namespace scalpmark::viewer {

/// Two steps after the procedure: why the gap matters, and why the coil is held at its angle, each with what
/// the induced field in a round model head says. None for a coil of which no field is known, nor the second
/// for one whose field is a ring. Some tens of milliseconds.
[[nodiscard]] std::vector<LessonStep> field_steps(const geometry::Head& head, const geometry::Case& the_case,
                                                  const geometry::Plan& plan);

}  // namespace scalpmark::viewer
