#include "geometry/hands/what_if.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

Case case_on(Side side = Side::left) {
  Case c;
  c.coil.model = flat_coil();
  use_one_rule(c, MarkRule::tape);
  c.side = side;
  return c;
}

}  // namespace

TEST_CASE("no mistake, no error", "[slow]") {
  for (const Side side : {Side::left, Side::right}) {
    const Case c = case_on(side);
    const Plan plan = solve(coarse_lop(), c);
    CHECK(if_vertex_off(coarse_lop(), c, plan, 0, 0).off_mm < 0.01);
    for (const Misread which :
         {Misread::lateral, Misread::anterior, Misread::treatment, Misread::centre_to_edge})
      CHECK(if_misread(coarse_lop(), c, plan, which, 0).off_mm < 0.03);
    CHECK(if_coil_turned(coarse_lop(), c, plan, 0).off_mm < 0.03);
    CHECK(if_rule_changed(coarse_lop(), c, plan, c.coil.laid_by).off_mm < 0.03);
    CHECK(if_cap_slipped(coarse_lop(), c, plan, {}).off_mm < 0.05);
  }
}

// On the sphere of the 10-20 literature, tragi on the equator, the tape from tragus to tragus over a vertex
// 10 mm in front is the half circle tilted about the ear-to-ear line by 10 / R. A point 50 mm along it lies R
// cos(50 / R) from that line, so the tilt moves it by an arc of 2 R asin(cos(50 / R) sin(5 / R)) (elementary
// geometry).
TEST_CASE("a vertex marked 1 cm in front moves the start by nearly as much", "[slow]") {
  Case c = case_on();
  c.search.anterior_mm = 0;
  const Plan plan = solve(ball(), c);
  const WhatIf w = if_vertex_off(ball(), c, plan, 10, 0);
  CHECK(w.off_mm ==
        Approx(2 * ball_mm * std::asin(std::cos(50 / ball_mm) * std::sin(5 / ball_mm))).margin(0.05));
  CHECK((w.really.pulse - w.meant).dot(ball().axes().front) > 0);
  // To the side, along the tape itself, the whole centimetre is carried over.
  CHECK(if_vertex_off(ball(), c, plan, 0, -10).off_mm == Approx(10).margin(0.05));
}

TEST_CASE("a tape read half a centimetre wrong moves the pulse by half a centimetre", "[slow]") {
  const Case c = case_on();
  const Plan plan = solve(ball(), c);
  // Along the coronal great circle, then along a smaller circle: the lateral slip shrinks by a little.
  const double lateral = if_misread(ball(), c, plan, Misread::lateral, 5).off_mm;
  CHECK(lateral > 4.5);
  CHECK(lateral < 5.05);
  // Along the parasagittal circle the arc is the tape's own; straight across the skin it is a hair shorter.
  CHECK(if_misread(ball(), c, plan, Misread::anterior, 5).off_mm == Approx(5).margin(0.05));
  CHECK(if_misread(ball(), c, plan, Misread::treatment, 5).off_mm == Approx(5).margin(0.05));
  CHECK(if_misread(ball(), c, plan, Misread::treatment, -5).off_mm == Approx(5).margin(0.05));
  // An edge mark too far out takes the coil with it.
  const WhatIf edge = if_misread(ball(), c, plan, Misread::centre_to_edge, 5);
  CHECK(edge.off_mm == Approx(5).margin(0.3));
  CHECK((edge.really.pulse - edge.meant).dot(plan.treatment.front) > 4);
}

// About its edge mark, 60 mm of tape away, 10 degrees swing the centre by R sin(60 / R) times 10 degrees (the
// circle of that arc's radius on a sphere). The front axis is measured from forward, which itself turns a
// little on the way, hence the margin.
TEST_CASE("a coil turned by 10 degrees about its edge mark swings the pulse by about a centimetre",
          "[slow]") {
  for (const Side side : {Side::left, Side::right}) {
    const Case c = case_on(side);
    const Plan plan = solve(ball(), c);
    for (const double by_deg : {-10.0, 10.0}) {
      const WhatIf w = if_coil_turned(ball(), c, plan, by_deg);
      CHECK(w.off_mm == Approx(ball_mm * std::sin(60 / ball_mm) * 10 * M_PI / 180).epsilon(0.2));
      CHECK((*w.really.edge_mark.tape - *plan.treatment.edge_mark.tape).norm() < 0.05);
      // The front turned toward the midline puts the centre outward.
      CHECK((w.really.pulse - w.meant).dot(plan.treatment.inward) * by_deg < 0);
    }
  }
}

