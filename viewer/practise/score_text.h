#pragma once

#include <string>

#include "geometry/hands/tolerance.h"
#include "viewer/practise/class_results.h"

namespace scalpmark::viewer {

/// What results say, for a terminal: of one trainee each attempt step by step, the pulse, the habit to mend
/// and how steady the hand is; of several a line each and the class's middle step by step. Then what trained
/// people do, and that it is no certificate. Plain text, lines of at most 80 characters.
[[nodiscard]] std::string score_text(const ClassResults& results, const geometry::Tolerance* hands);

/// What an exercise asks for, for a terminal.
[[nodiscard]] std::string exercise_text(const models::ExerciseSetup& setup);

}  // namespace scalpmark::viewer
