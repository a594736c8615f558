#include "geometry/surface/patch_normal.h"

#include <Eigen/Geometry>

namespace scalpmark::geometry {

using Eigen::Vector3d;

Vector3d patch_normal(const Surface& skin, const SurfacePoint& at, double patch_mm) {
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

}  // namespace scalpmark::geometry
