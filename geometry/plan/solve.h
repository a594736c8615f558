#pragma once

#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// Everything the program shows, from a head and what the user entered. Pure and thread-safe.
/// Refuses (GeometryError): a setting out of its range, naming it and the range; a start or a treatment site
/// that would fall off the head; an unknown landmark label.
[[nodiscard]] Plan solve(const Head& head, const Case& entered,
                         TapeDistances tapes = TapeDistances::worked_out);

/// The check of a case's settings that solve() makes first; the same sentences.
void check_settings(const Case& entered);

}  // namespace scalpmark::geometry
