#pragma once

#include <Eigen/Core>

namespace scalpmark::geometry {

/// Barycentric weights of the point of triangle a, b, c nearest to q.
[[nodiscard]] Eigen::Vector3d closest_weights(const Eigen::Vector3d& q, const Eigen::Vector3d& a,
                                              const Eigen::Vector3d& b, const Eigen::Vector3d& c);

/// Weights made non-negative with sum 1.
[[nodiscard]] Eigen::Vector3d clamp_weights(const Eigen::Vector3d& weights);

/// The angle at `a` between the edges to b and c, radians.
[[nodiscard]] double corner_angle(const Eigen::Vector3d& a, const Eigen::Vector3d& b,
                                  const Eigen::Vector3d& c);

/// `v` without its part along the unit vector `normal`, made unit again.
[[nodiscard]] Eigen::Vector3d tangent_part(const Eigen::Vector3d& v, const Eigen::Vector3d& normal);

/// Twice the area between two ways in a plane, positive where b turns to the left of a.
[[nodiscard]] inline double cross(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
  return a.x() * b.y() - a.y() * b.x();
}

}  // namespace scalpmark::geometry
