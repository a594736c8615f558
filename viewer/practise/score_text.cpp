#include "viewer/practise/score_text.h"

#include <cmath>

#include "geometry/base/message.h"
#include "geometry/exercise/steadiness.h"
#include "viewer/words/exercise_words.h"
#include "viewer/words/plain_text.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::Score;
using geometry::StepScore;

namespace {

constexpr std::size_t name_width = 54, number_width = 8;

std::string in_tenths(double value) {
  return geometry::to_text(geometry::Number{std::round(10 * value) / 10 + 0.0, 1, true});
}

std::string row(const std::string& name, const std::vector<std::string>& cells) {
  std::string out = "  " + padded(name, name_width);
  for (const std::string& cell : cells) out += to_the_right(cell, number_width);
  return out + "\n";
}

std::string angle_cell(const std::optional<double>& deg) {
  return deg ? in_tenths(*deg) : "";
}

std::string step_row(const StepScore& step) {
  const std::string name = words(step_name(step.step));
  if (!step.placed) return row(name, {"-", "-", ""});
  return row(name, {in_tenths(step.own.mm), in_tenths(step.off.mm), angle_cell(step.own.angle_deg)});
}

std::string attempt_text(const ClassResults& results, const Score& score, const geometry::Tolerance* hands) {
  std::string out = row("Step", {"own mm", "off mm", "deg"});
  for (const StepScore& step : score.steps) out += step_row(step);
  if (score.pulse) {
    out +=
        row("pulse at the end", {"", in_tenths(score.pulse->off.mm), angle_cell(score.pulse->off.angle_deg)});
    out += wrapped_text(words(pulse_sentence(*score.pulse, hands)));
  }
  return out + wrapped_text(words(habit_to_mend(*results.answers, score)));
}

std::string trainee_name(const models::TraineeScores& trainee) {
  return trainee.by.empty() ? trainee.file : trainee.by + " (" + trainee.file + ")";
}

std::string trainee_text(const ClassResults& results, const models::TraineeScores& trainee,
                         const geometry::Tolerance* hands) {
  std::string out;
  for (std::size_t i = 0; i < trainee.attempts.size(); ++i) {
    if (trainee.attempts.size() > 1) out += "Try " + std::to_string(i + 1) + "\n";
    out += attempt_text(results, trainee.attempts[i], hands) + "\n";
  }
  if (trainee.attempts.empty()) return "Nothing was put down yet.\n";
  return out + wrapped_text(words(steadiness_sentence(geometry::steadiness(trainee.attempts))));
}

std::string class_text(const ClassResults& results) {
  std::string out = row("Trainee", {"tries", "pulse", "deg"});
  for (const models::TraineeScores& trainee : results.trainees) {
    const std::string tries = std::to_string(trainee.attempts.size());
    const bool leads = !trainee.attempts.empty() && trainee.attempts.back().pulse;
    const auto* pulse = leads ? &*trainee.attempts.back().pulse : nullptr;
    out += row(trainee_name(trainee), {tries, pulse ? in_tenths(pulse->off.mm) : "-",
                                       pulse ? angle_cell(pulse->off.angle_deg) : ""});
  }
  out += "\n" + row("Step, middle of the class's last tries", {"own mm", "off mm", "deg"});
  for (const geometry::ClassStep& step : class_steps(last_attempts(results)))
    out += row(words(step_name(step.step)), {in_tenths(step.own_mm.median), in_tenths(step.off_mm.median),
                                             step.own_deg ? in_tenths(step.own_deg->median) : ""});
  return out;
}

}  // namespace

std::string score_text(const ClassResults& results, const geometry::Tolerance* hands) {
  std::string out = results.trainees.size() == 1 ? trainee_text(results, results.trainees.front(), hands)
                                                 : class_text(results);
  out += "\n" + wrapped_text(words(trained_pulse()));
  if (hands) out += wrapped_text(words(hands_sentence(*hands)));
  out += wrapped_text(
      "own mm: from where the step should be given what came before; off mm and pulse: from where it should be.");
  return out + wrapped_text(words(not_a_certificate()));
}

std::string exercise_text(const models::ExerciseSetup& setup) {
  const geometry::Exercise& exercise = setup.exercise;
  std::string out = exercise.title.empty() ? "Exercise without a title\n" : exercise.title + "\n";
  out += exercise.drawn_head ? "  Head: drawn for the number " + std::to_string(exercise.number) + "\n"
                             : "  Head: the case's own; number " + std::to_string(exercise.number) + "\n";
  out += setup.the_case.side == geometry::Side::left ? "  Side: left\n" : "  Side: right\n";
  if (exercise.minutes) out += "  Time: " + std::to_string(*exercise.minutes) + " minutes\n";
  if (exercise.tries) out += "  Tries: " + std::to_string(*exercise.tries) + "\n";
  out += "  Tasks:\n";
  for (const geometry::Task task : exercise.tasks)
    out += "    " + padded(std::string(key_of(task)), 22) + words(task_name(task)) + "\n";
  return out + wrapped_text(words(not_a_certificate()));
}

}  // namespace scalpmark::viewer
