#pragma once

#include <vector>

#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// About how far every vertex is from `source` along the skin, mm; infinity on a separate piece of skin. A
/// wave that runs from triangle to triangle (Dijkstra's order), each taking the source to be where the
/// distances of two of its corners put it in its plane (Novotni and Klein 2002). Within 1 mm and
/// 1.5 percent (tested), and some hundred times faster than a DistanceField: for weighing ways to
/// measure against each other, not for lengths that anyone reads.
[[nodiscard]] std::vector<double> rough_distances(const Surface& skin, const SurfacePoint& source);

}  // namespace scalpmark::geometry
