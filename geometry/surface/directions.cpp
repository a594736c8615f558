#include "geometry/surface/directions.h"

#include <Eigen/Geometry>

#include "geometry/surface/triangle_math.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

Vector3d forward_along(const HeadAxes& axes, const Vector3d& normal) {
  constexpr double no_direction = 1e-6;  // sine of the angle between the skin's direction and left-right
  Vector3d forward = normal.cross(axes.right);
  if (forward.norm() < no_direction) forward = axes.front;
  return tangent_part(forward, normal);
}

Directions directions_at(const Surface& skin, const HeadAxes& axes, Side side, const SurfacePoint& at) {
  const Vector3d normal = skin.smooth_normal(at);
  Directions d;
  d.forward = forward_along(axes, normal);
  const Vector3d to_left = normal.cross(d.forward);
  d.outward = side == Side::left ? to_left : Vector3d(-to_left);
  return d;
}

}  // namespace scalpmark::geometry
