#include "geometry/hands/tolerance.h"

#include <Eigen/Dense>
#include <atomic>
#include <catch2/catch.hpp>
#include <cmath>
#include <functional>
#include <random>

#include "geometry/base/error.h"
#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/sentence.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Matrix2d;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double R = 90;

const Head& ball() {
  static const Head head = sphere_head(R, 6);
  return head;
}

Case plain_case(Side side = Side::left) {
  Case c;
  c.coil.model = flat_coil();
  use_one_rule(c, MarkRule::tape);
  c.side = side;
  return c;
}

Plan plan_of(const Head& head, const Case& c) {
  return solve(head, c, TapeDistances::left_out);
}

HandErrors no_errors() {
  return {0, 0, 0, 0, 0, 0, 0};
}

Tolerance first_order(const Case& c, const HandErrors& e) {
  return tolerance(ball(), c, plan_of(ball(), c), e, {.placements = 0});
}

double share(const Tolerance& t, Cause cause) {
  for (const auto& c : t.causes)
    if (c.cause == cause) return c.share;
  return -1;
}

double alone(const Tolerance& t, Cause cause) {
  for (const auto& c : t.causes)
    if (c.cause == cause) return c.alone_mm;
  return -1;
}

/// The whole procedure on a perfect sphere whose tragi, nasion and inion lie on the equator, in closed form
/// (great circles, small circles, rotations): patient's left, tape rule. What may slip is handed in.
struct Sphere {
  double lateral = 50, anterior = 10, distance = 50, reach = 60, angle_deg = 45;
  double lay_reach = 60, lay_angle_deg = 45;
  Vector2d shift{0, 0};  ///< of the edge mark: forward, outward

  static Vector3d forward(const Vector3d& n) { return n.cross(Vector3d::UnitX()).normalized(); }
  static Vector3d outward(const Vector3d& n) { return n.cross(forward(n)); }
  static Vector3d go(const Vector3d& n, const Vector3d& way, double mm) {
    return std::cos(mm / R) * n + std::sin(mm / R) * way;
  }
  static Vector3d front(const Vector3d& n, double angle_deg) {
    const double a = angle_deg * M_PI / 180;
    return std::cos(a) * forward(n) - std::sin(a) * outward(n);
  }
  /// Along the parasagittal circle, radius R sqrt(1 - x2).
  static Vector3d go_forward(const Vector3d& n, double mm) {
    return Eigen::AngleAxisd(-mm / (R * std::sqrt(1 - n.x() * n.x())), Vector3d::UnitX()) * n;
  }
  Vector3d pulse() const {
    const Vector3d start = go_forward({-std::sin(lateral / R), 0, std::cos(lateral / R)}, anterior);
    const Vector3d site = go_forward(start, distance);
    Vector3d mark = go(site, front(site, angle_deg), reach);
    if (shift.norm() > 0)
      mark = (R * mark + shift[0] * forward(mark) + shift[1] * outward(mark)).normalized();
    // Fixed point: the place from which the mark lies that far in that direction.
    Vector3d n = site;
    for (int i = 0; i < 200; ++i)
      n = (n + 0.7 * (mark - go(n, front(n, lay_angle_deg), lay_reach))).normalized();
    return R * n;
  }
};

/// Mean squares of the closed form's offsets from the planned pulse by central differences.
Matrix2d expected(const std::vector<std::function<void(Sphere&, double)>>& slips) {
  const Vector3d aim = Sphere().pulse(), n = aim.normalized();
  const auto off = [&](const std::function<void(Sphere&, double)>& slip, double by) {
    Sphere s;
    slip(s, by);
    const Vector3d d = s.pulse() - aim;
    return Vector2d(d.dot(Sphere::forward(n)), d.dot(Sphere::outward(n)));
  };
  Matrix2d sum = Matrix2d::Zero();
  for (const auto& slip : slips) {
    const Vector2d d = 0.5 * (off(slip, 1) - off(slip, -1));
    sum += d * d.transpose();
  }
  return sum;
}

void check_close(const Matrix2d& a, const Matrix2d& b, double margin) {
  INFO(a << "\n\n" << b);
  CHECK((a - b).cwiseAbs().maxCoeff() < margin);
}

}  // namespace

TEST_CASE("no errors, no spread") {
  const Tolerance t =
      tolerance(ball(), plain_case(), plan_of(ball(), plain_case()), no_errors(), {.placements = 50});
  CHECK(t.first_order.mean_mm == 0);
  CHECK(t.sampled.mean_mm < 0.03);  // the kernel's own rounding
  CHECK(t.lost == 0);
  CHECK_FALSE(t.to_halve);
}

TEST_CASE("work that is given up ends at once with what its asker throws") {
  struct GivenUp {};
  std::atomic<int> asked{0};
  ToleranceOptions options{.placements = 100000};
  options.between = [&] {
    if (++asked > 30) throw GivenUp{};
  };
  const Plan plan = plan_of(ball(), plain_case());
  CHECK_THROWS_AS(tolerance(ball(), plain_case(), plan, HandErrors{}, options), GivenUp);
  CHECK(asked < 100);  // each thread ends at its next question
}

