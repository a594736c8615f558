#include "geometry/plan/solve.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <thread>

#include "geometry/base/error.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

/// An ellipsoid with its fiducials where a head has them, symmetric.
Head egg(int level = 6) {
  return {sphere(1, level, {76, 97, 92}), {{0, 95, 12}, {0, -96, -2}, {-75, 0, -16}, {75, 0, -16}}};
}

Case case_of_egg() {
  Case c;
  c.coil.model = flat_coil();
  use_one_rule(c, MarkRule::tape);
  return c;
}

/// Where tape distances are not the question, they need not be worked out.
Plan quick(const Head& head, const Case& c) {
  return solve(head, c, TapeDistances::left_out);
}

Vector3d mirrored(const Vector3d& v) {
  return {-v.x(), v.y(), v.z()};
}

const GridSpot& spot(const Plan& plan, int row, int column) {
  for (const auto& n : plan.grid)
    if (n.row == row && n.column == column) return n;
  throw std::runtime_error("no such spot");
}

void check_same(const Placement& a, const Placement& b, const Eigen::Affine3d& motion, double within_mm) {
  CHECK((motion * a.pulse - b.pulse).norm() < within_mm);
  CHECK((motion * a.edge - b.edge).norm() < within_mm);
  for (const MarkRule rule : {MarkRule::tape, MarkRule::drop, MarkRule::nearest}) {
    REQUIRE(a.edge_mark.by(rule).has_value() == b.edge_mark.by(rule).has_value());
    if (a.edge_mark.by(rule))
      CHECK((motion * *a.edge_mark.by(rule) - *b.edge_mark.by(rule)).norm() < within_mm);
  }
}

}  // namespace

TEST_CASE("the start lies its offsets from the vertex: along the coronal tape, then forward") {
  const Head head = egg(6);
  const Plan plan = quick(head, case_of_egg());
  // Common practice, no source: 5 cm toward the ear, then 1 cm forward.
  CHECK(plan.start.pulse.x() < -40);
  const PlanLine* lateral = nullptr;
  const PlanLine* anterior = nullptr;
  for (const auto& l : plan.lines) {
    if (l.name == "lateral") lateral = &l;
    if (l.name == "anterior") anterior = &l;
  }
  REQUIRE(lateral);
  REQUIRE(anterior);
  double walked = 0;
  for (size_t i = 1; i < lateral->points.size(); ++i)
    walked += (lateral->points[i] - lateral->points[i - 1]).norm();
  CHECK(walked == Approx(50).margin(0.01));
  CHECK((lateral->points.front() - head.skin().position(head.vertex())).norm() < 1e-3);
  CHECK((lateral->points.back() - anterior->points.front()).norm() < 1e-6);
  CHECK(anterior->length_mm == Approx(10).margin(1e-6));
  CHECK((anterior->points.back() - plan.start.pulse).norm() < 1e-6);
  CHECK(plan.start.pulse.y() > anterior->points.front().y() + 9);
}

TEST_CASE("the grid is drawn on edge marks a pitch apart, and the hotspot and site follow the spot") {
  const Head head = egg(6);
  Case c = case_of_egg();
  c.hotspot = {1, -1};
  const Plan plan = quick(head, c);
  REQUIRE(plan.grid.size() == 9);
  for (int row = -1; row <= 1; ++row)
    for (int column = -1; column <= 1; ++column) {
      const auto& n = spot(plan, row, column);
      REQUIRE(n.placement.edge_mark.tape);
      // Marks a pitch apart along the skin; over 1 cm the chord is shorter by under 0.01 mm.
      if (row < 1)
        CHECK((*spot(plan, row + 1, column).placement.edge_mark.tape - *n.placement.edge_mark.tape).norm() ==
              Approx(10).margin(0.08));
      if (column < 1)
        CHECK((*spot(plan, row, column + 1).placement.edge_mark.tape - *n.placement.edge_mark.tape).norm() ==
              Approx(10).margin(0.15));
    }
  CHECK((plan.hotspot.pulse - spot(plan, 1, -1).placement.pulse).norm() == 0);
  CHECK(spot(plan, 1, 0).placement.pulse.y() > spot(plan, -1, 0).placement.pulse.y() + 15);
  CHECK(spot(plan, 0, 1).placement.pulse.x() <
        spot(plan, 0, -1).placement.pulse.x() - 10);  // outward is left here
  // The treatment site is in the same parasagittal plane, forward.
  CHECK(plan.treatment.pulse.x() == Approx(plan.hotspot.pulse.x()).margin(1e-6));
  CHECK(plan.treatment.pulse.y() > plan.hotspot.pulse.y() + 35);

  c.search.grid_on = GridOn::pulse_points;
  const Plan on_pulses = quick(head, c);
  CHECK((spot(on_pulses, 1, 0).placement.pulse - spot(on_pulses, 0, 0).placement.pulse).norm() ==
        Approx(10).margin(0.08));
  CHECK((spot(on_pulses, 0, 0).placement.pulse - plan.start.pulse).norm() < 1e-9);
}

