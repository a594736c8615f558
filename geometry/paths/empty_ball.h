#pragma once

#include <Eigen/Core>

#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// A ball into which no triangle of the skin reaches. Paths over the skin go around it, whether the skin is
/// closed or not.
struct EmptyBall {
  Eigen::Vector3d centre = Eigen::Vector3d::Zero();
  double radius_mm = 0;  ///< 0: no ball; lengths are straight then
};

/// The length of the shortest path from a to b in space that stays out of the ball, mm: straight, or by two
/// tangents and an arc. No path over the skin is shorter. Points inside the ball by rounding count as on it.
[[nodiscard]] double length_around(const EmptyBall& ball, const Eigen::Vector3d& a, const Eigen::Vector3d& b);

/// An empty ball that a path from a to b has to go around as far as some dozens of tries can make it. Where
/// none lies in the way, one beside it.
[[nodiscard]] EmptyBall ball_between(const Surface& skin, const Eigen::Vector3d& a, const Eigen::Vector3d& b);

}  // namespace scalpmark::geometry
