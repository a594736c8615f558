#pragma once

#include <cmath>
#include <filesystem>
#include <string>
#include <vector>

#include "geometry/hands/draws.h"
#include "models/exercises/result_file.h"
#include "tests/support/trainee.h"

namespace scalpmark::tests {

/// A trainee's hand: off by that much at each step, one standard deviation each way, and so many degrees.
inline geometry::Attempt unsteady_attempt(const geometry::RightAnswers& answers, std::uint64_t who, double mm,
                                          double deg) {
  return attempt_with(answers, [&](const geometry::Step& step, const geometry::Placed&) {
    const geometry::Draws draws(who, 100 * static_cast<int>(step.task) + step.which);
    return Slip{{mm * draws.normal(0), mm * draws.normal(1)}, deg * draws.normal(2)};
  });
}

/// Results of a class that did this exercise, one file a trainee, written into the folder.
inline std::vector<std::filesystem::path> write_class(const std::filesystem::path& folder,
                                                      const models::ExerciseSetup& setup, int trainees) {
  const auto answers =
      geometry::right_answers(models::exercise_head(setup).head, setup.the_case, setup.exercise);
  std::vector<std::filesystem::path> files;
  for (int i = 0; i < trainees; ++i) {
    models::ExerciseResult result{setup, std::string(1, static_cast<char>('A' + i % 26)) + "B", {}};
    result.attempts.push_back(unsteady_attempt(answers, static_cast<std::uint64_t>(i), 4, 5));
    files.push_back(folder / ("trainee-" + std::to_string(i) + ".json"));
    models::write_result(files.back(), result);
  }
  return files;
}

}  // namespace scalpmark::tests
