#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/hands/check.h"
#include "geometry/head/on_head.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

/// Arc from the pulse point to a mark on a sphere, by each rule (a flat coil tangent to a sphere of
/// radius R, its edge d from its centre; elementary geometry).
double reach_mm(MarkRule rule, double d) {
  switch (rule) {
    case MarkRule::tape:
      return d;
    case MarkRule::drop:
      return ball_mm * std::asin(d / ball_mm);
    case MarkRule::nearest:
      return ball_mm * std::atan(d / ball_mm);
  }
  return 0;
}

Case case_of(MarkRule drawn_by, MarkRule laid_by, Side side = Side::left) {
  Case c;
  c.coil.model = flat_coil();
  c.side = side;
  c.search.drawn_by = c.treatment.drawn_by = drawn_by;
  c.coil.laid_by = laid_by;
  return c;
}

}  // namespace

// R asin(d / R) - R atan(d / R): 12.8 mm for an edge at 60, 15.9 at 64, 22.7 at 72.
TEST_CASE("a plan whose coil is laid far from where its pulse is wanted says so, and no other does",
          "[slow]") {
  const auto warned = [](MarkRule drawn_by, MarkRule laid_by, double edge_mm, Side side) {
    Case c = case_of(drawn_by, laid_by, side);
    c.coil.centre_to_edge_mm = edge_mm;
    std::vector<std::string> about;
    for (const Message& w : solve(ball(), c, TapeDistances::left_out).warnings)
      if (english(w).find("from the point that was wanted") != std::string::npos) about.push_back(english(w));
    return about;
  };
  for (const Side side : {Side::left, Side::right}) {
    CHECK(warned(MarkRule::drop, MarkRule::drop, 72, side).empty());
    CHECK(warned(MarkRule::drop, MarkRule::nearest, 60, side).empty());
    CHECK(warned(MarkRule::drop, MarkRule::nearest, 64, side).size() == 2);
    const auto both = warned(MarkRule::drop, MarkRule::nearest, 72, side);
    REQUIRE(both.size() == 2);
    CHECK_THAT(both[0],
               Catch::Contains(
                   "drawn by the drop rule and the coil laid over them by the nearest rule, the pulse at the "
                   "start lands 2.3 cm"));
    CHECK_THAT(both[1], Catch::Contains("the pulse at the treatment site lands 2.3 cm"));
    // Each by its own rule.
    Case c = case_of(MarkRule::drop, MarkRule::drop, side);
    c.coil.centre_to_edge_mm = 80;
    c.search.drawn_by = MarkRule::tape;  // R asin(d / R) - d = 18.3 mm along a front axis that turns a little
    const Plan plan = solve(ball(), c, TapeDistances::left_out);
    REQUIRE(plan.warnings.size() == 1);
    CHECK_THAT(english(plan.warnings[0]), Catch::Contains("at the start lands"));
  }
}

TEST_CASE(
    "on a sphere a coil laid by another rule than its mark was drawn by lies off by the rules' difference") {
  // On the midline, straight forward, pulse, wanted point and mark lie on one great circle. Beside it the way
  // forward turns a little from point to point, and the coil with it: a few hundredths of the difference.
  for (const bool midline : {true, false})
    for (const Side side : {Side::left, Side::right})
      for (const MarkRule drawn_by : all_mark_rules)
        for (const MarkRule laid_by : all_mark_rules)
          for (const double d : {40.0, 60.0}) {
            INFO(key_of(drawn_by) << ", laid by " << key_of(laid_by) << ", " << d << " mm, "
                                  << (midline ? "midline" : "beside it"));
            CoilSetup coil = case_of(drawn_by, laid_by).coil;
            coil.centre_to_edge_mm = d;
            coil.angle_deg = midline ? 0 : 45;
            const double x = midline ? 0 : 40 * way_to(side);
            const SurfacePoint wanted = ball().skin().closest({x, 20, 75});
            const LaidCoil laid = draw_and_lay(ball(), coil, drawn_by, side, wanted, TapeDistances::left_out);
            const Placement& p = laid.placement;
            const double ahead = reach_mm(drawn_by, d) - reach_mm(laid_by, d);
            const double margin = 0.05 + (midline ? 0 : 0.04 * std::abs(ahead));
            CHECK(p.wanted_to_pulse_mm == Approx(std::abs(ahead)).margin(margin));
            CHECK(arc_mm(p.wanted, p.pulse) == Approx(std::abs(ahead)).margin(margin));
            // A mark drawn too near for the way the coil is laid leaves the pulse behind the wanted point.
            const Vector3d off = p.pulse - p.wanted;
            if (std::abs(ahead) > 1) CHECK(off.dot(p.front) * (ahead > 0 ? 1 : -1) > 0.95 * off.norm());
            REQUIRE(p.mark);
            CHECK(arc_mm(p.wanted, *p.mark) == Approx(reach_mm(drawn_by, d)).margin(0.05));
            CHECK(arc_mm(p.pulse, *p.mark) == Approx(reach_mm(laid_by, d)).margin(0.05));
            REQUIRE(p.tape_to_draw_mm);
            CHECK(*p.tape_to_draw_mm == Approx(reach_mm(laid_by, d)).margin(0.05));
          }
}

