#pragma once

#include <array>
#include <nlohmann/json.hpp>

#include "geometry/plan/visit.h"
#include "models/files/strict_json.h"

namespace scalpmark::models {

/// How files write what was seen.
inline constexpr std::array<Choice<geometry::SeenAnswer>, 4> seen_answers{
    {{"none", geometry::SeenAnswer::none},
     {"thumb", geometry::SeenAnswer::thumb},
     {"index", geometry::SeenAnswer::index},
     {"other", geometry::SeenAnswer::other}}};

/// The word for it.
[[nodiscard]] std::string_view file_word(geometry::SeenAnswer answer);

inline constexpr std::array<std::string_view, 9> visit_keys{
    "date",    "by",          "pulses", "threshold_percent", "site_tape_mm", "edge_tape_mm",
    "brim_mm", "marked_anew", "remarks"};
inline constexpr std::array<std::string_view, 6> pulse_keys{"spot",   "site", "output_percent",
                                                            "answer", "at",   "corrected_from"};

/// One of them; refuse as read_visits() does.
[[nodiscard]] geometry::Visit read_visit(const JsonGroup& visit);
[[nodiscard]] geometry::LoggedPulse read_pulse(const JsonGroup& pulse);

/// A case's `visits`, in the order they stand. Refuses (ModelError) as JsonGroup does, a date or a time that
/// is not one by ISO 8601, a mark with fewer than two tapes, a pulse that names both a spot and the site or
/// neither, and more visits or pulses than there ever are.
[[nodiscard]] geometry::Visits read_visits(const JsonGroup& top);

/// The same, written; what was not entered is left out.
[[nodiscard]] nlohmann::ordered_json visits_json(const geometry::Visits& visits);

}  // namespace scalpmark::models