TEST_CASE("the tape's readings spread the pulse as the closed forms on a sphere say") {
  HandErrors e = no_errors();
  e.tape_mm = 2;
  const double halving = std::sqrt(1.25);
  // The vertex halved wrongly by v forward tilts the coronal tape by v / R about the ear-to-ear line; to the
  // side it adds to the lateral reading.
  Matrix2d squares = expected({
      [](Sphere& s, double by) { s.lateral += 2 * by; },
      [&](Sphere& s, double by) { s.lateral += 2 * halving * by; },
      [](Sphere& s, double by) { s.anterior += 2 * by; },
      [](Sphere& s, double by) { s.distance += 2 * by; },
      [](Sphere& s, double by) { s.reach += 2 * by; },
      // Tilting about the ear-to-ear line moves along the parasagittal circle by its share of the radius.
      [&](Sphere& s, double by) { s.anterior += std::cos(50 / R) * 2 * halving * by; },
  });
  const Tolerance t = first_order(plain_case(), e);
  check_close(t.first_order.covariance, squares, 0.1);
  CHECK(share(t, Cause::tape) == Approx(1));
}

TEST_CASE("an angle that is off swings the pulse about the edge mark; a cap that is off takes it along") {
  HandErrors e = no_errors();
  e.angle_deg = 5;
  check_close(first_order(plain_case(), e).first_order.covariance,
              expected({[](Sphere& s, double by) { s.lay_angle_deg += 5 * by; }}), 0.15);
  e = no_errors();
  e.cap_shift_mm = 4;
  check_close(first_order(plain_case(), e).first_order.covariance,
              expected({[](Sphere& s, double by) {
                          s.shift = {4 * by, 0};
                        },
                        [](Sphere& s, double by) {
                          s.shift = {0, 4 * by};
                        }}),
              0.15);
}

// Three and a half sentences of geometry: tangent at its centre, the coil's axis goes through the pulse point
// whatever its tilt, so by the tape rule tilt moves nothing on the skin. By the drop rule the edge hovers g =
// R - sqrt(R2 - d2) over its mark (22.9 mm), and a tilt by t moves what is straight below it by about g tan
// t.
TEST_CASE("tilt moves the pulse by the gap under the edge, where the edge is looked past") {
  HandErrors e = no_errors();
  e.tilt_deg = 3;
  Case c = plain_case();
  CHECK(first_order(c, e).first_order.mean_mm < 0.05);
  use_one_rule(c, MarkRule::drop);
  const double gap = R - std::sqrt(R * R - 60 * 60);
  const Eigen::SelfAdjointEigenSolver<Matrix2d> axes(first_order(c, e).first_order.covariance);
  // Sideways (roll) that is all; along the front axis (pitch) the sight line leans and the edge rises too.
  CHECK(std::sqrt(axes.eigenvalues()[0]) == Approx(gap * std::tan(3 * M_PI / 180)).epsilon(0.25));
}

TEST_CASE("another marking rule half of the time moves the pulse by what the rules differ") {
  HandErrors e = no_errors();
  e.other_rule_percent = 50;
  const Tolerance t =
      tolerance(ball(), plain_case(), plan_of(ball(), plain_case()), e, {.placements = 400, .seed = 3});
  // From the tape mark (60 mm of arc) to R asin(d / R) and R atan(d / R): 5.7 and 7.1 mm (elementary
  // geometry).
  const double drop = R * std::asin(60 / R) - 60, nearest = 60 - R * std::atan(60 / R);
  CHECK(t.first_order.covariance.trace() == Approx(0.25 * (drop * drop + nearest * nearest)).epsilon(0.1));
  CHECK(t.sampled.mean_mm == Approx(0.25 * (drop + nearest)).epsilon(0.15));
  CHECK(share(t, Cause::rule) == Approx(1));
}

TEST_CASE("the average distance of a flat scatter: Rayleigh when round, half-normal when on a line") {
  // Mean of the Rayleigh and of the half-normal distribution: sigma sqrt(pi / 2), sigma sqrt(2 / pi) (any
  // textbook of statistics).
  CHECK(mean_distance(Eigen::DiagonalMatrix<double, 2>(9, 9)) == Approx(3 * std::sqrt(M_PI / 2)));
  CHECK(mean_distance(Eigen::DiagonalMatrix<double, 2>(9, 0)) == Approx(3 * std::sqrt(2 / M_PI)));
  std::mt19937 random(4);
  std::normal_distribution<double> normal;
  double sum = 0;
  for (int i = 0; i < 200000; ++i) sum += std::hypot(5 * normal(random), 2 * normal(random));
  CHECK(mean_distance(Eigen::DiagonalMatrix<double, 2>(25, 4)) == Approx(sum / 200000).epsilon(0.01));
}

