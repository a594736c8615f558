#include "viewer/words/exercise_words.h"

#include <catch2/catch.hpp>
#include <set>

#include "geometry/plan/other_side.h"
#include "models/exercises/exercise_file.h"
#include "tests/support/sentence.h"
#include "tests/support/trainee.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using tests::is_sentence;
using tests::Slip;

namespace {

RightAnswers answers_of(const models::ExerciseSetup& setup) {
  return right_answers(models::exercise_head(setup).head, setup.the_case, setup.exercise);
}

const RightAnswers& usual() {
  static const RightAnswers answers = answers_of(models::default_exercise());
  return answers;
}

std::string habit_after(const Step& wrong, const Slip& slip) {
  const Attempt attempt = tests::attempt_with(
      usual(), [&](const Step& step, const Placed&) { return step == wrong ? slip : Slip{}; });
  return english(viewer::habit_to_mend(usual(), score(usual(), attempt)));
}

}  // namespace

TEST_CASE("every step has a name of its own, and every task an order that says how long and how far") {
  std::set<std::string> names;
  for (const Step& step : steps_of(whole_exercise()))
    CHECK(names.insert(english(viewer::step_name(step))).second);
  for (const Task task : all_tasks) {
    CHECK_FALSE(viewer::task_name(task).empty());
    CHECK(is_sentence(english(viewer::task_order(usual(), task))));
  }
  const auto order = [](const RightAnswers& answers, Task task) {
    return english(viewer::task_order(answers, task));
  };
  CHECK(order(usual(), Task::start) ==
        "Measure 5.0 cm from the vertex along the tape toward the left ear, then 1.0 cm forward, parallel to "
        "the midline. Mark the start.");
  CHECK_THAT(order(usual(), Task::site), Catch::Contains("5.0 cm forward from the hotspot"));
  models::ExerciseSetup other = models::default_exercise();
  lay_on_side(other.the_case, Side::right);
  other.the_case.search.anterior_mm = -10;
  other.the_case.treatment = {TreatmentRule::landmark, 50, "F4", MarkRule::tape};
  const RightAnswers right = answers_of(other);
  CHECK_THAT(order(right, Task::start), Catch::Contains("right ear, then 1.0 cm backward"));
  CHECK_THAT(order(right, Task::site), Catch::Contains("F4"));
  CHECK_THAT(order(right, Task::edge_mark), Catch::Contains("6.0 cm along the skin"));
}

TEST_CASE("the habit to mend comes from the step with the largest own error and the way it is off") {
  const Step vertex{Task::vertex, 0};
  const std::string forward = habit_after(vertex, {{9, 0}}), aside = habit_after(vertex, {{0, 9}});
  CHECK(is_sentence(forward));
  CHECK_THAT(forward, Catch::Contains("vertex (9.0 mm forward)") && Catch::Contains("nasion-inion"));
  CHECK_THAT(aside, Catch::Contains("to the side of the coil") && Catch::Contains("tragus-tragus"));
  // 8 mm along the tangent are a little less to the skin below it, where it bulges.
  CHECK_THAT(habit_after({Task::four_points, 1}, {{8, 0}}),
             Catch::Contains("inion (7.8 mm up)") && Catch::Contains("fingertip"));
  CHECK_THAT(habit_after({Task::coil, 0}, {{0, 0}, 12}),
             Catch::Contains("12 degrees too far toward the midline") && Catch::Contains("centre line"));
  CHECK_THAT(habit_after({Task::coil, 0}, {{9, 0}, 0}), Catch::Contains("close one eye"));
  CHECK_THAT(habit_after({Task::three_tapes, 0}, {{-10, 0}}), Catch::Contains("10.0 mm too short"));
  for (const Step& step : steps_of(whole_exercise())) CHECK(is_sentence(habit_after(step, {{7, 4}, 9})));
}

TEST_CASE("without an error worth a word no habit is made up") {
  CHECK_THAT(habit_after({Task::vertex, 0}, {{1, 0}}), Catch::Contains("no habit to mend"));
  CHECK_THAT(english(viewer::habit_to_mend(usual(), score(usual(), {}))),
             Catch::Contains("Nothing was put down"));
}

TEST_CASE("the pulse is told beside what hands do on this head") {
  PulseScore pulse;
  pulse.off = {7, 7, 0, 4.0};
  pulse.laid = true;
  Tolerance hands;
  hands.half_mm = 8;
  hands.most_mm = 20;
  CHECK(english(viewer::pulse_sentence(pulse, &hands)) ==
        "The pulse goes 7.0 mm from where it should (7.0 mm forward, 4 degrees too far toward the midline): "
        "among the better half of trials by hand on this head (8.0 mm).");
  pulse.off.mm = pulse.off.forward_mm = 15;
  CHECK_THAT(english(viewer::pulse_sentence(pulse, &hands)), Catch::Contains("95 of 100 trials"));
  pulse.off.mm = pulse.off.forward_mm = 25;
  CHECK_THAT(english(viewer::pulse_sentence(pulse, &hands)), Catch::Contains("further off than 95"));
  pulse.laid = false;
  pulse.aim = {3, 0, 0};
  CHECK_THAT(english(viewer::pulse_sentence(pulse, nullptr)),
             Catch::Contains("without error") && Catch::Contains("no error of yours"));
}

TEST_CASE("right and steady are told apart") {
  Steadiness s;
  s.step = {Task::vertex, 0};
  s.tries = 3;
  const auto said = [&](double bias, std::optional<double> spread) {
    s.bias = bias;
    s.spread_mm = spread;
    return english(viewer::steadiness_sentence({s}));
  };
  CHECK_THAT(said(1, 1), Catch::StartsWith("Right and steady"));
  CHECK_THAT(said(8, 1), Catch::StartsWith("Steady but not right"));
  CHECK_THAT(said(1, 8), Catch::StartsWith("Right on average but not steady"));
  CHECK_THAT(said(8, 8), Catch::StartsWith("Neither right nor steady"));
  CHECK_THAT(said(8, {}), Catch::Contains("two tries or more"));
}

TEST_CASE("what trained people do is told with its source, and nothing is a certificate") {
  // Caulfield et al. 2022, Brain Stimul 15:1192-1205: 10.66 mm, 6.0 degrees. Jurcak et al. 2005, NeuroImage
  // 26:1184-1192: 9.0 mm by hand. Sollmann et al. 2013, BMC Neurosci 14:94: 8.1 and 10.3 mm.
  CHECK_THAT(english(viewer::trained_pulse()), Catch::Contains("10.7 mm") && Catch::Contains("6.0 degrees"));
  CHECK_THAT(english(*viewer::trained_people({Task::vertex, 0})), Catch::Contains("9.0 mm"));
  CHECK_THAT(english(*viewer::trained_people({Task::hotspot, 0})),
             Catch::Contains("8.1 mm") && Catch::Contains("10.3 mm"));
  CHECK_FALSE(viewer::trained_people({Task::site, 0}));
  CHECK_THAT(english(viewer::not_a_certificate()), Catch::Contains("no certificate"));
}
