#pragma once

#include "geometry/head/head.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// Tape distances of any skin point: looked up where the head's distance fields are there, else along their
/// own shortest paths in one propagation (some 0.05 s on 20 000 triangles).
[[nodiscard]] TapeFrom tape_from(const Head& head, const SurfacePoint& point);

}  // namespace scalpmark::geometry
