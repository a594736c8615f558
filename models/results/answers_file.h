#pragma once

#include <filesystem>
#include <string>

#include "geometry/answers/visit_answers.h"

namespace scalpmark::models {

/// What a visit's pulses say, as JSON (format scalpmark-answers, version 1;
/// models/schema/answers.schema.json). `visit` counts from 1. Outputs in percent of the stimulator's most,
/// places in mm from the start. What the pulses do not say is null.
[[nodiscard]] std::string answers_json(const geometry::VisitAnswers& answers, const geometry::Case& the_case,
                                       std::size_t visit);
/// Whole or not at all.
void write_answers(const std::filesystem::path& file, const geometry::VisitAnswers& answers,
                   const geometry::Case& the_case, std::size_t visit);

}  // namespace scalpmark::models
