#pragma once

#include <array>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <string_view>

#include "models/exercises/exercise_file.h"
#include "models/files/strict_json.h"

namespace scalpmark::models {

/// What an exercise is, the same in its own file and in a result's group "exercise".
inline constexpr std::array<std::string_view, 7> exercise_keys{"title",   "number", "head", "tasks",
                                                               "minutes", "tries",  "case"};

/// `group` was made with these keys (and a file's format and version); `json` is what it reads. Relative
/// paths start in `folder`. Refuses (ModelError) as JsonGroup does, and what check_exercise() refuses.
[[nodiscard]] ExerciseSetup read_setup(const JsonGroup& group, const nlohmann::json& json,
                                       const std::filesystem::path& folder);
void write_setup(const ExerciseSetup& setup, nlohmann::ordered_json& out);

/// The setup named for a file that will lie in that folder.
[[nodiscard]] ExerciseSetup found_from_folder(const ExerciseSetup& setup,
                                              const std::filesystem::path& folder);

}  // namespace scalpmark::models
