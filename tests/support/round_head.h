#pragma once

#include <cmath>

#include "tests/support/heads.h"

/// Heads that many tests of the kernel look at, made once a program.
namespace scalpmark::tests {

inline constexpr double ball_mm = 90;  ///< radius of the idealised head

inline const geometry::Head& ball() {
  static const geometry::Head head = sphere_head(ball_mm, 6);
  return head;
}

inline const geometry::Head& coarse_ball() {
  static const geometry::Head head = sphere_head(ball_mm, 5);
  return head;
}

/// Where gaps under a coil are looked at, facets are finer.
inline const geometry::Head& fine_ball() {
  static const geometry::Head head = sphere_head(ball_mm, 7);
  return head;
}

inline const geometry::Head& lop() {
  static const geometry::Head head = lopsided_head(6);
  return head;
}

inline const geometry::Head& coarse_lop() {
  static const geometry::Head head = lopsided_head(5);
  return head;
}

/// Along the great circle between two points of the ball.
inline double arc_mm(const Eigen::Vector3d& a, const Eigen::Vector3d& b) {
  return ball_mm * std::atan2(a.cross(b).norm(), a.dot(b));
}

}  // namespace scalpmark::tests
