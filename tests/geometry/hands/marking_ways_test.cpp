#include "geometry/hands/marking_ways.h"

#include <Eigen/Dense>
#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/hands/tolerance.h"
#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

CoilSetup slab() {
  CoilSetup setup;
  setup.model = flat_coil();
  return setup;
}

const WayTried& way(const Tolerance& t, MarkingWay wanted) {
  for (const auto& w : t.ways)
    if (w.way == wanted) return w;
  throw std::runtime_error("this way was not tried");
}

}  // namespace

TEST_CASE("marks are met at the coil's front, along its edge, at its side and its front corners") {
  CoilSetup setup = slab();  // 170 mm wide, 120 deep
  const auto at = [&](MarkingWay way, size_t i, bool right = true) {
    return coil_places(setup, way, right).at(i).on_coil;
  };
  CHECK(at(MarkingWay::front, 0).isApprox(Vector3d(0, 60, 0)));
  CHECK(at(MarkingWay::front_line, 0).isApprox(Vector3d(-20, 60, 0)));
  CHECK(at(MarkingWay::front_line, 1).isApprox(Vector3d(20, 60, 0)));
  CHECK(at(MarkingWay::front_and_side, 1).x() == Approx(85));
  CHECK(at(MarkingWay::front_and_side, 1, false).x() == Approx(-85));
  CHECK(at(MarkingWay::corners, 0).isApprox(Vector3d(-85, 60, 0)));
  CHECK(at(MarkingWay::corners, 1).isApprox(Vector3d(85, 60, 0)));
  // The front edge is where the case says; what is in front moves with it.
  setup.centre_to_edge_mm = 72;
  CHECK(at(MarkingWay::front_line, 0).isApprox(Vector3d(-20, 72, 0)));
  CHECK(at(MarkingWay::corners, 1).isApprox(Vector3d(85, 72, 0)));
  // One line is looked at in one, corners are not.
  CHECK(coil_places(setup, MarkingWay::front_line)[0].look ==
        coil_places(setup, MarkingWay::front_line)[1].look);
  CHECK(coil_places(setup, MarkingWay::corners)[0].look != coil_places(setup, MarkingWay::corners)[1].look);
}

// Least squares of a few marks of the same pencil on a flat sheet (any textbook): the angle is known to the
// pencil's error over the root of the summed squares of the marks' levers about where they hold the coil.
// Curved, a mark at arc s of the ball turns with R sin(s / R).
TEST_CASE("more marks hold the angle better, as least squares on paper say", "[slow]") {
  constexpr double R = 90, pencil = 1;
  const Head ball = sphere_head(R, 6);
  Case c;
  c.coil.model.parts = {{"casing", {{-50, -40}, {50, -40}, {50, 40}, {-50, 40}}, 0, 20}};
  c.coil.centre_to_edge_mm = 40;
  use_one_rule(c, MarkRule::tape);
  c.treatment.rule = TreatmentRule::landmark;  // on the top, with skin all around
  c.treatment.label = "C1";
  HandErrors e{0, 0, pencil, 20, 0, 0, 0, 0, 0, 0};
  const Plan plan = solve(ball, c, TapeDistances::left_out);
  const Tolerance t = tolerance(ball, c, plan, e, {.placements = 0});
  REQUIRE(t.ways.size() == all_marking_ways.size());
  const auto curved = [&](const Vector3d& flat) {
    const double s = flat.norm();
    return Vector3d(R * std::sin(s / R) / s * flat);
  };
  const auto expected_deg = [&](const WayTried& w) {
    Eigen::Matrix3d normal = Eigen::Matrix3d::Zero();
    const auto add = [&](const Vector3d& row, double sd) { normal += row * row.transpose() / (sd * sd); };
    for (const CoilPlace& p : coil_places(c.coil, w.way, w.right_side)) {
      const Vector3d at = curved(p.on_coil);
      add({1, 0, -at.y()}, pencil);
      add({0, 1, at.x()}, pencil);
    }
    add({1, 0, 0}, pencil);  // the site mark aside of the centre line
    add({0, 0, 1}, radians(20));
    return std::sqrt(2 / M_PI * normal.inverse()(2, 2)) * 180 / M_PI;
  };
  for (const auto& w : t.ways) {
    INFO(static_cast<int>(w.way));
    CHECK(w.angle_mean_deg == Approx(expected_deg(w)).epsilon(0.1));
    CHECK(w.marks.size() == coil_places(c.coil, w.way).size());
  }
  const double one = way(t, MarkingWay::front).angle_mean_deg;
  CHECK(way(t, MarkingWay::corners).angle_mean_deg < 0.6 * one);
  CHECK(way(t, MarkingWay::front_and_side).angle_mean_deg < one);
  CHECK(t.angle_mean_deg == Approx(one));
}

