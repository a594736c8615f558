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
#include "tests/support/ball_hands.h"
#include "tests/support/ball_tolerance.h"
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

double share(const Tolerance& t, Cause cause) {
  for (const auto& c : t.causes)
    if (c.cause == cause) return c.share;
  return -1;
}

const CauseShare& part_of(const Tolerance& t, Cause cause) {
  return *std::find_if(t.causes.begin(), t.causes.end(), [&](const auto& c) { return c.cause == cause; });
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

TEST_CASE("work that is given up ends at once with what its asker throws", "[slow]") {
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

TEST_CASE("the tape's readings spread the pulse as the closed forms on a sphere say", "[slow]") {
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

TEST_CASE("an eye that holds another angle swings the pulse only as far as unsure marks let it", "[slow]") {
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

TEST_CASE("a cap put on again takes both marks along as it slides and turns, and the pulse with them",
          "[slow]") {
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
TEST_CASE("a turned cap moves a mark the less the nearer it is to the top", "[slow]") {
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
TEST_CASE("at depth tilt moves the pulse as the field goes, not as the axis does", "[slow]") {
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
    "the field left at the wanted place: all without errors, less the larger they are, none told without windings",
    "[slow]") {
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
TEST_CASE("a look from aside moves the edge by the gap times the tangent", "[slow]") {
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

TEST_CASE("another marking rule half of the time moves the pulse by what the rules differ", "[slow]") {
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

TEST_CASE("trying many placements agrees with the first order where errors are small, on either side",
          "[slow]") {
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

TEST_CASE("the cause to halve is the error that grew", "[slow]") {
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

TEST_CASE("a spot off the start and a landmark as site are followed too", "[slow]") {
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
