#include "geometry/exercise/score.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/plan/other_side.h"
#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"
#include "tests/support/scored.h"
#include "tests/support/sentence.h"
#include "tests/support/trainee.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// Less than this rounds to 0.0 mm, and to 0.0 degrees.
constexpr double nothing = 0.05;

/// Off the defaults one at a time: side, rules, what the grid is on, another site, spot and angle.
std::vector<std::pair<std::string, Case>> cases() {
  std::vector<std::pair<std::string, Case>> all{{"usual", usual_case()}};
  const auto add = [&](const char* name, const auto& change) {
    Case c = usual_case();
    change(c);
    all.emplace_back(name, c);
  };
  add("right side", [](Case& c) { lay_on_side(c, Side::right); });
  add("one rule", [](Case& c) { use_one_rule(c, MarkRule::tape); });
  add("nearest", [](Case& c) { use_one_rule(c, MarkRule::nearest); });
  add("drawn by tape, laid by drop", [](Case& c) { c.treatment.drawn_by = MarkRule::tape; });
  add("grid on pulse points", [](Case& c) { c.search.grid_on = GridOn::pulse_points; });
  add("landmark", [](Case& c) {
    c.treatment.rule = TreatmentRule::landmark;
    c.treatment.label = "F3";
  });
  add("other spot and angle", [](Case& c) {
    c.hotspot = {1, -1};
    c.coil.angle_deg = 20;
  });
  add("start straight to the side", [](Case& c) { c.search.anterior_mm = 0; });
  return all;
}

}  // namespace

TEST_CASE("perfect hands score 0.0 mm and 0.0 degrees at every step and in the pulse", "[slow]") {
  for (const auto& [name, the_case] : cases()) {
    INFO(name);
    const RightAnswers answers = right_answers(coarse_lop(), the_case, whole_exercise());
    const Score made = score(answers, perfect_attempt(answers));
    CHECK(made.steps.size() == 24);
    for (const StepScore& s : made.steps) {
      INFO(key_of(s.step));
      REQUIRE(s.placed);
      for (const Offset& offset : {s.own, s.off, s.carried}) {
        CHECK(std::abs(offset.mm) < nothing);
        CHECK(std::abs(offset.angle_deg.value_or(0)) < nothing);
      }
    }
    REQUIRE(made.pulse);
    CHECK(made.pulse->laid);
    CHECK(made.pulse->off.mm < nothing);
    CHECK_FALSE(made.worst);
  }
}

TEST_CASE("what is right is what the plan says", "[slow]") {
  // The right answers are the plan's own; what follows from them step by step, by the chain, is the same.
  for (const auto& [name, the_case] : cases()) {
    INFO(name);
    const RightAnswers answers = right_answers(coarse_lop(), the_case, whole_exercise());
    const Plan plan = solve(coarse_lop(), the_case, TapeDistances::left_out);
    const auto at = [&](Task task, int which = 0) { return *answers.right.at({task, which}).at; };
    CHECK(at(Task::four_points, 1) == plan.fiducials.inion);
    CHECK(at(Task::start) == plan.start.wanted);
    CHECK(at(Task::hotspot) == plan.hotspot.pulse);
    CHECK(at(Task::site) == plan.treatment.wanted);
    CHECK(at(Task::edge_mark) == *plan.treatment.mark);
    CHECK(at(Task::coil) == plan.treatment.pulse);
    CHECK(*answers.right.at({Task::three_tapes, 2}).reading_mm == plan.tapes.circumference_mm);
  }
}

TEST_CASE("a vertex 1 cm forward and all else perfect: 1 cm at the vertex, and 0 after it", "[slow]") {
  for (const auto& [name, the_case] : cases()) {
    INFO(name);
    const RightAnswers answers = right_answers(coarse_lop(), the_case, whole_exercise());
    const Attempt attempt = attempt_with(answers, [](const Step& step, const Placed&) {
      return step.task == Task::vertex ? Slip{{10, 0}} : Slip{};
    });
    const Score made = score(answers, attempt);
    const StepScore& vertex = of_step(made, {Task::vertex, 0});
    CHECK(vertex.own.mm == Approx(10).margin(0.1));
    CHECK(vertex.own.forward_mm == Approx(10).margin(0.1));
    CHECK(std::abs(vertex.own.outward_mm) < 0.1);
    CHECK(vertex.carried.mm < nothing);
    for (const StepScore& s : made.steps)
      if (s.step.task != Task::vertex) {
        INFO(key_of(s.step));
        CHECK(std::abs(s.own.mm) < nothing);
        CHECK(std::abs(s.own.angle_deg.value_or(0)) < nothing);
      }
    // It is carried to the start, and so to the pulse; not to a landmark, whose tapes lie as before when the
    // vertex moves along the midline.
    CHECK(of_step(made, {Task::start, 0}).carried.mm > 7);
    if (the_case.treatment.rule == TreatmentRule::forward) CHECK(made.pulse->off.mm > 4);
    CHECK(made.worst);
    CHECK(made.steps[*made.worst].step.task == Task::vertex);
  }
}

