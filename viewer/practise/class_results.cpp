#include "viewer/practise/class_results.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "geometry/base/error.h"
#include "viewer/words/error.h"
#include "viewer/words/trouble_words.h"

namespace scalpmark::viewer {

namespace fs = std::filesystem;
using geometry::Message;

namespace {

struct ReadResult {
  std::string name;
  models::ExerciseResult result;
  std::size_t kind = 0;  ///< which of the exercises found so far it is of
};

fs::path whole_head_file(const models::ExerciseSetup& setup) {
  return (setup.folder / setup.head.file).lexically_normal();
}

/// Its title and its limits are no part of what was done.
bool same_exercise(const models::ExerciseSetup& a, const models::ExerciseSetup& b) {
  return a.exercise.tasks == b.exercise.tasks && a.exercise.number == b.exercise.number &&
         a.exercise.drawn_head == b.exercise.drawn_head && a.the_case == b.the_case &&
         (a.exercise.drawn_head ||
          (a.head.kind == b.head.kind && a.head.fiducials == b.head.fiducials && a.head.unit == b.head.unit &&
           (a.head.kind == models::HeadKind::generic || whole_head_file(a) == whole_head_file(b))));
}

/// Which exercise most of them are of; of as many, the first's.
std::size_t most_are_of(const std::vector<ReadResult>& all) {
  std::vector<std::size_t> counts;
  for (const ReadResult& each : all) {
    counts.resize(std::max(counts.size(), each.kind + 1));
    ++counts[each.kind];
  }
  return static_cast<std::size_t>(std::max_element(counts.begin(), counts.end()) - counts.begin());
}

}  // namespace

ClassResults class_results(const std::vector<fs::path>& files, const models::SkinReading& read,
                           const std::function<void()>& between) {
  if (files.empty())
    throw ViewerError(Message::of("There is no result to be read; give one or more files of results."));
  ClassResults results;
  std::vector<ReadResult> all;
  for (const fs::path& file : files) {
    if (between) between();
    try {
      ReadResult each{file.filename().string(), models::read_result(file)};
      const auto same = std::find_if(all.begin(), all.end(), [&](const ReadResult& other) {
        return same_exercise(other.result.setup, each.result.setup);
      });
      each.kind = same != all.end() ? same->kind
                  : all.empty()
                      ? 0
                      : 1 + std::max_element(all.begin(), all.end(), [](const auto& a, const auto& b) {
                              return a.kind < b.kind;
                            })->kind;
      all.push_back(std::move(each));
    } catch (const geometry::Refusal& refusal) {
      results.left_out.push_back(Message::of("Left out: %1", refusal.message()));
    }
  }
  if (all.empty())
    throw ViewerError(
        Message::of("None of the files holds a result that can be read. %1", results.left_out.front()));
  const std::size_t kind = most_are_of(all);
  for (const ReadResult& each : all) {
    if (each.kind != kind) {
      results.left_out.push_back(Message::of(
          "Left out: %1 is of another exercise than most files; look at it with others of its own.",
          each.name));
      continue;
    }
    if (between) between();
    if (!results.answers) {
      results.setup = each.result.setup;
      results.answers = std::make_shared<const geometry::RightAnswers>(
          geometry::right_answers(models::exercise_head(results.setup, {}, read).head, results.setup.the_case,
                                  results.setup.exercise));
    }
    models::TraineeScores trainee{each.name, each.result.by, {}};
    for (const geometry::Attempt& attempt : each.result.attempts)
      trainee.attempts.push_back(geometry::score(*results.answers, attempt));
    results.trainees.push_back(std::move(trainee));
  }
  return results;
}

std::vector<geometry::Score> last_attempts(const ClassResults& results) {
  std::vector<geometry::Score> last;
  for (const models::TraineeScores& trainee : results.trainees)
    if (!trainee.attempts.empty()) last.push_back(trainee.attempts.back());
  return last;
}

std::shared_ptr<const geometry::Tolerance> hands_here(const geometry::RightAnswers& answers) {
  geometry::HandErrors errors = answers.the_case.errors;
  errors.cap_forward_mm = errors.cap_side_mm = errors.cap_turn_deg = 0;
  try {
    return std::make_shared<const geometry::Tolerance>(geometry::tolerance(
        answers.head, answers.the_case, answers.plan, errors, {.placements = 2000, .compare_ways = false}));
  } catch (const geometry::GeometryError&) {
    return {};
  }
}

}  // namespace scalpmark::viewer
