#pragma once

#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// Everything the program shows, from a head and what the user entered. Pure and thread-safe. What lies under
/// the placements is added by with_cortex() (plan_cortex.h).
/// Refuses (GeometryError): a setting out of its range, naming it and the range; a start or a treatment site
/// that would fall off the head; an unknown landmark label.
[[nodiscard]] Plan solve(const Head& head, const Case& the_case,
                         TapeDistances tapes = TapeDistances::worked_out);

}  // namespace scalpmark::geometry
