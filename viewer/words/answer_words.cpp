#include "viewer/words/answer_words.h"

#include <cmath>

#include "viewer/words/numbers.h"
#include "viewer/words/site_words.h"

namespace scalpmark::viewer {

using geometry::Message;
using geometry::number;

namespace {

Message way_along(double mm, const Message& there, const Message& back) {
  return Message::of("%1 %2", tape_length(std::abs(mm)), mm < 0 ? back : there);
}

/// In whole percent, and never sure.
Message in_100(double chance) {
  if (chance > 0.995) return Message::of("over 99 in 100");
  if (chance < 0.005) return Message::of("under 1 in 100");
  return Message::of("%1 in 100", number(100 * chance, 0));
}

Message error_along(const std::optional<double>& mm) {
  return mm ? Message::verbatim(tape_length(*mm)) : Message::of("unknown");
}

geometry::Number percent(double value) {
  return {value, 1, true};
}

}  // namespace

Message spot_name(const geometry::GridPosition& spot) {
  return Message::verbatim(spot_in_words(spot.row, spot.column));
}

Message off_grid_name(const geometry::HotspotOffGrid& off) {
  return Message::of("%1 and %2 of the start's pulse",
                     way_along(off.forward_mm.value_or(0), Message::of("forward"), Message::of("backward")),
                     way_along(off.outward_mm.value_or(0), Message::of("outward"), Message::of("inward")));
}

Message seen_name(geometry::SeenAnswer seen) {
  switch (seen) {
    case geometry::SeenAnswer::none:
      return Message::of("none");
    case geometry::SeenAnswer::thumb:
      return Message::of("thumb");
    case geometry::SeenAnswer::index:
      return Message::of("index finger");
    case geometry::SeenAnswer::other:
      break;
  }
  return Message::of("other");
}

Message rule_name(const geometry::CountingRule& rule) {
  return Message::of("%1 of %2", rule.answers, rule.pulses);
}

Message best_sentence(const geometry::VisitAnswers& answers) {
  if (!answers.map) return Message::of("No pulse on the grid yet.");
  const geometry::AnswerMap& map = *answers.map;
  if (!map.best)
    return Message::of("Nothing answered on the grid at %1 %; no spot is better than another.",
                       map.output_percent);
  const geometry::SpotAnswers& spot = map.spots[map.best->spot];
  return Message::of(
      "Best spot so far at %1 %: %2 (%3 of %4 answered); the chance that it is the best of the nine is %5.",
      map.output_percent, spot_name(answers.spots[map.best->spot]), spot.answers, spot.pulses,
      in_100(map.best->probability));
}

Message next_spot_sentence(const geometry::VisitAnswers& answers) {
  if (!answers.map || !answers.map->next) return {};
  return Message::of("A pulse at %1 % would tell most about the place here: %2.", answers.map->output_percent,
                     spot_name(answers.spots[answers.map->next->spot]));
}

Message centre_sentence(const geometry::VisitAnswers& answers) {
  if (!answers.map || !answers.map->centre) return {};
  const geometry::AnswerCentre& centre = *answers.map->centre;
  return Message::of(
      "Centre of the answers: %1 and %2 of the start, two times of three within %3 and %4; it is pulled toward the middle of the grid.",
      way_along(centre.at_mm.x(), Message::of("forward"), Message::of("backward")),
      way_along(centre.at_mm.y(), Message::of("outward"), Message::of("inward")),
      error_along(centre.se_forward_mm), error_along(centre.se_outward_mm));
}

Message count_row(const geometry::CountAtOutput& count) {
  const Message verdict = count.verdict == geometry::CountVerdict::met ? Message::of("met")
                          : count.verdict == geometry::CountVerdict::failed
                              ? Message::of("can no longer be met")
                              : Message::of("open");
  return Message::of("%1 %: %2 of %3, %4", count.output_percent, count.answers, count.pulses, verdict);
}

Message counting_sentence(const geometry::Counting& counting, const geometry::CountingRule& rule) {
  switch (counting.state) {
    case geometry::CountingState::found:
      return Message::of("Threshold by counting %1: %2 %, after %3 pulses.", rule_name(rule),
                         counting.threshold_percent.value_or(0), counting.pulses);
    case geometry::CountingState::below:
      return Message::of("Counting %1: met at the lowest output already; the threshold is no higher.",
                         rule_name(rule));
    case geometry::CountingState::above_all:
      return Message::of("Counting %1: not met at the highest output; the threshold is above it.",
                         rule_name(rule));
    case geometry::CountingState::open:
      break;
  }
  if (!counting.next_percent) return Message::of("Counting %1: no pulse yet.", rule_name(rule));
  return Message::of("Counting %1 is open after %2 pulses; next to try: %3 %.", rule_name(rule),
                     counting.pulses, *counting.next_percent);
}

Message odds_sentence(const geometry::CountingRule& rule) {
  constexpr double too_rarely = 0.4;
  return Message::of(
      "Chance alone: an output at which 40 of 100 pulses are answered still passes %1 in %2 of 100 tries.",
      rule_name(rule), number(100 * geometry::chance_of_meeting(rule, too_rarely), 0));
}

Message estimate_sentence(const geometry::ThresholdAtSpot& threshold) {
  const auto count = threshold.pulses.size();
  switch (threshold.belief.known()) {
    case geometry::ThresholdKnown::nothing:
      return Message::of("No estimate without pulses.");
    case geometry::ThresholdKnown::below:
      return Message::of(
          "Estimate: all %1 pulses were answered; the threshold lies below, nobody knows by how much.",
          count);
    case geometry::ThresholdKnown::above:
      return Message::of(
          "Estimate: none of %1 pulses was answered; the threshold lies above, nobody knows by how much.",
          count);
    case geometry::ThresholdKnown::estimated:
      break;
  }
  const auto estimate = *threshold.belief.estimate();
  return Message::of("Estimate from all %1 pulses: %2 %, 95 of 100 from %3 to %4 %.", count,
                     percent(estimate.mean_percent), percent(estimate.low_percent),
                     percent(estimate.high_percent));
}

Message eye_caution() {
  return Message::of(
      "A threshold read by eye is on average 11.3 % above one by EMG, up to 27.8 % (Westin et al. 2014). The prescriber decides threshold and dose.");
}

}  // namespace scalpmark::viewer
