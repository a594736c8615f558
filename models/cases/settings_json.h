#pragma once

#include <nlohmann/json.hpp>

#include "geometry/plan/case.h"
#include "models/files/strict_json.h"

namespace scalpmark::models {

/// The settings of a case or of the starting values: tapes, side, search, coil, hotspot, treatment, cap and
/// answers (since version 2), errors. Those absent stay as they are in `entered`, but for the rules of
/// version 1: its one `coil.mark_rule` (tape, if absent) is taken for drawing and laying alike. Refuses
/// (ModelError) as JsonGroup does, a coil that does not ship, and a landmark label that is not of the 10-5
/// system.
void read_settings(const JsonGroup& top, int version, geometry::Case& the_case);

/// The same, written as version 2; in the order a case has them.
void write_settings(const geometry::Case& the_case, nlohmann::ordered_json& top);

/// How files write these choices.
[[nodiscard]] std::string_view file_word(geometry::CountedAnswers counted);
[[nodiscard]] std::string_view file_word(geometry::CountingBy rule);

/// The errors of the hand alone.
[[nodiscard]] nlohmann::ordered_json errors_json(const geometry::HandErrors& errors);

}  // namespace scalpmark::models