TEST_CASE("an error at any one step is paid for there, once, and nowhere else", "[slow]") {
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), whole_exercise());
  for (const Step& wrong : steps_of(whole_exercise())) {
    INFO(key_of(wrong));
    const Vector2d slip(6, 2);
    const Score made = score(answers, attempt_with(answers, [&](const Step& step, const Placed&) {
                               return step == wrong ? Slip{slip, 5} : Slip{};
                             }));
    for (const StepScore& s : made.steps) {
      INFO(key_of(s.step));
      const bool here = s.step == wrong;
      if (s.placed->reading_mm) {
        CHECK(s.own.mm == Approx(here ? 6 : 0).margin(nothing));
      } else {
        CHECK(s.own.forward_mm == Approx(here ? 6 : 0).margin(here ? 0.35 : nothing));
        CHECK(s.own.outward_mm == Approx(here ? 2 : 0).margin(here ? 0.35 : nothing));
      }
      if (s.step.task == Task::coil || s.step.task == Task::coil_on_given_marks)
        CHECK(*s.own.angle_deg == Approx(here ? 5 : 0).margin(nothing));
    }
    REQUIRE(made.worst);
    CHECK(made.steps[*made.worst].step == wrong);
  }
}

TEST_CASE("on a sphere a vertex marked off carries to the start as great circles say", "[slow]") {
  // The tape from ear to ear over the marked vertex is half a great circle; 50 mm along it toward the left
  // ear, then 10 mm along the circle parallel to the midline plane (closed form; forward is
  // parasagittal).
  const double r = 90;
  const Head ball = sphere_head(r, 6);
  const RightAnswers answers = right_answers(ball, usual_case(), whole_exercise());
  for (const Vector2d& slip : {Vector2d(10, 0), Vector2d(0, 8), Vector2d(-6, -5)}) {
    const Score made = score(answers, attempt_with(answers, [&](const Step& step, const Placed&) {
                               return step.task == Task::vertex ? Slip{slip} : Slip{};
                             }));
    const Vector3d vertex = of_step(made, {Task::vertex, 0}).placed->at->normalized();
    // Angles: of the marked vertex from the middle plane toward the left ear, and of its great circle
    // forward.
    const double aside = std::asin(-vertex.x()), ahead = std::atan2(vertex.y(), vertex.z());
    const double out = aside + 50 / r;
    const double forward = ahead + 10 / (r * std::cos(out));
    const Vector3d start =
        r * Vector3d(-std::sin(out), std::cos(out) * std::sin(forward), std::cos(out) * std::cos(forward));
    const StepScore& s = of_step(made, {Task::start, 0});
    CHECK((*s.should_be->at - start).norm() < 0.15);
    CHECK(s.own.mm < nothing);
  }
}

TEST_CASE("a tape read wrong is told from a tape that lay wrong") {
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), whole_exercise());
  const Fiducials& f = answers.plan.fiducials;
  const Vector3d vertex = *answers.right.at({Task::vertex, 0}).at;
  const double right_mm = answers.plan.tapes.nasion_inion_mm;
  const Step tape{Task::three_tapes, 0};
  Attempt attempt;
  type_reading(attempt, tape, right_mm + 10, {f.nasion, vertex, f.inion});
  const Score misread = score(answers, attempt);
  CHECK(*of_step(misread, tape).misread_mm == Approx(10).margin(0.1));
  CHECK(of_step(misread, tape).own.mm == Approx(10).margin(0.1));
  // Held 2 cm above the inion and read as it lies: too short, and not misread.
  const Surface& skin = answers.head.skin();
  const Vector3d higher = skin.position(skin.closest(f.inion + 20 * answers.head.axes().up));
  type_reading(attempt, tape, right_mm - 20, {f.nasion, vertex, higher});
  CHECK(std::abs(*of_step(score(answers, attempt), tape).misread_mm) < 2.5);
  // Where it was held is not known: nothing is said.
  type_reading(attempt, tape, right_mm + 10);
  CHECK_FALSE(of_step(score(answers, attempt), tape).misread_mm);
}

TEST_CASE("a step that was skipped is no error, and what follows goes by where it ought to be") {
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), whole_exercise());
  Attempt attempt;
  put_mark(attempt, {Task::site, 0}, *answers.right.at({Task::site, 0}).at);
  const Score made = score(answers, attempt);
  CHECK_FALSE(of_step(made, {Task::vertex, 0}).placed);
  CHECK(of_step(made, {Task::vertex, 0}).own.mm == 0);
  CHECK(of_step(made, {Task::site, 0}).own.mm < nothing);
  REQUIRE(made.pulse);
  CHECK_FALSE(made.pulse->laid);
  CHECK(made.pulse->off.mm < nothing);
  CHECK_FALSE(score(answers, {}).pulse);
}

