#pragma once

#include "geometry/coil/coil_setup.h"
#include "geometry/head/head.h"
#include "geometry/plan/plan.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// What shows where a coil tried by hand has its pulse and its edge marks: the same marks and lines as of the
/// plan's coil (things/edge_marks), without words, which the page adds.
[[nodiscard]] Part coil_in_hand(const geometry::Head& head, const geometry::CoilSetup& setup,
                                const geometry::Placement& placement);

}  // namespace scalpmark::viewer
