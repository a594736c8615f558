#pragma once
// Hands on a ball, where what they spread is known in closed form.
#include <Eigen/Core>
#include <catch2/catch.hpp>

#include "geometry/hands/tolerance.h"
#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"

namespace scalpmark::tests {

inline constexpr double R = ball_mm;

inline geometry::Case plain_case(geometry::Side side = geometry::Side::left) {
  geometry::Case c;
  c.coil.model = flat_coil();
  geometry::use_one_rule(c, geometry::MarkRule::tape);
  c.side = side;
  return c;
}

inline geometry::Plan plan_of(const geometry::Head& head, const geometry::Case& c) {
  return geometry::solve(head, c, geometry::TapeDistances::left_out);
}

inline geometry::HandErrors no_errors() {
  return {0, 0, 0, 0, 0, 0, 0, 0, 0, 0};
}

inline geometry::Tolerance first_order(const geometry::Case& c, const geometry::HandErrors& e) {
  return geometry::tolerance(ball(), c, plan_of(ball(), c), e, {.placements = 0});
}

inline double alone(const geometry::Tolerance& t, geometry::Cause cause) {
  for (const auto& c : t.causes)
    if (c.cause == cause) return c.alone_mm;
  return -1;
}

inline void check_close(const Eigen::Matrix2d& a, const Eigen::Matrix2d& b, double margin) {
  INFO(a << "\n\n" << b);
  CHECK((a - b).cwiseAbs().maxCoeff() < margin);
}

}  // namespace scalpmark::tests