TEST_CASE("the right side mirrors the left, mark for mark", "[slow]") {
  const Head head = egg(6);
  for (const MarkRule rule : {MarkRule::tape, MarkRule::drop, MarkRule::nearest}) {
    Case c = case_of_egg();
    use_one_rule(c, rule);
    const Plan left = solve(head, c);
    c.side = Side::right;
    const Plan right = solve(head, c);
    const double within_mm = 0.05;
    for (size_t i = 0; i < 9; ++i) {
      CHECK((mirrored(left.grid[i].placement.pulse) - right.grid[i].placement.pulse).norm() < within_mm);
      CHECK(
          (mirrored(*left.grid[i].placement.edge_mark.by(rule)) - *right.grid[i].placement.edge_mark.by(rule))
              .norm() < within_mm);
    }
    CHECK((mirrored(left.treatment.pulse) - right.treatment.pulse).norm() < within_mm);
    CHECK(left.treatment.pulse_tape->left_tragus_mm ==
          Approx(right.treatment.pulse_tape->right_tragus_mm).margin(0.05));
  }
}

TEST_CASE("a plan follows the head through any rigid motion", "[slow]") {
  const Head head = lopsided_head(6);
  const Plan plan = quick(head, case_of_egg());
  for (const double angle : {0.3, 2.0, 3.1}) {
    Eigen::Affine3d motion = Eigen::Affine3d::Identity();
    motion.translate(Vector3d(-200, 90 * angle, 40));
    motion.rotate(Eigen::AngleAxisd(angle, Vector3d(1, angle, -0.4).normalized()));
    const Plan moved = quick(moved_head(head, motion), case_of_egg());
    check_same(plan.start, moved.start, motion, 0.01);
    check_same(plan.treatment, moved.treatment, motion, 0.05);
    for (size_t i = 0; i < 9; ++i) check_same(plan.grid[i].placement, moved.grid[i].placement, motion, 0.05);
    CHECK(moved.tapes.nasion_inion_mm == Approx(plan.tapes.nasion_inion_mm).margin(1e-6));
  }
}

TEST_CASE("scaling head and settings by k scales every length by k", "[slow]") {
  const Head head = lopsided_head(6);
  const double k = 1.08;
  Case c = case_of_egg();
  c.coil.model.parts[0].outline = {{-50, -40}, {50, -40}, {50, 40}, {-50, 40}};
  const Plan plan = solve(head, c);
  Case larger = c;
  larger.search.lateral_mm *= k;
  larger.search.anterior_mm *= k;
  larger.search.pitch_mm *= k;
  larger.coil.centre_to_edge_mm *= k;
  larger.treatment.distance_mm *= k;
  larger.coil.model.contact_patch_mm *= k;
  for (auto& p : larger.coil.model.parts[0].outline) p *= k;
  Eigen::Affine3d motion = Eigen::Affine3d::Identity();
  motion.scale(k);
  const Plan grown = solve(moved_head(head, motion), larger);
  // A tape keeps its width while the head grows, which moves its end by some hundredths.
  check_same(plan.start, grown.start, motion, 0.05);
  check_same(plan.treatment, grown.treatment, motion, 0.1);
  CHECK(grown.treatment.pulse_tape->vertex_mm ==
        Approx(k * plan.treatment.pulse_tape->vertex_mm).margin(0.02));
  CHECK(*grown.start.drop_gap_mm == Approx(k * *plan.start.drop_gap_mm).margin(0.01));
}

TEST_CASE("a landmark treatment sits on the landmark, and turns to the side the landmark is on") {
  const Head head = egg(6);
  Case c = case_of_egg();
  c.treatment = {TreatmentRule::landmark, 50, "f4", MarkRule::tape};
  const Plan plan = quick(head, c);
  const auto f4 = landmark(head, "F4");
  CHECK((plan.treatment.pulse - f4->at).norm() < 1e-9);
  CHECK(plan.treatment.front.x() < 0);  // toward the midline from the right
  for (const auto& a : plan.treatment_alternatives)
    if (a.label == "F4") CHECK(a.tape_from_treatment_mm == Approx(0).margin(1e-6));
  c.treatment.label = "Fz";
  CHECK(quick(head, c).treatment.front.x() >
        0);  // on the midline the case's side decides: left, so front to the right
}

