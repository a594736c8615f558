#pragma once

#include "geometry/brain/cortex.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// The plan or the placement with what lies under it, looked up in a cortex that lies under the same head;
/// all else as it was. Without a cortex (null): with nothing under it.
[[nodiscard]] Plan with_cortex(Plan plan, const Cortex* cortex);
[[nodiscard]] Placement with_cortex(Placement placement, const Cortex* cortex);

}  // namespace scalpmark::geometry