TEST_CASE(
    "on a sphere every spot of a grid drawn by tape and laid by drop pulses behind the point measured") {
  for (const Side side : {Side::left, Side::right})
    for (const GridOn on : {GridOn::edge_marks, GridOn::pulse_points}) {
      Case c = case_of(MarkRule::tape, MarkRule::drop, side);
      c.search.grid_on = on;
      const Plan plan = solve(ball(), c, TapeDistances::left_out);
      const double behind = reach_mm(MarkRule::drop, 60) - 60;  // 5.7 mm
      for (const GridSpot& spot : plan.grid) {
        CHECK(spot.placement.wanted_to_pulse_mm == Approx(behind).margin(0.4));
        CHECK((spot.placement.pulse - spot.placement.wanted).dot(spot.placement.forward) < 0);
      }
      CHECK(plan.start.wanted_to_pulse_mm == Approx(behind).margin(0.4));
      // The hotspot is where the pulse that answered went, and the site is measured from there.
      // Forward is a circle of radius sqrt(R^2 - x^2) square to left-right.
      CHECK(plan.treatment.wanted.x() == Approx(plan.hotspot.pulse.x()).margin(0.05));
      const double radius = std::hypot(plan.hotspot.pulse.y(), plan.hotspot.pulse.z());
      const double turn = std::atan2(plan.treatment.wanted.y(), plan.treatment.wanted.z()) -
                          std::atan2(plan.hotspot.pulse.y(), plan.hotspot.pulse.z());
      CHECK(radius * turn == Approx(50).margin(0.05));
      CHECK(plan.treatment.wanted_to_pulse_mm == Approx(behind).margin(0.06));
    }
}

TEST_CASE("the tape that is named puts the laid coil's pulse on the wanted point, on a lopsided head",
          "[slow]") {
  for (const Side side : {Side::left, Side::right})
    for (const MarkRule laid_by : {MarkRule::drop, MarkRule::nearest})
      for (const double angle : {45.0, -30.0, 90.0}) {
        Case c = case_of(MarkRule::tape, laid_by, side);
        c.coil.angle_deg = angle;
        const Plan plan = solve(lop(), c, TapeDistances::left_out);
        REQUIRE(plan.start.tape_to_draw_mm);
        CHECK(plan.start.wanted_to_pulse_mm > 2);
        const SurfacePoint wanted = lop().skin().closest(plan.start.wanted);
        CoilSetup longer = c.coil;
        longer.centre_to_edge_mm = *plan.start.tape_to_draw_mm;
        const auto mark = edge_mark(lop(), longer, MarkRule::tape, side, wanted);
        REQUIRE(mark);
        const SurfacePoint pulse = pulse_for_mark(lop(), c.coil, laid_by, side, *mark);
        CHECK((lop().skin().position(pulse) - plan.start.wanted).norm() < 2);
      }
}

TEST_CASE("one rule for drawing and laying puts the pulse where it is wanted") {
  for (const MarkRule rule : all_mark_rules) {
    const Plan plan = solve(lop(), case_of(rule, rule), TapeDistances::left_out);
    for (const Placement* p : {&plan.start, &plan.hotspot, &plan.treatment}) {
      CHECK(p->wanted == p->pulse);
      CHECK(p->wanted_to_pulse_mm == 0);
    }
  }
}

TEST_CASE("the plan's own marks check as what the plan says, whatever rules, edge and side", "[slow]") {
  int checked = 0;
  for (const Side side : {Side::left, Side::right})
    for (const MarkRule drawn_by : all_mark_rules)
      for (const MarkRule laid_by : all_mark_rules)
        for (const double edge : {60.0, 72.0}) {
          INFO(key_of(drawn_by) << ", laid by " << key_of(laid_by) << ", edge " << edge << " mm");
          Case c = case_of(drawn_by, laid_by, side);
          c.coil.centre_to_edge_mm = edge;
          Plan plan;
          try {
            plan = solve(lop(), c, TapeDistances::left_out);
          } catch (const GeometryError&) {
            continue;  // a mark of the search that falls off this head
          }
          if (!plan.treatment.mark) continue;
          ++checked;
          const Surface& skin = lop().skin();
          const Check check = check_marks(lop(), c, plan, skin.closest(plan.treatment.wanted),
                                          skin.closest(*plan.treatment.mark));
          CHECK((check.as_laid.pulse - plan.treatment.pulse).norm() < 0.05);
          CHECK(check.pulse_off_mm < 0.05);
          CHECK(check.angle_deg == Approx(plan.treatment.angle_deg).margin(0.05));
        }
  CHECK(checked >= 24);
}