TEST_CASE("alternatives are listed with their tape distance from the site") {
  const Plan plan = quick(egg(6), case_of_egg());
  REQUIRE(plan.treatment_alternatives.size() == 5);
  CHECK(plan.treatment_alternatives[0].tape_from_treatment_mm == Approx(0).margin(1e-6));
  CHECK(plan.treatment_alternatives[1].tape_from_treatment_mm == Approx(5).margin(0.05));
  CHECK(plan.treatment_alternatives[2].tape_from_treatment_mm == Approx(10).margin(0.1));
  CHECK(plan.treatment_alternatives[3].label == "F3");
  CHECK(plan.treatment_alternatives[4].label == "F3-AF3");
  // PubMed 20633422: a site half way between F3 and AF3 lies in front of the 5 cm point.
  CHECK(plan.treatment_alternatives[4].pulse.y() > plan.treatment.pulse.y());
}

TEST_CASE("the alternative between F3 and AF3 lies half way, on either side") {
  const Head head = lopsided_head(6);
  for (const Side side : {Side::left, Side::right}) {
    Case c = case_of_egg();
    c.side = side;
    const Plan plan = quick(head, c);
    const std::string f = side == Side::left ? "F3" : "F4", af = "A" + f;
    const Vector3d a = find(plan.landmarks, f)->at, b = find(plan.landmarks, af)->at;
    int seen = 0;
    for (const auto& site : plan.treatment_alternatives) {
      if (site.label != f + "-" + af) continue;
      ++seen;
      CHECK((site.pulse - a).norm() == Approx((site.pulse - b).norm()).epsilon(0.03));
      // Nor beside the way between them, but for the head's bulge.
      CHECK((site.pulse - a).norm() < 0.51 * (b - a).norm() + 0.2);
    }
    CHECK(seen == 1);
  }
}

TEST_CASE("alternatives to a site across the head lie on its side, and none is a step from the hotspot") {
  for (const Side side : {Side::left, Side::right}) {
    Case c = case_of_egg();
    c.side = side;
    c.treatment.rule = TreatmentRule::landmark;
    c.treatment.label = side == Side::left ? "C4" : "C3";
    const Plan plan = quick(egg(5), c);
    std::vector<std::string> labels;
    for (const auto& a : plan.treatment_alternatives) {
      CHECK(a.rule == TreatmentRule::landmark);
      CHECK((a.pulse.x() > 0) == (side == Side::left));  // x to the patient's right
      labels.push_back(a.label);
    }
    CHECK(labels == (side == Side::left ? std::vector<std::string>{"F4", "F4-AF4"}
                                        : std::vector<std::string>{"F3", "F3-AF3"}));
  }
}

TEST_CASE("solve is pure: the same from several threads at once, and nothing kept between cases", "[slow]") {
  const Head head = lopsided_head(5);
  const Plan alone = solve(head, case_of_egg());
  std::vector<Plan> plans(4);
  const Head fresh = lopsided_head(5);
  std::vector<std::thread> threads;
  threads.reserve(plans.size());
  for (auto& p : plans) threads.emplace_back([&] { p = solve(fresh, case_of_egg()); });
  for (auto& t : threads) t.join();
  for (const auto& p : plans) {
    CHECK((p.treatment.pulse - alone.treatment.pulse).norm() == 0);
    CHECK(p.treatment.pulse_tape->nasion_mm == alone.treatment.pulse_tape->nasion_mm);
    CHECK((p.grid[8].placement.edge - alone.grid[8].placement.edge).norm() == 0);
  }
}

TEST_CASE("settings out of range are refused, naming the setting and the range") {
  const Head head = egg(4);
  const auto refused = [&](const auto& spoil, const char* name) {
    Case c = case_of_egg();
    spoil(c);
    CHECK_THROWS_WITH(quick(head, c), Catch::Contains(name));
  };
  refused([](Case& c) { c.search.lateral_mm = 101; }, "search.lateral_mm must be from 0 to 100 mm");
  refused([](Case& c) { c.search.anterior_mm = -51; }, "search.anterior_mm");
  refused([](Case& c) { c.search.pitch_mm = 0; }, "search.pitch_mm");
  refused([](Case& c) { c.coil.angle_deg = 200; }, "coil.angle_deg");
  refused([](Case& c) { c.coil.angle_deg = std::nan(""); }, "not a number");
  refused([](Case& c) { c.coil.centre_to_edge_mm = 9; }, "coil.centre_to_edge_mm");
  refused([](Case& c) { c.coil.lift_mm = -1; }, "coil.lift_mm");
  refused([](Case& c) { c.hotspot.row = 2; }, "hotspot.row");
  refused([](Case& c) { c.hotspot.column = -2; }, "hotspot.column");
  refused([](Case& c) { c.treatment.distance_mm = 0; }, "treatment.distance_mm");
  refused([](Case& c) { c.treatment = {TreatmentRule::landmark, 50, "Q9"}; }, "Q9");
  refused([](Case& c) { c.tape_mm.circumference_mm = 300; }, "tape_mm.circumference");
  refused([](Case& c) { c.search.anterior_mm = 50, c.search.lateral_mm = 20, c.treatment.distance_mm = 100; },
          "face");
}

