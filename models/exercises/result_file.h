#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "geometry/exercise/attempt.h"
#include "models/exercises/exercise_file.h"

namespace scalpmark::models {

/// What one trainee put down: the exercise as it was, so that the result can be scored anywhere, and every
/// attempt, the oldest first. No scores: they are worked out from this whenever they are asked for.
struct ExerciseResult {
  ExerciseSetup setup;
  std::string by;  ///< initials; empty unless the trainee typed them
  std::vector<geometry::Attempt> attempts;

  friend bool operator==(const ExerciseResult&, const ExerciseResult&) = default;
};

/// More attempts than anybody makes, and more than an exercise can ask for.
inline constexpr std::size_t most_attempts = 100;
inline constexpr std::size_t longest_trainee = 20;  ///< characters of initials

// Results are JSON (format scalpmark-result, version 1; models/schema/result.schema.json). Reading refuses
// (ModelError, naming file and key) as read_exercise() does; also a step that is none or not in the exercise,
// one given twice in an attempt, and what put_mark(), type_reading() and lay_coil_down() refuse; at most 4
// MB.

[[nodiscard]] ExerciseResult read_result(const std::filesystem::path& file);
[[nodiscard]] ExerciseResult parse_result(const std::string& json, const std::filesystem::path& folder,
                                          const std::string& name);
[[nodiscard]] std::string result_json(const ExerciseResult& result);
/// Whole or not at all.
void write_result(const std::filesystem::path& file, const ExerciseResult& result);

}  // namespace scalpmark::models
