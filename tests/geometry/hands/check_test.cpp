#include "geometry/hands/check.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/solve.h"
#include "geometry/tapes/laid_tape.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

Case case_by(MarkRule rule = MarkRule::tape) {
  Case c;
  c.coil.model = flat_coil();
  use_one_rule(c, rule);
  return c;
}

/// A sphere's point turned about `axis` through the centre by an arc of `mm`.
Vector3d turned(const Vector3d& p, const Vector3d& axis, double mm) {
  return Eigen::AngleAxisd(mm / ball_mm, axis.normalized()) * p;
}

Check check(const Head& head, const Case& c, const Plan& plan, const Vector3d& site, const Vector3d& edge,
            const CheckLimits& limits = {}) {
  return check_marks(head, c, plan, head.skin().closest(site), head.skin().closest(edge), limits);
}

}  // namespace

TEST_CASE("marks taken from the plan itself check without error, for each rule, on both sides", "[slow]") {
  for (const Head* head : {&ball(), &lop()})
    for (const MarkRule rule : {MarkRule::tape, MarkRule::drop, MarkRule::nearest})
      for (const Side side : {Side::left, Side::right}) {
        Case c = case_by(rule);
        c.side = side;
        const Plan plan = solve(*head, c);
        REQUIRE(plan.treatment.edge_mark.by(rule));
        const Check k = check(*head, c, plan, plan.treatment.pulse, *plan.treatment.edge_mark.by(rule));
        INFO("rule " << static_cast<int>(rule) << ", side " << static_cast<int>(side));
        CHECK(side_of(plan.treatment) == side);
        CHECK(k.pulse_off_mm < 0.05);
        CHECK(std::abs(k.angle_error_deg) < 0.05);
        CHECK(k.pulse_from_site_mm < 0.05);
        CHECK(k.angle_deg == Approx(45).margin(0.05));
        CHECK(k.verdict == Verdict::good);
      }
}

// Elementary: with both marks moved by one rotation of the sphere, the coil moves by the same rotation.
TEST_CASE("marks shifted sideways shift the pulse by as much", "[slow]") {
  const Case c = case_by();
  const Plan plan = solve(ball(), c);
  const Placement& t = plan.treatment;
  // Rotating about the axis square to forward through the centre moves the pulse straight forward.
  const Vector3d axis = t.pulse.cross(t.forward);
  const Check forward = check(ball(), c, plan, turned(t.pulse, axis, 8), turned(*t.edge_mark.tape, axis, 8));
  CHECK(forward.pulse_off_mm == Approx(8).margin(0.05));
  CHECK(forward.forward_mm == Approx(ball_mm * std::sin(8 / ball_mm)).margin(0.05));
  CHECK(std::abs(forward.outward_mm) < 0.05);
  CHECK(forward.pulse_from_site_mm < 0.05);
  CHECK(forward.verdict == Verdict::pulse_off);
  const Vector3d out_axis = t.pulse.cross(Vector3d(-t.inward));
  const Check out =
      check(ball(), c, plan, turned(t.pulse, out_axis, 3), turned(*t.edge_mark.tape, out_axis, 3));
  CHECK(out.outward_mm == Approx(ball_mm * std::sin(3 / ball_mm)).margin(0.05));
  CHECK(out.verdict == Verdict::good);
}

// Elementary: an edge mark swung about the site by an angle turns the coil by that angle and leaves the
// pulse.
TEST_CASE("an edge mark swung about the site turns the coil and leaves the pulse where it was", "[slow]") {
  for (const Side side : {Side::left, Side::right}) {
    Case c = case_by();
    c.side = side;
    const Plan plan = solve(ball(), c);
    const Placement& t = plan.treatment;
    for (const double by_deg : {-20.0, -4.0, 4.0, 12.0}) {
      // Away from the head is the axis; on the left, inward is forward x normal: clockwise seen from outside.
      const double way = side == Side::left ? -1 : 1;
      const Vector3d edge =
          Eigen::AngleAxisd(way * by_deg * M_PI / 180, t.pulse.normalized()) * *t.edge_mark.tape;
      const Check k = check(ball(), c, plan, t.pulse, edge);
      CHECK(k.angle_error_deg == Approx(by_deg).margin(0.1));
      CHECK(k.angle_deg == Approx(45 + by_deg).margin(0.1));
      CHECK(k.pulse_off_mm < 0.1);
      CHECK(k.verdict == (std::abs(by_deg) > 5 ? Verdict::angle_off : Verdict::good));
    }
  }
}

// Elementary: the coil's centre line over both marks, its edge on the edge mark, so a site mark made too far
// back along the line changes nothing but its own distance from the pulse.
TEST_CASE("a site mark slid along the line to the edge mark moves neither coil nor pulse", "[slow]") {
  const Case c = case_by();
  const Plan plan = solve(ball(), c);
  const Placement& t = plan.treatment;
  const Vector3d axis = t.pulse.cross(t.front);
  for (const double slid : {-10.0, 10.0, 20.0}) {
    const Check k = check(ball(), c, plan, turned(t.pulse, axis, slid), *t.edge_mark.tape);
    CHECK(k.pulse_off_mm < 0.1);
    CHECK(std::abs(k.angle_error_deg) < 0.1);
    CHECK(k.pulse_from_site_mm == Approx(std::abs(slid)).margin(0.1));
    CHECK(k.mark_to_mark_mm == Approx(60 - slid).margin(0.1));
  }
}