TEST_CASE("turned about its centre the coil stays over the site, at the other angle", "[slow]") {
  for (const Side side : {Side::left, Side::right}) {
    const Case c = case_on(side);
    const Plan plan = solve(ball(), c);
    const WhatIf w = if_turned_in_place(ball(), c, plan, 30);
    CHECK(w.off_mm < 1e-6);
    CHECK(w.really.angle_deg == Approx(plan.treatment.angle_deg + 30));
    CHECK(w.really.front.dot(plan.treatment.front) == Approx(std::cos(30 * M_PI / 180)).margin(1e-6));
    CHECK_THROWS_AS(if_turned_in_place(ball(), c, plan, 91), GeometryError);
  }
}

// Tilted by t and lifted clear, the flat face touches the ball where its normal meets it, so the face's plane
// lies R from the ball's centre: its centre stands R / cos t from it along the site's own normal (elementary
// geometry), as long as that place lies within the casing.
TEST_CASE("a coil that stands off is further up, or askew and clear of the head", "[slow]") {
  const Case c = case_on();
  const Plan plan = solve(ball(), c);
  const WhatIf gap = if_standing_off(ball(), c, plan, 5, {});
  CHECK(gap.off_mm < 1e-6);
  CHECK(gap.really.lift_mm == Approx(plan.treatment.lift_mm + 5));
  CHECK((gap.really.edge - plan.treatment.edge - 5 * plan.treatment.normal).norm() < 1e-9);
  CHECK_FALSE(gap.really.mark);
  for (const double roll : {-12.0, 12.0}) {
    const WhatIf w = if_standing_off(ball(), c, plan, 0, {roll, 0});
    const Vector3d centre = w.really.pulse + w.really.lift_mm * w.really.normal;
    CHECK(centre.norm() == Approx(ball_mm / std::cos(roll * M_PI / 180)).margin(0.05));
    CHECK(w.really.normal.dot(plan.treatment.normal) == Approx(std::cos(roll * M_PI / 180)).margin(1e-9));
    // Right side down: the normal leans to the right.
    CHECK(w.really.normal.dot(plan.treatment.front.cross(plan.treatment.normal)) * roll > 0);
    CHECK(w.really.inward.dot(plan.treatment.inward) > 0.9);
    CHECK(std::abs(w.really.forward.dot(w.really.normal)) < 1e-9);
  }
  CHECK_THROWS_AS(if_standing_off(ball(), c, plan, 31, {}), GeometryError);
  CHECK_THROWS_AS(if_standing_off(ball(), c, plan, -1, {}), GeometryError);
  CHECK_THROWS_AS(if_standing_off(ball(), c, plan, 0, {40, 0}), GeometryError);
}

// R asin(d / R) - d = 5.7 mm for R = 90, d = 60; the coil's angle is kept, which on a sphere turns it by a
// fraction of a degree about the mark.
TEST_CASE("a mark made by tape and used by drop moves the pulse by what the table of rules says", "[slow]") {
  const Case c = case_on();
  const Plan plan = solve(ball(), c);
  const WhatIf w = if_rule_changed(ball(), c, plan, MarkRule::drop);
  CHECK(w.off_mm == Approx(ball_mm * std::asin(60 / ball_mm) - 60).margin(0.5));
}

// On a sphere marks, coil and pulse all turn with the cap: a point an angle away from the axis of the turn
// goes along the skin by 2 R asin(sin(angle) sin(half the turn)) (elementary geometry).
TEST_CASE("a cap slid by 5 degrees takes the pulse along by the arc of its turn", "[slow]") {
  for (const Side side : {Side::left, Side::right}) {
    const Case c = case_on(side);
    const Plan plan = solve(ball(), c);
    const double half = 2.5 * M_PI / 180, slid = 2 * half * ball_mm;
    for (const auto& [move, axis] : {std::pair(CapMove{slid, 0, 0}, Vector3d(1, 0, 0)),
                                     std::pair(CapMove{0, slid, 0}, Vector3d(0, 1, 0)),
                                     std::pair(CapMove{0, 0, 5}, Vector3d(0, 0, 1))}) {
      const double away = plan.treatment.pulse.cross(axis).norm() / plan.treatment.pulse.norm();
      CHECK(if_cap_slipped(ball(), c, plan, move).off_mm ==
            Approx(2 * ball_mm * std::asin(away * std::sin(half))).margin(0.25));
    }
    // Slid forward, it goes forward.
    const WhatIf w = if_cap_slipped(ball(), c, plan, {slid, 0, 0});
    CHECK((w.really.pulse - w.meant).dot(plan.treatment.forward) > 5);
  }
}

