#include "geometry/tapes/forward_tape.h"

#include <cmath>

#include "geometry/plan/placement.h"

namespace scalpmark::geometry {

Tape forward_tape(const Head& head, const SurfacePoint& from, double mm) {
  const Eigen::Vector3d forward = directions_at(head, Side::left, from).forward;
  return Tape::along(head.skin(), from, head.axes().right, mm < 0 ? Eigen::Vector3d(-forward) : forward,
                     std::abs(mm));
}

}  // namespace scalpmark::geometry
