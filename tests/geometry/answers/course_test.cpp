#include "geometry/answers/course.h"

#include <catch2/catch.hpp>

#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark;

namespace {

using Offsets = std::vector<std::optional<VisitOffset>>;

/// Visits with the pulse so far from the site, straight forward.
Offsets forward_by(const std::vector<double>& mm) {
  Offsets offsets;
  for (const double forward : mm) offsets.push_back(VisitOffset{std::abs(forward), forward, 0, 0});
  return offsets;
}

TapeReadings readings(const TapeFrom& from) {
  return {from.vertex_mm, from.nasion_mm, from.left_tragus_mm, from.right_tragus_mm};
}

}  // namespace

TEST_CASE("limits of a course are those of its first ten visits, and only a pulse further off is outside") {
  const Course course =
      course_of(forward_by({4, 5, 4, 5, 4, 5, 4, 5, 4, 5, 12, 0.1}), std::vector(12, false));
  REQUIRE(course.stretches.size() == 1);
  const CourseStretch& stretch = course.stretches[0];
  REQUIRE(stretch.distance);
  // Mean 4.5, moving range 1: 4.5 + 2.66 (NIST/SEMATECH e-Handbook 6.3.2.2).
  CHECK(stretch.distance->high == Approx(7.16));
  CHECK(stretch.distance->low == Approx(1.84));
  CHECK(course.outside[10]);
  CHECK_FALSE(course.outside[11]);  // below the low limit: nearer than ever
  CHECK(stretch.distance->outside == std::vector<std::size_t>{10});
}

TEST_CASE("an angle is outside either way") {
  Offsets offsets = forward_by({4, 5, 4, 5});
  for (const double deg : {0.0, 1.0, 0.0, 1.0, 0.0, 1.0, 0.0, 1.0, 9.0, -9.0}) {
    offsets.push_back(VisitOffset{4, 4, 0, deg});
  }
  const Course course = course_of(offsets, std::vector(offsets.size(), false));
  CHECK(course.outside[12]);
  CHECK(course.outside[13]);
  CHECK(std::count(course.outside.begin(), course.outside.end(), true) == 2);
}

TEST_CASE("marks drawn anew begin a stretch of their own, with its own limits") {
  Offsets offsets = forward_by({4, 5, 4, 20, 21, 20});
  offsets[1].reset();
  const Course course = course_of(offsets, {false, false, false, true, false, false});
  REQUIRE(course.stretches.size() == 2);
  CHECK(course.stretches[0].first == 0);
  CHECK(course.stretches[0].count == 3);
  CHECK(course.stretches[0].measured == std::vector<std::size_t>{0, 2});
  CHECK(course.stretches[1].first == 3);
  CHECK(course.stretches[1].measured == std::vector<std::size_t>{3, 4, 5});
  CHECK(course.stretches[1].distance->centre == Approx(61.0 / 3));
  CHECK(std::count(course.outside.begin(), course.outside.end(), true) == 0);
}

TEST_CASE("a course without visits, and one without known marks, say nothing") {
  CHECK(course_of({}, {}).stretches.empty());
  const Course course = course_of(Offsets(3), std::vector(3, false));
  REQUIRE(course.stretches.size() == 1);
  CHECK_FALSE(course.stretches[0].distance);
  CHECK_FALSE(course.stretches[0].place_drift);
}

TEST_CASE("a drift of the last visits is found in forward and toward the midline") {
  const Course course =
      course_of(forward_by({1, -1, 1, 0, -1, 1, 0, -1, -6, -5, -7, -6}), std::vector(12, false));
  REQUIRE(course.stretches[0].place_drift);
  CHECK(course.stretches[0].place_drift->before == 8);
  CHECK(course.stretches[0].place_drift->moved_mm.x() == Approx(-6).margin(1e-9));
  CHECK_FALSE(course.stretches[0].angle_drift);
}