// In the plane of the front axis: the coil's edge at (d, R), a line through it that leans forward by the
// eye's angle meets the circle behind the place straight below (elementary geometry). The coil then lies
// further forward by the arc between them.
TEST_CASE("an eye in front of the coil's axis lays the coil too far forward, one behind it too far back") {
  for (const Side side : {Side::left, Side::right}) {
    Case c = case_on(side);
    use_one_rule(c, MarkRule::drop);
    const Plan plan = solve(ball(), c, TapeDistances::left_out);
    const auto arc = [](double deg) {
      const double a = deg * M_PI / 180;
      const Eigen::Vector2d edge(60, ball_mm), down(-std::sin(a), -std::cos(a));
      const double b = edge.dot(down);
      const Eigen::Vector2d at =
          edge + (-b - std::sqrt(b * b - edge.squaredNorm() + ball_mm * ball_mm)) * down;
      return ball_mm * std::atan2(at[0], at[1]);
    };
    for (const double deg : {-15.0, 10.0}) {
      const WhatIf w = if_looked_aside(ball(), c, plan, deg, 0);
      // Forward turns a little with the place, which adds a few tenths of a millimetre to the side.
      CHECK(w.off_mm == Approx(std::abs(arc(0) - arc(deg))).epsilon(0.07));
      CHECK((w.really.pulse - w.meant).dot(plan.treatment.front) * deg > 0);
      REQUIRE(w.sight);
      CHECK((w.sight->skin - *plan.treatment.mark).norm() < 1e-9);
      // Eye, edge and mark in line, and that line off the coil's axis by the angle asked for.
      const Vector3d lean = (w.sight->eye - w.sight->skin).normalized();
      CHECK((w.sight->edge - w.sight->skin).normalized().isApprox(lean, 1e-6));
      CHECK(std::acos(lean.dot(w.really.normal)) * 180 / M_PI == Approx(std::abs(deg)).margin(0.3));
    }
    const WhatIf aside = if_looked_aside(ball(), c, plan, 0, 10);
    const Vector3d right = plan.treatment.front.cross(plan.treatment.normal);
    CHECK((aside.really.pulse - aside.meant).dot(right) ==
          Approx(22.9 * std::tan(10 * M_PI / 180)).epsilon(0.12));
    CHECK(if_looked_aside(ball(), c, plan, 0, 0).off_mm < 0.03);
    CHECK_THROWS_AS(if_looked_aside(ball(), c, plan, 50, 0), GeometryError);
    CHECK_THROWS_AS(if_looked_aside(ball(), c, plan, std::nan(""), 0), GeometryError);
    CHECK_THROWS_AS(if_looked_aside(ball(), case_on(side), plan, 10, 0), GeometryError);
  }
}

TEST_CASE("a mistake that makes no sense is refused in a sentence", "[slow]") {
  Case c = case_on();
  Plan plan = solve(ball(), c);
  CHECK_THROWS_AS(if_vertex_off(ball(), c, plan, 60, 0), GeometryError);
  CHECK_THROWS_AS(if_vertex_off(ball(), c, plan, std::nan(""), 0), GeometryError);
  CHECK_THROWS_AS(if_misread(ball(), c, plan, Misread::treatment, 80), GeometryError);
  CHECK_THROWS_AS(if_misread(ball(), c, plan, Misread::centre_to_edge, 400), GeometryError);
  CHECK_THROWS_AS(if_coil_turned(ball(), c, plan, 120), GeometryError);
  CHECK_THROWS_AS(if_cap_slipped(ball(), c, plan, {0, -51, 0}), GeometryError);
  CHECK_THROWS_AS(if_cap_slipped(ball(), c, plan, {0, 0, std::nan("")}), GeometryError);
  Case landmark_case = c;
  landmark_case.treatment = {TreatmentRule::landmark, 50, "F3"};
  CHECK_THROWS_AS(if_misread(ball(), landmark_case, plan, Misread::treatment, 5), GeometryError);
  plan.treatment.mark.reset();
  CHECK_THROWS_AS(if_rule_changed(ball(), c, plan, MarkRule::drop), GeometryError);
}