// R asin(d / R) - d = 5.7 mm and d - R atan(d / R) = 7.1 mm for R = 90, d = 60 (elementary geometry).
TEST_CASE("marks made by one rule and used by another move the pulse by what the table of rules says",
          "[slow]") {
  const double d = 60;
  const Case by_tape = case_by(MarkRule::tape);
  const Plan plan = solve(ball(), by_tape);
  const auto used_as = [&](MarkRule rule) {
    return check(ball(), case_by(rule), plan, plan.treatment.pulse, *plan.treatment.edge_mark.tape);
  };
  const Check drop = used_as(MarkRule::drop);
  CHECK(ball_mm * std::asin(d / ball_mm) - d == Approx(5.7).margin(0.05));
  CHECK(drop.pulse_off_mm == Approx(ball_mm * std::asin(d / ball_mm) - d).margin(0.1));
  CHECK(drop.forward_mm < 0);  // the coil must stand further back for its edge to hang over the tape's mark
  CHECK(drop.pulse_from_site_mm == Approx(drop.pulse_off_mm).margin(0.05));
  CHECK(drop.verdict == Verdict::pulse_off);
  const Check nearest = used_as(MarkRule::nearest);
  CHECK(nearest.pulse_off_mm == Approx(d - ball_mm * std::atan(d / ball_mm)).margin(0.2));
  CHECK(nearest.forward_mm > 0);
}

TEST_CASE("the verdict names what is off and by how much, within limits of one's own", "[slow]") {
  const Case c = case_by();
  const Plan plan = solve(ball(), c);
  const Placement& t = plan.treatment;
  const Vector3d axis = t.pulse.cross(t.forward);
  const Vector3d site = turned(t.pulse, axis, 8);
  const Vector3d swung =
      Eigen::AngleAxisd(-10 * M_PI / 180, site.normalized()) * turned(*t.edge_mark.tape, axis, 8);
  const Check off = check(ball(), c, plan, site, swung);
  CHECK(off.verdict == Verdict::both_off);
  CHECK(off.planned_deg == 45);
  CHECK(off.limits.pulse_mm == CheckLimits{}.pulse_mm);
  CHECK(check(ball(), c, plan, site, swung, {9, 5}).verdict == Verdict::angle_off);
  CHECK(check(ball(), c, plan, site, swung, {5, 15}).verdict == Verdict::pulse_off);
  CHECK(check(ball(), c, plan, site, swung, {9, 15}).verdict == Verdict::good);
}

TEST_CASE("marks that were not made for this coil are refused in a sentence", "[slow]") {
  const Case c = case_by();
  const Plan plan = solve(ball(), c);
  const Placement& t = plan.treatment;
  const Vector3d axis = t.pulse.cross(t.front);
  CHECK_NOTHROW(check(ball(), c, plan, t.pulse, turned(t.pulse, axis, 60 + 24)));
  for (const double apart : {30.0, 90.0, 0.0})
    CHECK_THROWS_WITH(check(ball(), c, plan, t.pulse, turned(t.pulse, axis, apart)),
                      Catch::Contains("cm apart") && Catch::Contains("this plan's lie 6 cm apart"));
  CHECK_THROWS_AS(check(ball(), c, plan, t.pulse, *t.edge_mark.tape, {0, 5}), GeometryError);
  CHECK_THROWS_AS(check(ball(), c, plan, t.pulse, *t.edge_mark.tape, {5, std::nan("")}), GeometryError);
}

TEST_CASE("the check looks the same whichever way the head lies", "[slow]") {
  const Case c = case_by(MarkRule::nearest);
  Eigen::Affine3d motion = Eigen::Affine3d::Identity();
  motion.translate(Vector3d(30, -200, 55)).rotate(Eigen::AngleAxisd(2.2, Vector3d(1, 2, -1).normalized()));
  const Head other = moved_head(lop(), motion);
  const auto spoiled = [&](const Head& head) {
    const Plan plan = solve(head, c);
    const Placement& t = plan.treatment;
    const Vector3d site = t.pulse + 4 * t.forward, edge = *t.edge_mark.nearest + 7 * t.inward;
    return check(head, c, plan, site, edge);
  };
  const Check a = spoiled(lop()), b = spoiled(other);
  CHECK(a.pulse_off_mm > 1);
  CHECK(a.pulse_off_mm == Approx(b.pulse_off_mm).margin(0.05));
  CHECK(a.angle_error_deg == Approx(b.angle_error_deg).margin(0.05));
  CHECK(a.forward_mm == Approx(b.forward_mm).margin(0.05));
}
