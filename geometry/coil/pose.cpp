#include "geometry/coil/pose.h"

#include <Eigen/Geometry>
#include <cmath>

#include "geometry/coil/underside.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

CoilPose tilted(const CoilPose& pose, const Tilt& tilt) {
  constexpr double radians = M_PI / 180;
  const Eigen::Quaterniond turn(Eigen::AngleAxisd(tilt.roll_deg * radians, pose.front) *
                                Eigen::AngleAxisd(tilt.pitch_deg * radians, pose.right()));
  return {pose.pulse, turn * pose.normal, turn * pose.front};
}

Vector3d contact_normal(const Surface& skin, const SurfacePoint& at, double patch_mm) {
  const Vector3d centre = skin.position(at), facing = skin.smooth_normal(at);
  const double patch2 = patch_mm * patch_mm;
  Vector3d sum = Vector3d::Zero();
  const auto weight = [&](const Vector3d& q) {
    const double r2 = (q - centre).squaredNorm() / patch2;
    return r2 < 1 ? (1 - r2) * (1 - r2) : 0.0;
  };
  skin.visit(
      [&](const Vector3d& low, const Vector3d& high) {
        return (centre.cwiseMax(low).cwiseMin(high) - centre).squaredNorm() < patch2;
      },
      [&](int face) {
        const Vector3d &a = skin.corner(face, 0), &b = skin.corner(face, 1), &c = skin.corner(face, 2);
        const Vector3d area = (b - a).cross(c - a);
        // The far wall of something thin (an ear) is not what the coil settles on.
        if (area.dot(facing) <= 0) return;
        sum += (weight(0.5 * (a + b)) + weight(0.5 * (b + c)) + weight(0.5 * (c + a))) * area;
      });
  return sum.norm() > 0 ? Vector3d(sum.normalized()) : facing;
}

double clearing_lift(const Surface& skin, const Coil& coil, const CoilPose& pose) {
  double lift = 0;
  for (const Underside& underside : undersides(coil))
    if (const auto rise = highest_rise(skin, underside, pose, lift)) lift = rise->mm;
  return lift;
}

}  // namespace scalpmark::geometry
