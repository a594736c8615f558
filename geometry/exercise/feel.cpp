#include "geometry/exercise/feel.h"

#include <algorithm>
#include <cmath>

#include "geometry/base/angles.h"

namespace scalpmark::geometry {

namespace {

/// 1 on the flat part, 0 where nothing is felt any more, smooth between.
double share_at(double mm) {
  const double t = std::clamp((mm - flat_mm) / (felt_mm - flat_mm), 0.0, 1.0);
  return 0.5 * (1 + std::cos(pi * t));
}

}  // namespace

Felt feel(const Head& head, const Eigen::Vector3d& at) {
  const Fiducials& points = head.fiducials().at;
  const double bump = share_at((at - points.inion).norm()), hollow = share_at((at - points.nasion).norm());
  return bump >= hollow ? Felt{bump_mm * bump, bump} : Felt{hollow_mm * hollow, hollow};
}

}  // namespace scalpmark::geometry
