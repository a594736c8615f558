#pragma once

#include "geometry/case.h"
#include "geometry/head.h"
#include "geometry/plan.h"

namespace scalpmark::geometry {

/// Lays the coil with its centre over the skin point `pulse`: pose, lift, the three marks, gaps, tape
/// distances. The coil's face is tangent to the skin averaged over the coil's contact patch, then lifted
/// until no part of the coil is inside the head, plus the case's lift. `side` says which way is toward the
/// midline.
[[nodiscard]] Placement place_coil(const Head& head, const Case& entered, Side side,
                                   const SurfacePoint& pulse);

/// The reverse: the placement whose mark by the case's rule falls on `mark`. Refuses (GeometryError) a mark
/// that no pulse point reaches.
[[nodiscard]] Placement place_by_mark(const Head& head, const Case& entered, Side side,
                                      const SurfacePoint& mark);

}  // namespace scalpmark::geometry
