#pragma once

#include "geometry/surface/directions.h"
#include "geometry/tapes/tape.h"

namespace scalpmark::geometry {

/// The parasagittal tape of `mm` forward from a skin point (backward if negative): in the plane square to the
/// head's left-right axis, towards the nose. Refuses (GeometryError) a skin that ends before the tape does.
[[nodiscard]] Tape forward_tape(const Surface& skin, const HeadAxes& axes, const SurfacePoint& from,
                                double mm);

}  // namespace scalpmark::geometry
