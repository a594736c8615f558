#pragma once

#include <string>

#include "geometry/answers/visit_answers.h"

namespace scalpmark::viewer {

/// What a visit's pulses say, as a technician reads it on a terminal. Plain text, lines of at most 80
/// characters.
[[nodiscard]] std::string answers_text(const geometry::VisitAnswers& answers, const geometry::Case& the_case,
                                       std::size_t visit);

}  // namespace scalpmark::viewer
