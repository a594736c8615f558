#pragma once

#include "geometry/answers/visit_answers.h"
#include "geometry/base/message.h"

namespace scalpmark::viewer {

// What the pulses of a visit say, in sentences for staff.

/// "the start", "one step forward, one step outward": as everywhere (site_words).
[[nodiscard]] geometry::Message spot_name(const geometry::GridPosition& spot);
/// "0.4 cm forward and 0.3 cm outward of the start's pulse": a hotspot between spots.
[[nodiscard]] geometry::Message off_grid_name(const geometry::HotspotOffGrid& off);
/// What was seen: "none", "thumb", "index finger", "other".
[[nodiscard]] geometry::Message seen_name(geometry::SeenAnswer seen);
/// "5 of 10".
[[nodiscard]] geometry::Message rule_name(const geometry::CountingRule& rule);

/// The best spot so far with its probability; says so where nothing answered.
[[nodiscard]] geometry::Message best_sentence(const geometry::VisitAnswers& answers);
/// Where a pulse would tell most about the place; empty where there is no such spot.
[[nodiscard]] geometry::Message next_spot_sentence(const geometry::VisitAnswers& answers);
/// The centre of the answers with its error and its caution; empty where nothing answered.
[[nodiscard]] geometry::Message centre_sentence(const geometry::VisitAnswers& answers);

/// "50 %: 3 of 5, open".
[[nodiscard]] geometry::Message count_row(const geometry::CountAtOutput& count);
/// Where the counting stands, and what to try next.
[[nodiscard]] geometry::Message counting_sentence(const geometry::Counting& counting,
                                                  const geometry::CountingRule& rule);
/// How often the rule passes an output that answers in truth to fewer than half of the pulses.
[[nodiscard]] geometry::Message odds_sentence(const geometry::CountingRule& rule);
/// The estimate with its interval, or on which side of all outputs the threshold lies.
[[nodiscard]] geometry::Message estimate_sentence(const geometry::ThresholdAtSpot& threshold);
/// That a threshold read by eye is high, and who decides.
[[nodiscard]] geometry::Message eye_caution();

}  // namespace scalpmark::viewer
