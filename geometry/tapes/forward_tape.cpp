#include "geometry/tapes/forward_tape.h"

#include <cmath>

namespace scalpmark::geometry {

Tape forward_tape(const Surface& skin, const HeadAxes& axes, const SurfacePoint& from, double mm) {
  const Eigen::Vector3d forward = forward_along(axes, skin.smooth_normal(from));
  return Tape::along(skin, from, axes.right, mm < 0 ? Eigen::Vector3d(-forward) : forward, std::abs(mm));
}

}  // namespace scalpmark::geometry
