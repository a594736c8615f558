#pragma once

#include "geometry/head/head.h"
#include "geometry/tapes/tape.h"

namespace scalpmark::geometry {

/// The parasagittal tape of `mm` forward from a skin point (backward if negative): in the plane square to the
/// head's left-right axis, towards the nose. Refuses (GeometryError) a skin that ends before the tape does.
[[nodiscard]] Tape forward_tape(const Head& head, const SurfacePoint& from, double mm);

}  // namespace scalpmark::geometry
