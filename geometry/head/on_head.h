#pragma once

#include "geometry/head/head.h"
#include "geometry/surface/directions.h"
#include "geometry/tapes/forward_tape.h"

namespace scalpmark::geometry {

/// The same as for a skin and its axes (surface/directions.h, tapes/forward_tape.h), on a head.
[[nodiscard]] inline Directions directions_at(const Head& head, Side side, const SurfacePoint& at) {
  return directions_at(head.skin(), head.axes(), side, at);
}
[[nodiscard]] inline Tape forward_tape(const Head& head, const SurfacePoint& from, double mm) {
  return forward_tape(head.skin(), head.axes(), from, mm);
}

}  // namespace scalpmark::geometry
