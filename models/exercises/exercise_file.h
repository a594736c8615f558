#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "geometry/exercise/exercise.h"
#include "geometry/plan/case.h"
#include "models/files/output_guard.h"
#include "models/heads/head_source.h"
#include "models/heads/load_head.h"

namespace scalpmark::models {

/// An exercise with the case it goes by: side, search, coil, the spot that answers, treatment, hand errors.
/// The case's label, tapes and visits are nobody's business in a class and stay out of the file, but for the
/// tapes a generic head of the case's own is scaled to.
struct ExerciseSetup {
  geometry::Exercise exercise;
  geometry::Case the_case;
  HeadSource head;               ///< where `exercise.drawn_head` is false
  std::filesystem::path folder;  ///< relative paths start here

  friend bool operator==(const ExerciseSetup&, const ExerciseSetup&) = default;
};

/// The whole exercise on the head for a number, the starting values for the rest.
[[nodiscard]] ExerciseSetup default_exercise();

// Exercises are JSON (format scalpmark-exercise, version 1; models/schema/exercise.schema.json). Reading
// refuses (ModelError, naming file and key) as read_case() does, and what check_exercise() refuses; at most
// 200 KB.

[[nodiscard]] ExerciseSetup read_exercise(const std::filesystem::path& file);
[[nodiscard]] ExerciseSetup parse_exercise(const std::string& json, const std::filesystem::path& folder,
                                           const std::string& name);
[[nodiscard]] std::string exercise_json(const ExerciseSetup& setup);
/// Whole or not at all. A head's file is named so that it is found from there.
void write_exercise(const std::filesystem::path& file, const ExerciseSetup& setup);

/// The head it is done on: drawn for its number from the generic head, or the case's own (load_head.h, whose
/// refusals it passes on). Its description says no tape lengths.
[[nodiscard]] LoadedHead exercise_head(const ExerciseSetup& setup, const Progress& progress = {},
                                       const SkinReading& read = read_skin);

/// What a run on it reads, for refusing to write over it.
[[nodiscard]] std::vector<Input> inputs_of(const std::filesystem::path& file, const ExerciseSetup& setup);

}  // namespace scalpmark::models
