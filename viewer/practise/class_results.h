#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "geometry/exercise/right_answers.h"
#include "geometry/exercise/score.h"
#include "geometry/hands/tolerance.h"
#include "models/exercises/result_file.h"
#include "models/exercises/score_table.h"

namespace scalpmark::viewer {

/// The results of a class: all of one exercise (the same head, tasks and case), scored.
struct ClassResults {
  models::ExerciseSetup setup;  ///< what all of them did
  std::shared_ptr<const geometry::RightAnswers> answers;
  std::vector<models::TraineeScores> trainees;  ///< in the order of the files
  /// One sentence for each file that is left out, naming it: damaged, or of another exercise.
  std::vector<geometry::Message> left_out;
};

/// Reads and scores them. The exercise is the one most files are of (of as many, the first's). A file that
/// cannot be read, or is of another exercise, is named in `left_out`. Refuses (ViewerError) no file, and
/// files of which none can be read, with what is wrong with the first. `between`: called before each file;
/// what it throws ends the work. May run in a thread of its own.
[[nodiscard]] ClassResults class_results(const std::vector<std::filesystem::path>& files,
                                         const models::SkinReading& read = models::read_skin,
                                         const std::function<void()>& between = {});

/// Each trainee's last attempt, of those who made one: what the class view and the page are about.
[[nodiscard]] std::vector<geometry::Score> last_attempts(const ClassResults& results);

/// How far off hands are on this head, for showing beside the scores: tolerance() of the exercise's case with
/// its hand errors and no cap put on again (marks on the skin), from 2000 trials. Nothing where it cannot be
/// said.
[[nodiscard]] std::shared_ptr<const geometry::Tolerance> hands_here(const geometry::RightAnswers& answers);

}  // namespace scalpmark::viewer
