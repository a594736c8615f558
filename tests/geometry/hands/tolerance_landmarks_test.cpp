// A landmark as site: what is read and drawn on the way to it counts as well.
#include <Eigen/Geometry>
#include <array>
#include <catch2/catch.hpp>
#include <cmath>

#include "tests/support/ball_tolerance.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Matrix2d;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// A tape on the ball through three of its points, in closed form: a circle of the plane through them.
struct Circle {
  Vector3d middle, from, square;  ///< square: a quarter further on
  double radius, whole;           ///< whole: radians from a to b

  Circle(const Vector3d& a, const Vector3d& over, const Vector3d& b) {
    Vector3d normal = (over - a).cross(b - over).normalized();
    middle = normal * normal.dot(a);
    radius = (a - middle).norm();
    from = (a - middle) / radius;
    square = normal.cross(from);
    whole = turn_of(b);
  }
  double turn_of(const Vector3d& p) const {
    const double t = std::atan2((p - middle).dot(square), (p - middle).dot(from));
    return t < 0 ? t + 2 * M_PI : t;
  }
  Vector3d at(double share, double more_mm) const {
    const double t = share * whole + more_mm / radius;
    return middle + radius * (std::cos(t) * from + std::sin(t) * square);
  }
};

/// F3 on the ball, its way there read wrongly (mm): the vertex forward and to the right, then Fpz, T7, Oz,
/// T8, F7, F8, Fz and F3 itself along their tapes.
Vector3d f3(const std::array<double, 10>& off) {
  const Vector3d nasion(0, R, 0), inion(0, -R, 0), left(-R, 0, 0), right(R, 0, 0);
  const Vector3d vertex = R * Vector3d(off[1], off[0], R).normalized();
  const Circle midline(nasion, vertex, inion), coronal(left, vertex, right);
  const Vector3d fpz = midline.at(0.1, off[2]), oz = midline.at(0.9, off[4]);
  const Circle beside_left(fpz, coronal.at(0.1, off[3]), oz), beside_right(fpz, coronal.at(0.9, off[5]), oz);
  const Vector3d fz = midline.at(0.3, off[8]);
  const Circle row(beside_left.at(0.3, off[6]), fz, beside_right.at(0.3, off[7]));
  return row.at(0.5 * row.turn_of(fz) / row.whole, off[9]);
}

}  // namespace

TEST_CASE("a landmark site carries the reading errors of all the landmarks that it is found by") {
  HandErrors e = no_errors();
  e.tape_mm = 2;
  Case c = plain_case();
  use_one_rule(c, MarkRule::drop);
  c.treatment.rule = TreatmentRule::landmark;
  c.treatment.label = "F3";
  const Plan plan = plan_of(ball(), c);
  CHECK((plan.treatment.pulse - f3({})).norm() < 0.1);
  // A share p of a tape takes two readings, sqrt(1 + p2) of one's error.
  const std::array<double, 10> shares{0.5, 0.5, 0.1, 0.1, 0.9, 0.9, 0.3, 0.3, 0.3, 0.25};
  Matrix2d squares = Matrix2d::Zero();
  for (size_t k = 0; k < shares.size(); ++k) {
    std::array<double, 10> more{}, less{};
    more[k] = 2 * std::sqrt(1 + shares[k] * shares[k]);
    less[k] = -more[k];
    const Vector3d d = 0.5 * (f3(more) - f3(less));
    const Vector2d flat(d.dot(plan.treatment.forward), -d.dot(plan.treatment.inward));
    squares += flat * flat.transpose();
  }
  const Tolerance t = tolerance(ball(), c, plan, e, {.placements = 0, .compare_ways = false});
  check_close(t.first_order.covariance, squares, 0.05 * squares.trace());
  // Its own tape alone would be much less.
  CHECK(squares.trace() > 1.5 * 4 * (1 + 0.25 * 0.25));
}

TEST_CASE("the pencil marks of the landmarks on the way count as well") {
  HandErrors e = no_errors();
  e.mark_mm = 2;
  Case c = plain_case();
  const auto marks = [&](const char* label) {
    c.treatment.rule = TreatmentRule::landmark;
    c.treatment.label = label;
    const Tolerance t = tolerance(ball(), c, plan_of(ball(), c), e, {.placements = 0, .compare_ways = false});
    return alone(t, Cause::marks);
  };
  // C3 takes the vertex alone, F3 seven more.
  CHECK(marks("F3") > 1.1 * marks("C3"));
}
