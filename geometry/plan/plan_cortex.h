#pragma once

#include "geometry/head/head.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// The plan of this head with what lies under each of its placements, looked up in the cortex that the head
/// has by now (or has no more); all else as it was. For a plan that was solved before its head had one.
[[nodiscard]] Plan with_cortex(Plan plan, const Head& head);

}  // namespace scalpmark::geometry
