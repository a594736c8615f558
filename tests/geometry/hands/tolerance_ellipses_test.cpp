// What the spread's ellipses hold, against placements that did not make them.
#include <Eigen/Dense>
#include <catch2/catch.hpp>
#include <cmath>

#include "tests/support/ball_tolerance.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Matrix2d;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// The share of a plan's placements, as another tolerance tried them, within an ellipse.
double held(const SkinEllipse& e, const Tolerance& fresh, const Plan& plan) {
  const double a = e.long_axis_deg * M_PI / 180;
  const Vector2d along(std::cos(a), std::sin(a)), across(-along[1], along[0]);
  int count = 0;
  for (const auto& p : fresh.pulses) {
    const Vector3d d = p - plan.treatment.pulse;
    Vector2d flat(d.dot(plan.treatment.forward), -d.dot(plan.treatment.inward));
    if (flat.norm() > 0) flat *= d.norm() / flat.norm();
    const Vector2d q = flat - e.centre;
    if (std::hypot(q.dot(along) / e.long_mm, q.dot(across) / e.short_mm) <= 1) ++count;
  }
  return static_cast<double>(count) / static_cast<double>(fresh.pulses.size());
}

}  // namespace

// 3000 fresh placements know a share of a half to 0.9 % and of 95 % to 0.4 % (one standard deviation:
// sqrt(p (1 - p) / n)); those that made the ellipse as much again.
TEST_CASE("the ellipses hold half and most of other placements than those that made them", "[slow]") {
  for (const MarkRule rule : {MarkRule::tape, MarkRule::drop}) {
    Case c = plain_case();
    use_one_rule(c, rule);
    const Plan plan = plan_of(ball(), c);
    const auto run = [&](std::uint64_t seed) {
      return tolerance(ball(), c, plan, {}, {.placements = 3000, .seed = seed, .compare_ways = false});
    };
    const Tolerance t = run(9), fresh = run(1009);
    REQUIRE(t.pulses.size() == static_cast<size_t>(3000 - t.lost));
    CHECK(held(t.sampled.half, fresh, plan) == Approx(0.5).margin(0.035));
    CHECK(held(t.sampled.most, fresh, plan) == Approx(0.95).margin(0.016));
    // The first order does not know how the head curves.
    CHECK(held(t.first_order.half, fresh, plan) == Approx(0.5).margin(0.05));
    CHECK(held(t.first_order.most, fresh, plan) == Approx(0.95).margin(0.03));
    CHECK(t.sampled.most.long_mm > t.sampled.half.long_mm);
    CHECK(t.half_mm < t.most_mm);
    for (const auto& p : t.sampled.most.outline) CHECK(std::abs(p.norm() - R) < 0.05);
    CHECK((t.sampled.most.outline.front() - t.sampled.most.outline.back()).norm() < 1e-9);
  }
}

// A coil that is pitched slides along its front axis; rolled, by a third of what its edge seems to move,
// since edge mark, site mark and angle are here all as sure and share it.
TEST_CASE("the ellipses of a cause that is nearly a line hold half and most of it too", "[slow]") {
  HandErrors e = no_errors();
  e.tilt_deg = 3;
  Case c = plain_case();
  use_one_rule(c, MarkRule::drop);
  const Plan plan = plan_of(ball(), c);
  const auto run = [&](std::uint64_t seed) {
    return tolerance(ball(), c, plan, e, {.placements = 3000, .seed = seed, .compare_ways = false});
  };
  const Tolerance t = run(2), fresh = run(1002);
  const Eigen::SelfAdjointEigenSolver<Matrix2d> axes(t.first_order.covariance);
  CHECK(axes.eigenvalues()[1] > 12 * axes.eigenvalues()[0]);
  CHECK(held(t.first_order.half, fresh, plan) == Approx(0.5).margin(0.05));
  CHECK(held(t.first_order.most, fresh, plan) == Approx(0.95).margin(0.03));
  CHECK(held(t.sampled.half, fresh, plan) == Approx(0.5).margin(0.035));
}

TEST_CASE("the same seed gives the same placements on any number of threads, another seed others", "[slow]") {
  const Case c = plain_case();
  const Plan plan = plan_of(ball(), c);
  const auto run = [&](std::uint64_t seed, int threads) {
    return tolerance(ball(), c, plan, {}, {.placements = 200, .seed = seed, .threads = threads});
  };
  const Tolerance one = run(1, 1), five = run(1, 5), other = run(2, 1);
  REQUIRE(one.pulses.size() == five.pulses.size());
  for (size_t i = 0; i < one.pulses.size(); ++i) CHECK(one.pulses[i] == five.pulses[i]);
  CHECK(one.sampled.mean_mm == five.sampled.mean_mm);
  CHECK(one.to_halve->cause == five.to_halve->cause);
  CHECK(other.pulses.front() != one.pulses.front());
  CHECK(other.sampled.mean_mm == Approx(one.sampled.mean_mm).epsilon(0.3));
}