TEST_CASE("what the exercise does not ask for was done right by someone else, what comes after goes on") {
  Exercise exercise;
  exercise.tasks = {Task::vertex, Task::site};
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), exercise);
  const auto slip = [](Task wrong) {
    return [wrong](const Step& step, const Placed&) { return step.task == wrong ? Slip{{10, 0}} : Slip{}; };
  };
  // The start and hotspot between them stood there: nothing of the vertex is carried to the site.
  const Score vertex = score(answers, attempt_with(answers, slip(Task::vertex)));
  CHECK(of_step(vertex, {Task::site, 0}).carried.mm < nothing);
  CHECK(vertex.pulse->off.mm < nothing);
  // Edge mark and coil come after: the site's error goes on to the pulse.
  const Score site = score(answers, attempt_with(answers, slip(Task::site)));
  CHECK(site.pulse->off.mm == Approx(10).margin(0.5));
  CHECK_FALSE(site.pulse->laid);
  exercise.tasks = {Task::vertex};
  const RightAnswers alone = right_answers(coarse_lop(), usual_case(), exercise);
  CHECK(score(alone, attempt_with(alone, slip(Task::vertex))).pulse->off.mm > 5);
}

TEST_CASE("an edge mark drawn at another angle is told in degrees as seen from its own site mark") {
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), whole_exercise());
  const Head& head = answers.head;
  Attempt attempt = perfect_attempt(answers);
  // The right edge mark turned by 10 degrees toward the midline about the site's own direction outward.
  const Vector3d site = *answers.right.at({Task::site, 0}).at,
                 edge = *answers.right.at({Task::edge_mark, 0}).at;
  const Vector3d normal = head.skin().smooth_normal(head.skin().closest(site));
  // On the left side, toward the midline is clockwise seen from outside.
  const Vector3d turned = site + Eigen::AngleAxisd(radians(-10), normal) * (edge - site);
  put_mark(attempt, {Task::edge_mark, 0}, turned);
  const Score made = score(answers, attempt);
  CHECK(*of_step(made, {Task::edge_mark, 0}).own.angle_deg == Approx(10).margin(0.7));
  CHECK(*of_step(made, {Task::edge_mark, 0}).off.angle_deg == Approx(10).margin(0.7));
}

TEST_CASE("marks and coils count where the skin is nearest") {
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), whole_exercise());
  Attempt attempt;
  const Vector3d start = *answers.right.at({Task::start, 0}).at;
  put_mark(attempt, {Task::start, 0},
           start + 3 * answers.head.skin().smooth_normal(answers.head.skin().closest(start)));
  CHECK(of_step(score(answers, attempt), {Task::start, 0}).own.mm < 0.2);
}

TEST_CASE("points that make no head leave no answer, and the step is scored against what is right") {
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), whole_exercise());
  Attempt attempt = perfect_attempt(answers);
  // Both ears swapped.
  put_mark(attempt, {Task::four_points, 2}, answers.plan.fiducials.right_tragus);
  put_mark(attempt, {Task::four_points, 3}, answers.plan.fiducials.left_tragus);
  const Score made = score(answers, attempt);
  const StepScore& vertex = of_step(made, {Task::vertex, 0});
  CHECK_FALSE(vertex.should_be);
  CHECK(vertex.own.mm == vertex.off.mm);
  CHECK(of_step(made, {Task::four_points, 2}).own.mm > 100);
  CHECK(made.pulse);
}

TEST_CASE("marks given by someone else are not the case's own, and lie where a coil fits them") {
  Exercise exercise = whole_exercise();
  double most_turned = 0;
  for (const std::uint32_t number : {1U, 2U, 3U}) {
    exercise.number = number;
    const RightAnswers answers = right_answers(coarse_lop(), usual_case(), exercise);
    const double moved = (answers.given.site - answers.plan.treatment.wanted).norm();
    CHECK(moved > 0.5);
    CHECK(moved < 12 * std::sqrt(2) + 1);
    // The coil's centre lies on the site mark where the marks were drawn and the coil is laid by one rule.
    const Placed& coil = answers.right.at({Task::coil_on_given_marks, 0});
    CHECK((*coil.at - answers.given.site).norm() < 0.1);
    // Whoever lays it at the case's angle by heart is off.
    CHECK(std::abs(*coil.angle_deg - 45) <= 10.1);
    most_turned = std::max(most_turned, std::abs(*coil.angle_deg - 45));
  }
  CHECK(most_turned > 2);
}

TEST_CASE("an exercise on a head where a mark cannot be drawn is refused in a sentence") {
  Case c = usual_case();
  c.treatment.distance_mm = 100;
  CHECK(is_sentence(
      sentence_of<GeometryError>([&] { (void)right_answers(coarse_lop(), c, whole_exercise()); })));
  Exercise none;
  CHECK(is_sentence(
      sentence_of<GeometryError>([&] { (void)right_answers(coarse_lop(), usual_case(), none); })));
}