TEST_CASE("trying many placements agrees with the first order where errors are small, on either side") {
  HandErrors e;
  e.fiducial_mm = e.tape_mm = e.mark_mm = 0.5;
  e.angle_deg = e.tilt_deg = 1;
  e.cap_shift_mm = 0.5;
  e.other_rule_percent = 0;
  for (const Side side : {Side::left, Side::right}) {
    const Case c = plain_case(side);
    const Tolerance t = tolerance(ball(), c, plan_of(ball(), c), e, {.placements = 3000, .seed = 5});
    CHECK(t.lost == 0);
    // 3000 draws know a variance to about 2.6 % (one standard deviation: sqrt(2 / n)).
    CHECK(t.sampled.covariance.trace() == Approx(t.first_order.covariance.trace()).epsilon(0.09));
    CHECK(t.sampled.mean_mm == Approx(t.first_order.mean_mm).epsilon(0.05));
    CHECK(t.sampled.mean.norm() < 0.1);
    double shares = 0;
    for (const auto& cause : t.causes) {
      shares += cause.share;
      CHECK(cause.without_mm <= cause.halved_mm + 1e-12);
      CHECK(cause.halved_mm <= t.first_order.mean_mm + 1e-12);
    }
    CHECK(shares == Approx(1));
  }
}

TEST_CASE("the ellipses hold half and most of the placements, and lie on the skin") {
  const Case c = plain_case();
  const Plan plan = plan_of(ball(), c);
  const Tolerance t = tolerance(ball(), c, plan, {}, {.placements = 2000, .seed = 9});
  REQUIRE(t.pulses.size() == static_cast<size_t>(2000 - t.lost));
  const auto held = [&](const SkinEllipse& e) {
    const double a = e.long_axis_deg * M_PI / 180;
    const Vector2d along(std::cos(a), std::sin(a)), across(-along[1], along[0]);
    int count = 0;
    for (const auto& p : t.pulses) {
      const Vector3d d = p - plan.treatment.pulse;
      Vector2d flat(d.dot(plan.treatment.forward), -d.dot(plan.treatment.inward));
      if (flat.norm() > 0) flat *= d.norm() / flat.norm();
      const Vector2d q = flat - e.centre;
      if (std::hypot(q.dot(along) / e.long_mm, q.dot(across) / e.short_mm) <= 1) ++count;
    }
    return static_cast<double>(count) / static_cast<double>(t.pulses.size());
  };
  CHECK(held(t.sampled.half) == Approx(0.5).margin(0.01));
  CHECK(held(t.sampled.most) == Approx(0.95).margin(0.01));
  CHECK(t.sampled.most.long_mm > t.sampled.half.long_mm);
  CHECK(t.half_mm < t.most_mm);
  for (const auto& p : t.sampled.most.outline) CHECK(std::abs(p.norm() - R) < 0.05);
  CHECK((t.sampled.most.outline.front() - t.sampled.most.outline.back()).norm() < 1e-9);
}

TEST_CASE("the same seed gives the same placements on any number of threads, another seed others") {
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

TEST_CASE("the cause to halve is the error that grew") {
  HandErrors e = no_errors();
  e.mark_mm = 1;
  e.cap_shift_mm = 8;
  const Tolerance cap = first_order(plain_case(), e);
  CHECK(cap.causes.front().cause == Cause::cap);
  REQUIRE(cap.to_halve);
  CHECK(cap.to_halve->cause == Cause::cap);
  CHECK(cap.to_halve->halved_mm < cap.first_order.mean_mm);
  e.fiducial_mm = 15;
  CHECK(first_order(plain_case(), e).to_halve->cause == Cause::fiducials);
  CHECK(alone(cap, Cause::tape) == 0);
}

TEST_CASE("a node off the start and a landmark as site are followed too") {
  Case c = plain_case();
  c.hotspot = {1, -1};
  const Head lop = lopsided_head(5);
  Tolerance t = tolerance(lop, c, plan_of(lop, c), no_errors(), {.placements = 3});
  CHECK(t.sampled.mean_mm < 0.03);
  c.treatment.rule = TreatmentRule::landmark;
  c.treatment.label = "F3";
  t = tolerance(lop, c, plan_of(lop, c), no_errors(), {.placements = 3});
  CHECK(t.sampled.mean_mm < 0.03);
  HandErrors e = no_errors();
  e.fiducial_mm = 3;
  t = tolerance(lop, c, plan_of(lop, c), e, {.placements = 100});
  CHECK(t.sampled.mean_mm > 1);
  CHECK(t.sampled.mean_mm < 6);
}

TEST_CASE("errors that make no sense are refused in a sentence") {
  const Case c = plain_case();
  Plan plan = plan_of(ball(), c);
  const auto said = [&](const HandErrors& e, const ToleranceOptions& o = {.placements = 1}) {
    return sentence_of<GeometryError>([&] { (void)tolerance(ball(), c, plan, e, o); });
  };
  HandErrors e;
  e.tape_mm = -1;
  CHECK_THAT(said(e), Catch::Contains("errors.tape_mm must be from 0 to 15 mm"));
  e = {};
  e.angle_deg = std::nan("");
  CHECK_THAT(said(e), Catch::Contains("errors.angle_deg"));
  e = {};
  e.other_rule_percent = 101;
  CHECK(is_sentence(said(e)));
  CHECK(is_sentence(said({}, {.placements = -1})));
  CHECK(is_sentence(said({}, {.placements = 2'000'000})));
}