// Corner marks drawn by tape and met by dropping: by symmetry the coil stays on the line of its front axis,
// slid to where the drops of its corners are nearest to their marks, all on a sphere (elementary geometry).
// The plan's own coil has slid by what its one front mark differs.
TEST_CASE("a way whose marks would put the coil elsewhere without any error is told with that", "[slow]") {
  constexpr double R = 90, edge = 40, corner = 50;
  const Head ball = sphere_head(R, 6);
  Case c;
  c.coil.model.parts = {
      {"casing", {{-corner, -edge}, {corner, -edge}, {corner, edge}, {-corner, edge}}, 0, 20}};
  c.coil.centre_to_edge_mm = edge;
  c.treatment.rule = TreatmentRule::landmark;
  c.treatment.label = "C1";
  c.treatment.drawn_by = MarkRule::tape;
  c.coil.laid_by = MarkRule::drop;
  const HandErrors nearly_none{0, 0, 0.05, 20, 0, 0, 0, 0, 0, 0};
  const Tolerance t =
      tolerance(ball, c, solve(ball, c, TapeDistances::left_out), nearly_none, {.placements = 0});

  const double s = std::hypot(corner, edge), flat = R * std::sin(s / R) / s;
  const Vector3d mark(flat * corner, flat * edge, R * std::cos(s / R));
  const auto missed = [&](double slid) {
    const Vector3d dropped(corner, edge, std::sqrt(R * R - s * s));
    return (Eigen::AngleAxisd(-slid / R, Vector3d::UnitX()) * dropped - mark).norm();
  };
  double slid = 0;
  for (double by = 0; by > -10; by -= 0.01)
    if (missed(by) < missed(slid)) slid = by;
  const double own = edge - R * std::asin(edge / R);
  CHECK(std::abs(slid - own) > 1);
  CHECK(way(t, MarkingWay::corners).mean_mm == Approx(std::abs(slid - own)).margin(0.2));
  CHECK(way(t, MarkingWay::front).mean_mm < 0.15);
}

TEST_CASE("ways are told worst to best, and one whose marks fall off the head is left out", "[slow]") {
  const Head ball = sphere_head(90, 6);
  Case c;
  c.coil.model = flat_coil();
  const Plan plan = solve(ball, c, TapeDistances::left_out);
  const Tolerance t = tolerance(ball, c, plan, {}, {.placements = 0});
  REQUIRE(t.ways.size() >= 2);
  for (size_t i = 0; i + 2 < t.ways.size(); ++i) CHECK(t.ways[i].mean_mm >= t.ways[i + 1].mean_mm);
  CHECK(t.ways.back().mean_mm <= t.ways.front().mean_mm);
  CHECK(way(t, MarkingWay::front).mean_mm == Approx(t.first_order.mean_mm));
  // A coil so wide that its corners look past the head.
  c.coil.model.parts[0].outline = {{-130, -60}, {130, -60}, {130, 60}, {-130, 60}};
  const Plan wide = solve(ball, c, TapeDistances::left_out);
  const Tolerance less = tolerance(ball, c, wide, {}, {.placements = 0});
  for (const auto& w : less.ways) CHECK(w.way != MarkingWay::corners);
}