TEST_CASE("a visit with the plan's own tapes agrees with the plan, with any two of them missing", "[slow]") {
  const Head head = tests::sphere_head(90, 5);
  Case the_case;
  the_case.coil.model = tests::flat_coil();
  use_one_rule(the_case, MarkRule::tape);
  const Plan plan = solve(head, the_case);
  const TapeFinder finder(head);
  Visit visit;
  visit.site_tape = readings(*plan.treatment.pulse_tape);
  visit.edge_tape = readings(*plan.treatment.edge_mark_tape);
  visit.site_tape.nasion_mm.reset();
  visit.site_tape.left_tragus_mm.reset();
  visit.edge_tape.vertex_mm.reset();
  visit.edge_tape.right_tragus_mm.reset();
  const VisitCheck found = check_visit(finder, head, the_case, plan, visit);
  REQUIRE(found.is_sure());
  const auto offset = offset_of(found);
  REQUIRE(offset);
  CHECK(offset->pulse_off_mm < 0.3);
  CHECK(std::abs(offset->angle_off_deg) < 0.3);

  // Marks moved forward and toward the midline: so is the pulse. They lie 62 mm apart on a sphere, so that
  // the edge mark moves nearly as the site mark does.
  Visit moved = visit;
  const auto measured = [&](const Eigen::Vector3d& at) { return tapes_to(head, head.skin().closest(at)); };
  const Eigen::Vector3d by = 8 * plan.treatment.forward;
  moved.site_tape = measured(plan.treatment.pulse + by);
  moved.edge_tape = measured(*plan.treatment.mark + by);
  const auto forward = offset_of(check_visit(finder, head, the_case, plan, moved));
  REQUIRE(forward);
  CHECK(forward->forward_mm == Approx(7).margin(1.5));
  CHECK(forward->pulse_off_mm == Approx(7).margin(1.5));

  // And toward the midline, which a course counts as positive.
  const Eigen::Vector3d inward = 8 * plan.treatment.inward;
  Visit nearer = visit;
  nearer.site_tape = measured(plan.treatment.pulse + inward);
  nearer.edge_tape = measured(*plan.treatment.mark + inward);
  const auto to_midline = offset_of(check_visit(finder, head, the_case, plan, nearer));
  REQUIRE(to_midline);
  CHECK(to_midline->toward_midline_mm > 4);
  CHECK(std::abs(to_midline->forward_mm) < 3);

  Visit half = visit;
  half.edge_tape = {};
  CHECK_FALSE(offset_of(check_visit(finder, head, the_case, plan, half)));
  Visit wrong = visit;
  wrong.site_tape = {20.0, 20.0, {}, {}};
  const VisitCheck refused = check_visit(finder, head, the_case, plan, wrong);
  CHECK_FALSE(refused.is_sure());
  CHECK_FALSE(refused.problem.empty());

  // Vertex and tragi alone fit a place in front and one behind: the one near the plan is taken, and said.
  Visit mirrored = visit;
  mirrored.site_tape = readings(*plan.treatment.pulse_tape);
  mirrored.site_tape.nasion_mm.reset();
  const VisitCheck nearest = check_visit(finder, head, the_case, plan, mirrored);
  REQUIRE(nearest.site);
  CHECK(nearest.site->places.size() == 2);
  CHECK(nearest.site->nearest_to_plan);
  CHECK(offset_of(nearest)->pulse_off_mm < 0.5);

  the_case.visits = {visit, half, moved};
  const auto [checks, course] = check_course(finder, head, the_case, plan);
  CHECK(checks.size() == 3);
  CHECK(course.offsets[0]);
  CHECK_FALSE(course.offsets[1]);
  CHECK(course.offsets[2]->pulse_off_mm > 5);
}

TEST_CASE("half and 95 of 100 visits lie within the ellipses of a normal scatter") {
  const Head head = tests::sphere_head(90, 5);
  Case the_case;
  the_case.coil.model = tests::flat_coil();
  const Plan plan = solve(head, the_case, TapeDistances::left_out);
  // Four visits at the corners of a square of 4 mm about a place 2 mm forward: variance 16 / 3 each way.
  Offsets offsets;
  for (const double x : {0.0, 4.0})
    for (const double y : {-2.0, 2.0}) offsets.push_back(VisitOffset{4, x, y, 0});
  const Course course = course_of(offsets, std::vector(4, false));
  const auto ellipses = course_ellipses(head, plan, course.stretches[0], course);
  REQUIRE(ellipses);
  const Placement& site = plan.treatment;
  // A circle; of a normal scatter in two directions the share p lies within sqrt(-2 ln(1 - p)) deviations.
  for (const auto& [outline, share] : {std::pair(ellipses->half, 0.5), std::pair(ellipses->most, 0.95)})
    for (const auto& at : outline) {
      const Eigen::Vector3d from = at - site.pulse;
      const double away = std::hypot(from.dot(site.forward) - 2, from.dot(site.inward));
      CHECK(away == Approx(std::sqrt(-2 * std::log(1 - share)) * std::sqrt(16.0 / 3)).epsilon(0.02));
    }
  CHECK_FALSE(course_ellipses(head, plan, CourseStretch{0, 2, {0, 1}, {}, {}, {}, {}}, course));
}
