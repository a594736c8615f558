#include "geometry/hands/tolerance.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <atomic>
#include <catch2/catch.hpp>
#include <cmath>
#include <functional>
#include <random>

#include "geometry/base/error.h"
#include "geometry/field/coil_field.h"
#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/sentence.h"
#include "tests/support/windings.h"

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
  return {0, 0, 0, 0, 0, 0, 0, 0, 0, 0};
}

Tolerance first_order(const Case& c, const HandErrors& e) {
  return tolerance(ball(), c, plan_of(ball(), c), e, {.placements = 0});
}

double share(const Tolerance& t, Cause cause) {
  for (const auto& c : t.causes)
    if (c.cause == cause) return c.share;
  return -1;
}

const CauseShare& part_of(const Tolerance& t, Cause cause) {
  return *std::find_if(t.causes.begin(), t.causes.end(), [&](const auto& c) { return c.cause == cause; });
}

double alone(const Tolerance& t, Cause cause) {
  for (const auto& c : t.causes)
    if (c.cause == cause) return c.alone_mm;
  return -1;
}

/// The whole procedure on a perfect sphere whose tragi, nasion and inion lie on the equator, in closed form
/// (great circles, small circles, rotations): patient's left, tape rule. What may be off is handed in. The
/// coil is laid by least squares of what is missed: its edge off its mark, the site mark off its centre line,
/// its angle off the eye's, each over its standard deviation.
struct Sphere {
  double lateral = 50, anterior = 10, distance = 50, reach = 60, angle_deg = 45;
  double lay_reach = 60, eye_deg = 45;
  double edge_sd = 0.05, site_sd = 0.05, eye_sd_deg = 0.05;
  /// The cap put on again, about the ball's middle: over the top toward the nose and toward the right, mm,
  /// and turned, the nose's side to the right.
  double cap_forward = 0, cap_side = 0, cap_turn_deg = 0;

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
  Vector3d site() const {
    const Vector3d start = go_forward({-std::sin(lateral / R), 0, std::cos(lateral / R)}, anterior);
    return go_forward(start, distance);
  }
  Vector3d with_cap(const Vector3d& n) const {
    const Vector3d by(-cap_forward / R, cap_side / R, -cap_turn_deg * M_PI / 180);
    if (by.isZero(0)) return n;
    return Eigen::AngleAxisd(by.norm(), by.normalized()) * n;
  }
  Eigen::Vector4d misses(const Vector3d& n, double deg, const Vector3d& site_mark,
                         const Vector3d& edge_mark) const {
    const Vector3d d = R * (edge_mark - go(n, front(n, deg), lay_reach));
    const Vector3d greater = front(n, deg + 90);
    return {d.dot(forward(edge_mark)) / edge_sd, d.dot(outward(edge_mark)) / edge_sd,
            R * (site_mark - n).dot(greater) / site_sd, (eye_deg - deg) / eye_sd_deg};
  }
  Vector3d pulse() const {
    const Vector3d made_at = site();
    const Vector3d edge_mark = with_cap(go(made_at, front(made_at, angle_deg), reach));
    const Vector3d site_mark = with_cap(made_at);
    // Gauss and Newton, slopes by small differences.
    Vector3d n = made_at;
    double deg = angle_deg;
    constexpr double small = 1e-5;
    for (int round = 0; round < 30; ++round) {
      const Vector3d f = forward(n), o = outward(n);
      const Eigen::Vector4d now = misses(n, deg, site_mark, edge_mark);
      Eigen::Matrix<double, 4, 3> slope;
      slope.col(0) = (misses((n + small * f).normalized(), deg, site_mark, edge_mark) - now) / small;
      slope.col(1) = (misses((n + small * o).normalized(), deg, site_mark, edge_mark) - now) / small;
      slope.col(2) = (misses(n, deg + small, site_mark, edge_mark) - now) / small;
      const Vector3d step = -slope.colPivHouseholderQr().solve(now);
      n = (n + step[0] * f + step[1] * o).normalized();
      deg += step[2];
    }
    return R * n;
  }
};

