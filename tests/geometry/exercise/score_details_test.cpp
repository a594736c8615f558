// Directions, angles and tapes of a score, each told against what it is made of.
#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/exercise/score.h"
#include "geometry/head/face_region.h"
#include "geometry/head/landmarks.h"
#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"
#include "tests/support/scored.h"
#include "tests/support/trainee.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

TEST_CASE("outward is away from the midline on the side that each step is on") {
  Case c = usual_case();  // the search is on the left
  c.treatment.rule = TreatmentRule::landmark;
  c.treatment.label = "F4";
  const RightAnswers answers = right_answers(coarse_lop(), c, whole_exercise());
  const Vector3d right = answers.head.axes().right;
  const Step hotspot{Task::hotspot, 0}, site{Task::site, 0};
  Attempt attempt;
  put_mark(attempt, hotspot, *answers.right.at(hotspot).at - 5 * right);
  put_mark(attempt, site, *answers.right.at(site).at + 5 * right);
  const Score made = score(answers, attempt);
  CHECK(of_step(made, hotspot).off.outward_mm > 2.5);
  CHECK(of_step(made, site).off.outward_mm > 2.5);
}

TEST_CASE("an error over curved skin is as long in its two directions as straight") {
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), whole_exercise());
  const Step start{Task::start, 0};
  Attempt attempt;
  put_mark(attempt, start, *answers.right.at(start).at + Vector3d(-30, 25, -20));
  const Offset off = of_step(score(answers, attempt), start).off;
  CHECK(off.mm > 30);
  CHECK(std::hypot(off.forward_mm, off.outward_mm) == Approx(off.mm));
}

TEST_CASE("the tape around the head is measured closed when it is asked what was misread") {
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), whole_exercise());
  const Step around{Task::three_tapes, 2};
  const auto at = [&](const char* label) { return landmark(answers.head, label)->at; };
  Attempt attempt;
  type_reading(attempt, around, answers.plan.tapes.circumference_mm + 10,
               {at("Fpz"), at("T7"), at("Oz"), at("T8")});
  CHECK(*of_step(score(answers, attempt), around).misread_mm == Approx(10).margin(0.1));
}

TEST_CASE(
    "what the exercise does not ask for leads to no pulse, given marks have a wanted place of their own") {
  Exercise exercise;
  exercise.tasks = {Task::three_tapes, Task::coil_on_given_marks};
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), exercise);
  const Step coil{Task::coil_on_given_marks, 0};
  Attempt attempt;
  put_mark(attempt, {Task::vertex, 0}, *answers.right.at({Task::vertex, 0}).at);
  CHECK_FALSE(score(answers, attempt).pulse);
  const Placed& right = answers.right.at(coil);
  lay_coil_down(attempt, coil, *right.at, *right.angle_deg);
  const Score made = score(answers, attempt);
  REQUIRE(made.pulse);
  CHECK(made.pulse->laid);
  CHECK(made.pulse->wanted == answers.given.site);
  CHECK(made.pulse->off.mm < 0.05);
}

TEST_CASE("tapes and a lost mark alone lead to no pulse") {
  Exercise exercise;
  exercise.tasks = {Task::three_tapes, Task::find_again};
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), exercise);
  Attempt attempt;
  type_reading(attempt, {Task::three_tapes, 0}, 350);
  put_mark(attempt, {Task::find_again, 0}, *answers.right.at({Task::find_again, 0}).at);
  CHECK_FALSE(score(answers, attempt).pulse);
}

TEST_CASE("a turned coil weighs what its front edge is moved by") {
  const Case c = usual_case();
  StepScore step;
  step.own = {2, 2, 0, 9.0};
  CHECK(weight_mm(step, c) == Approx(c.coil.centre_to_edge_mm * 9 * 3.14159265 / 180));
  step.own = {-30, 0, 0, {}};
  CHECK(weight_mm(step, c) == 30);
}

TEST_CASE("angles on either side of straight backward are a few degrees apart") {
  Case c = usual_case();
  c.coil.angle_deg = 178;
  c.treatment.drawn_by = c.coil.laid_by = c.search.drawn_by = MarkRule::tape;
  const RightAnswers answers = right_answers(coarse_lop(), c, whole_exercise());
  const Step coil{Task::coil, 0};
  Attempt attempt;
  lay_coil_down(attempt, coil, *answers.right.at(coil).at, -178);
  CHECK(*of_step(score(answers, attempt), coil).off.angle_deg == Approx(4).margin(0.5));
}

TEST_CASE("a case whose hotspot lies between spots is practised on the spot nearest to it") {
  Case c = usual_case();
  c.hotspot_awaited = true;
  const struct {
    double forward_mm, outward_mm;
    GridPosition spot;
  } places[]{{4, -7, {0, -1}}, {5.5, 4, {1, 0}}, {-30, 30, {-1, 1}}};
  for (const auto& place : places) {
    c.hotspot_off_grid.forward_mm = place.forward_mm;
    c.hotspot_off_grid.outward_mm = place.outward_mm;
    const RightAnswers answers = right_answers(coarse_lop(), c, whole_exercise());
    CHECK(answers.the_case.hotspot == place.spot);
    CHECK_FALSE(answers.the_case.hotspot_off_grid.is_given());
    CHECK_FALSE(answers.the_case.hotspot_awaited);
    Case on_spot = usual_case();
    on_spot.hotspot = place.spot;
    const Plan plan = solve(coarse_lop(), on_spot, TapeDistances::left_out);
    CHECK(*answers.right.at({Task::hotspot, 0}).at == plan.hotspot.pulse);
  }
}

TEST_CASE(
    "lost marks and marks that someone else has drawn lie apart from the case's own, and none on the face",
    "[slow]") {
  Case c = usual_case();
  c.treatment.rule = TreatmentRule::landmark;
  c.treatment.label = "AF3";  // near the hairline
  Exercise exercise = whole_exercise();
  double furthest = 0;
  for (std::uint32_t number = 0; number < 40; ++number) {
    exercise.number = number;
    const RightAnswers answers = right_answers(coarse_lop(), c, exercise);
    const Vector3d lost = *answers.right.at({Task::find_again, 0}).at;
    CHECK_FALSE(on_face(answers.head, answers.given.site));
    CHECK_FALSE(on_face(answers.head, lost));
    const double moved = (lost - answers.plan.treatment.wanted).norm();
    furthest = std::max(furthest, moved);
    CHECK(moved < 15 * std::sqrt(2) + 1);
  }
  CHECK(furthest > 8);
}