TEST_CASE("tapes that differ from the head by over 5 mm are said, smaller differences not") {
  const Head head = egg(5);
  Case c = case_of_egg();
  const auto said = [&](double off_mm) {
    c.tape_mm.nasion_inion_mm = head.tapes().nasion_inion_mm + off_mm;
    std::vector<std::string> all;  // that this egg is no usual head is said as well
    for (const Message& w : quick(head, c).warnings)
      if (english(w).find("was entered as") != std::string::npos) all.push_back(english(w));
    return all;
  };
  CHECK(said(4).empty());
  CHECK(said(-4).empty());
  REQUIRE(said(6).size() == 1);
  CHECK(said(6).front().find("nasion-inion") != std::string::npos);
  CHECK(said(-6).size() == 1);
}

TEST_CASE("a plan without tape distances is the same plan otherwise", "[slow]") {
  const Head head = egg(5);
  const Plan whole = solve(head, case_of_egg());
  const Plan without = solve(head, case_of_egg(), TapeDistances::left_out);
  CHECK(!without.treatment.pulse_tape);
  CHECK(!without.grid[0].placement.edge_mark_tape);
  CHECK(whole.treatment.pulse_tape.has_value());
  for (size_t i = 0; i < 9; ++i)
    CHECK((whole.grid[i].placement.pulse - without.grid[i].placement.pulse).norm() == 0);
  CHECK((whole.treatment.edge - without.treatment.edge).norm() == 0);
}

TEST_CASE("tape distances measured path by path are those looked up", "[slow]") {
  const Head head = egg(5);
  const Plan looked_up = solve(head, case_of_egg());
  const Plan measured = solve(head, case_of_egg(), TapeDistances::each_path);
  // The plan file rounds to a thousandth; the lookup interpolates between four views of each triangle's edge.
  constexpr double alike_mm = 0.02;
  const auto compare = [&](const TapeFrom& a, const TapeFrom& b) {
    CHECK(a.vertex_mm == Approx(b.vertex_mm).margin(alike_mm));
    CHECK(a.nasion_mm == Approx(b.nasion_mm).margin(alike_mm));
    CHECK(a.left_tragus_mm == Approx(b.left_tragus_mm).margin(alike_mm));
    CHECK(a.right_tragus_mm == Approx(b.right_tragus_mm).margin(alike_mm));
  };
  const auto compare_coils = [&](const Placement& a, const Placement& b) {
    compare(*a.pulse_tape, *b.pulse_tape);
    compare(a.edge_mark_tape.value(), b.edge_mark_tape.value());
  };
  compare_coils(looked_up.start, measured.start);
  compare_coils(looked_up.hotspot, measured.hotspot);
  compare_coils(looked_up.treatment, measured.treatment);
  for (size_t i = 0; i < 9; ++i) compare_coils(looked_up.grid[i].placement, measured.grid[i].placement);
  const Plan one = solve(head, case_of_egg(), TapeDistances::treatment_alone);
  compare_coils(measured.treatment, one.treatment);
  CHECK(!one.start.pulse_tape);
}

TEST_CASE(
    "a hotspot between spots lies where it was measured from the start, and the treatment goes from there",
    "[slow]") {
  const Head head = sphere_head(90, 6);
  Case the_case = case_of_egg();
  const Side side = GENERATE(Side::left, Side::right);
  the_case.side = side;
  the_case.hotspot = {0, 1};
  the_case.hotspot_off_grid = {4, 6};
  const Plan plan = solve(head, the_case, TapeDistances::each_path);
  const Vector3d off = plan.hotspot.pulse - plan.start.pulse;
  // Straight, on a sphere of 90 mm: along the tangents to the part in a hundred.
  CHECK(off.dot(plan.start.forward) == Approx(4).margin(0.1));
  CHECK(-off.dot(plan.start.inward) == Approx(6).margin(0.1));
  REQUIRE(plan.hotspot.pulse_tape);
  // The same spot alone is elsewhere, and so is its treatment site.
  the_case.hotspot_off_grid = {};
  const Plan on_spot = quick(head, the_case);
  CHECK((on_spot.hotspot.pulse - plan.hotspot.pulse).norm() > 3);
  CHECK((on_spot.treatment.wanted - plan.treatment.wanted).norm() > 3);
  // Fifty millimetres forward of it by the parasagittal tape, which keeps to one plane square to right.
  CHECK((plan.treatment.wanted - plan.hotspot.pulse).dot(plan.axes.right) == Approx(0).margin(0.1));
  the_case.hotspot_off_grid = {{}, 41};
  CHECK_THROWS_AS(solve(head, the_case), GeometryError);
}