/// Mean squares of the closed form's offsets from the planned pulse by central differences.
Matrix2d expected(const std::vector<std::function<void(Sphere&, double)>>& slips,
                  const Sphere& sure = Sphere()) {
  const Vector3d aim = sure.pulse(), n = aim.normalized();
  const auto off = [&](const std::function<void(Sphere&, double)>& slip, double by) {
    Sphere s = sure;
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

TEST_CASE("an eye that holds another angle swings the pulse only as far as unsure marks let it") {
  HandErrors e = no_errors();
  e.angle_deg = 5;
  // Sure marks leave nothing to the eye.
  CHECK(alone(first_order(plain_case(), e), Cause::angle) < 0.01);
  e.mark_mm = 3;
  Sphere sure;
  sure.edge_sd = sure.site_sd = 3;
  sure.eye_sd_deg = 5;
  const Matrix2d squares = expected({[](Sphere& s, double by) { s.eye_deg += 5 * by; }}, sure);
  // One error alone lies on a line: a half-normal distribution's mean.
  const double along_line = std::sqrt(2 / M_PI * squares.trace());
  CHECK(along_line > 0.5);
  CHECK(alone(first_order(plain_case(), e), Cause::angle) == Approx(along_line).epsilon(0.03));
}

TEST_CASE("a cap put on again takes both marks along as it slides and turns, and the pulse with them") {
  const auto forward = [](Sphere& s, double by) { s.cap_forward = 4 * by; };
  const auto side = [](Sphere& s, double by) { s.cap_side = 5 * by; };
  const auto turn = [](Sphere& s, double by) { s.cap_turn_deg = 3 * by; };
  const auto check = [](double forward_mm, double side_mm, double turn_deg, const Matrix2d& squares) {
    HandErrors e = no_errors();
    e.cap_forward_mm = forward_mm;
    e.cap_side_mm = side_mm;
    e.cap_turn_deg = turn_deg;
    CHECK(squares.trace() > 5);
    const Tolerance t = first_order(plain_case(), e);
    check_close(t.first_order.covariance, squares, 0.02 * squares.trace());
    CHECK(share(t, Cause::cap) == Approx(1));
  };
  check(4, 0, 0, expected({forward}));
  check(0, 5, 0, expected({side}));
  check(0, 0, 3, expected({turn}));
  check(4, 5, 3, expected({forward, side, turn}));
}

// The three are about the sphere under the cap, not about the mark: on the top of the head a turn moves
// nothing, and at the ear's height a slide to that side moves all it slides.
TEST_CASE("a turned cap moves a mark the less the nearer it is to the top") {
  HandErrors e = no_errors();
  e.cap_turn_deg = 5;
  e.angle_deg = 20;  // the eye leaves the angle to the marks
  const auto moved = [&](double lateral_mm) {
    Case c = plain_case();
    c.search.lateral_mm = lateral_mm;
    c.search.anterior_mm = 0;
    c.treatment.distance_mm = 1;
    // About the upright: the mark's distance from it times the angle; a half-normal distribution's mean.
    const Vector3d at = plan_of(ball(), c).treatment.wanted;
    return std::pair(alone(first_order(c, e), Cause::cap),
                     std::sqrt(2 / M_PI) * at.head<2>().norm() * 5 * M_PI / 180);
  };
  for (const double lateral_mm : {0.0, 40.0, 80.0}) {
    const auto [by_cap, by_turn] = moved(lateral_mm);
    CAPTURE(lateral_mm);
    CHECK(by_cap == Approx(by_turn).epsilon(0.1).margin(0.15));
  }
}

// By the tape rule tilt moves nothing on the skin, since the coil's axis goes through the pulse point. By the
// drop rule the coil pitched by t about its pulse point sees its edge over another place, in the plane of its
// front axis: a line from d (cos t, sin t) along the tilted normal to a circle (elementary geometry).
TEST_CASE("tilt moves the pulse on the skin by where the edge is then seen, and at depth by the axis") {
  constexpr double t = 3 * M_PI / 180;
  HandErrors e = no_errors();
  e.tilt_deg = 3;
  Case c = plain_case();
  const Tolerance by_tape = first_order(c, e);
  CHECK(by_tape.first_order.mean_mm < 0.05);
  // Roll and pitch alike swing the axis: a round scatter at depth, whose mean is sd sqrt(pi / 2).
  CHECK(by_tape.at_depth.depth_mm == assumed_depth_mm);
  CHECK_FALSE(by_tape.at_depth.of_brain);
  CHECK(by_tape.at_depth.first_order.mean_mm ==
        Approx(assumed_depth_mm * std::sin(t) * std::sqrt(M_PI / 2)).epsilon(0.03));
  CHECK(part_of(by_tape, Cause::tilt).depth_share == Approx(1));
  CHECK(part_of(by_tape, Cause::tilt).depth_alone_mm ==
        Approx(by_tape.at_depth.first_order.mean_mm).epsilon(1e-6));

  use_one_rule(c, MarkRule::drop);
  e.angle_deg = 20;  // the eye leaves the angle to the marks, so that roll turns the coil and moves no pulse
  const auto arc = [&](double pitch) {
    const Vector2d edge(60 * std::cos(pitch), R + 60 * std::sin(pitch)),
        down(std::sin(pitch), -std::cos(pitch));
    const double b = edge.dot(down), far = -b - std::sqrt(b * b - edge.squaredNorm() + R * R);
    const Vector2d at = edge + far * down;
    return R * std::atan2(at[0], at[1]);
  };
  const Tolerance by_drop = first_order(c, e);
  CHECK(alone(by_drop, Cause::tilt) ==
        Approx(std::sqrt(2 / M_PI) * 0.5 * std::abs(arc(t) - arc(-t))).epsilon(0.06));
}

// Lowered wires draw the strongest place after them, while the axis swings to the other side. The lever is
// the field's own, from tilts of 5 degrees; one of 3 degrees is held to it by the way.
TEST_CASE("at depth tilt moves the pulse as the field goes, not as the axis does") {
  HandErrors e = no_errors();
  e.tilt_deg = 3;
  Case c = plain_case();
  c.coil.model.windings = figure_of_eight().windings;
  const Plan plan = plan_of(ball(), c);
  const Tolerance t = tolerance(ball(), c, plan, e, {.placements = 400, .compare_ways = false});
  CHECK(t.at_depth.of_field);
  const CoilField meant = coil_field(ball().skin(), nullptr, c.coil.model, plan.treatment);
  double squares = 0;
  for (const Tilt tilt : {Tilt{3, 0}, Tilt{0, 3}}) {
    // The coil tilts about its pulse point and is lifted clear; the flat slab hangs over on the lowered side.
    const CoilPose pose = tilted(meant.laid.pose, tilt);
    const SphereField now(
        meant.round.centre,
        turns_of(c.coil.model, frame_of(pose, clearing_lift(ball().skin(), c.coil.model, pose))));
    squares += (strongest_on(now, meant.sheet).point - meant.map.strongest.point).squaredNorm();
  }
  CHECK(t.at_depth.first_order.covariance.trace() == Approx(squares).epsilon(0.1));
  // The axis would go by 20 mm sin 3 degrees each way; the field goes by less, and the other way.
  CHECK(t.at_depth.first_order.mean_mm <
        0.75 * assumed_depth_mm * std::sin(3 * M_PI / 180) * std::sqrt(M_PI / 2));
}

TEST_CASE(
    "the field left at the wanted place: all without errors, less the larger they are, none told without windings") {
  Case c = plain_case();
  CHECK_FALSE(tolerance(ball(), c, plan_of(ball(), c), no_errors(), {.placements = 50, .compare_ways = false})
                  .field_left);
  c.coil.model.windings = figure_of_eight().windings;
  const Plan plan = plan_of(ball(), c);
  const auto left = [&](const HandErrors& e) {
    const Tolerance t = tolerance(ball(), c, plan, e, {.placements = 400, .compare_ways = false});
    REQUIRE(t.field_left);
    return *t.field_left;
  };
  const FieldLeft none = left(no_errors());
  CHECK(none.median == Approx(1).margin(1e-3));
  CHECK(none.worst == Approx(1).margin(1e-3));
  HandErrors e = no_errors();
  e.cap_forward_mm = e.cap_side_mm = 5;
  const FieldLeft five = left(e);
  e.cap_forward_mm = e.cap_side_mm = 10;
  const FieldLeft ten = left(e);
  CHECK(five.worst < five.median);
  CHECK(five.median < 1);
  CHECK(ten.median < five.median);
  CHECK(ten.worst < five.worst);
}

// The edge hovers g = R - sqrt(R2 - d2) over its drop mark (22.9 mm), and the casing is 20 mm high over the
// site mark. Along the front axis nothing but the edge mark tells, drawn by one look and laid by another.
// Aside, with an angle that is known, edge and site mark both tell: of two unsure figures weighed by their
// variances the result's variance is one over the sum of their inverses.
TEST_CASE("a look from aside moves the edge by the gap times the tangent") {
  HandErrors e = no_errors();
  e.sight_deg = 10;
  Case c = plain_case();
  CHECK(first_order(c, e).first_order.mean_mm == 0);  // a tape needs no look
  use_one_rule(c, MarkRule::drop);
  const double slope = std::tan(10 * M_PI / 180);
  const double edge = (R - std::sqrt(R * R - 60 * 60)) * slope * std::sqrt(2), site = 20 * slope;
  const double aside = 1 / std::sqrt(1 / (edge * edge) + 1 / (site * site));
  const Tolerance t = first_order(c, e);
  const Eigen::SelfAdjointEigenSolver<Matrix2d> axes(t.first_order.covariance);
  CHECK(std::sqrt(axes.eigenvalues()[1]) == Approx(edge).epsilon(0.05));
  CHECK(std::sqrt(axes.eigenvalues()[0]) == Approx(aside).epsilon(0.05));
  CHECK(share(t, Cause::sight) == Approx(1));
  // Drawn by tape, there is one look less.
  c.treatment.drawn_by = MarkRule::tape;
  const Eigen::SelfAdjointEigenSolver<Matrix2d> less(first_order(c, e).first_order.covariance);
  CHECK(std::sqrt(less.eigenvalues()[1]) == Approx(edge / std::sqrt(2)).epsilon(0.12));
}

TEST_CASE("another marking rule half of the time moves the pulse by what the rules differ") {
  HandErrors e = no_errors();
  e.other_rule_percent = 50;
  const Tolerance t =
      tolerance(ball(), plain_case(), plan_of(ball(), plain_case()), e, {.placements = 400, .seed = 3});
  // From the tape mark (60 mm of arc) to R asin(d / R) and R atan(d / R): 5.7 and 7.1 mm (elementary
  // geometry).
  const double drop = R * std::asin(60 / R) - 60, nearest = 60 - R * std::atan(60 / R);
  // A quarter of the placements each, backward and forward along the front axis, and half where it should be:
  // a mixture, whose mean distance and spread follow at once.
  CHECK(alone(t, Cause::rule) == Approx(0.25 * (drop + nearest)).epsilon(0.05));
  CHECK(t.first_order.mean_mm == Approx(0.25 * (drop + nearest)).epsilon(0.05));
  CHECK(t.first_order.mean.norm() == Approx(0.25 * (nearest - drop)).margin(0.1));
  CHECK(t.first_order.covariance.trace() + t.first_order.mean.squaredNorm() ==
        Approx(0.25 * (drop * drop + nearest * nearest)).epsilon(0.1));
  CHECK(t.sampled.mean_mm == Approx(0.25 * (drop + nearest)).epsilon(0.15));
  // Used half as often, half as far off on average.
  CHECK(part_of(t, Cause::rule).halved_mm == Approx(0.125 * (drop + nearest)).epsilon(0.05));
  CHECK(part_of(t, Cause::rule).without_mm == Approx(0).margin(1e-9));
  CHECK(share(t, Cause::rule) == Approx(1));
}

TEST_CASE("trying many placements agrees with the first order where errors are small, on either side") {
  HandErrors e;
  e.fiducial_mm = e.tape_mm = e.mark_mm = 0.5;
  e.angle_deg = e.tilt_deg = 1;
  e.cap_forward_mm = e.cap_side_mm = e.cap_turn_deg = 0.5;
  e.other_rule_percent = 0;
  e.sight_deg = 1;
  for (const Side side : {Side::left, Side::right}) {
    Case c = plain_case(side);
    if (side == Side::right) use_one_rule(c, MarkRule::drop);
    const Tolerance t = tolerance(ball(), c, plan_of(ball(), c), e, {.placements = 3000, .seed = 5});
    CHECK(t.lost == 0);
    // 3000 draws know a variance to about 2.6 % (one standard deviation: sqrt(2 / n)).
    CHECK(t.sampled.covariance.trace() == Approx(t.first_order.covariance.trace()).epsilon(0.09));
    CHECK(t.sampled.mean_mm == Approx(t.first_order.mean_mm).epsilon(0.05));
    CHECK(t.sampled.mean.norm() < 0.1);
    CHECK(t.at_depth.sampled.mean_mm == Approx(t.at_depth.first_order.mean_mm).epsilon(0.05));
    double shares = 0;
    for (const auto& cause : t.causes) {
      shares += cause.share;
      CHECK(cause.without_mm <= cause.halved_mm + 1e-12);
      CHECK(cause.halved_mm <= t.first_order.mean_mm + 1e-12);
    }
    CHECK(shares == Approx(1));
  }
}

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
TEST_CASE("the ellipses hold half and most of other placements than those that made them") {
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
TEST_CASE("the ellipses of a cause that is nearly a line hold half and most of it too") {
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
  e.cap_forward_mm = e.cap_side_mm = 8;
  const Tolerance cap = first_order(plain_case(), e);
  CHECK(cap.causes.front().cause == Cause::cap);
  REQUIRE(cap.to_halve);
  CHECK(cap.to_halve->cause == Cause::cap);
  CHECK(cap.to_halve->halved_mm < cap.first_order.mean_mm);
  e.fiducial_mm = 15;
  CHECK(first_order(plain_case(), e).to_halve->cause == Cause::fiducials);
  CHECK(alone(cap, Cause::tape) == 0);
}

TEST_CASE("a spot off the start and a landmark as site are followed too") {
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
