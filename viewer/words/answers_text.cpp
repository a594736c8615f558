#include "viewer/words/answers_text.h"

#include "viewer/words/answer_words.h"
#include "viewer/words/plain_text.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

std::string sentence(const geometry::Message& message) {
  return message.empty() ? std::string() : wrapped_text(words(message));
}

/// "one step forward, one step toward the midline"
constexpr std::size_t spot_wide = 48;

std::string spots_table(const geometry::VisitAnswers& answers) {
  std::string out = "  " + padded("Spot", spot_wide) + "answered\n";
  for (std::size_t i = 0; i < answers.spots.size(); ++i) {
    const geometry::SpotAnswers& spot = answers.map->spots[i];
    out +=
        "  " + padded(words(spot_name(answers.spots[i])), spot_wide) +
        (spot.pulses == 0 ? "no pulse" : std::to_string(spot.answers) + "/" + std::to_string(spot.pulses)) +
        "\n";
  }
  return out;
}

std::string threshold_text(const geometry::ThresholdAtSpot& threshold, const geometry::Case& the_case) {
  const geometry::CountingRule rule = rule_of(the_case.answers);
  std::string out = "Threshold at the spot: " + words(spot_name(threshold.spot)) + "\n";
  for (const geometry::CountAtOutput& count : threshold.counting.outputs)
    out += "  " + words(count_row(count)) + "\n";
  out += sentence(counting_sentence(threshold.counting, rule)) + sentence(odds_sentence(rule)) +
         sentence(estimate_sentence(threshold));
  out += wrapped_text("Next output that tells most of the threshold: " +
                      std::to_string(threshold.belief.next_output_percent(the_case.answers.step_percent)) +
                      " %; for finding it only.");
  return out + sentence(eye_caution());
}

}  // namespace

std::string answers_text(const geometry::VisitAnswers& answers, const geometry::Case& the_case,
                         std::size_t visit) {
  const geometry::Visit& at = *the_case.visits[visit - 1];
  std::string out = "Visit " + std::to_string(visit) + ", " + iso(at.date) + ": " +
                    std::to_string(at.pulses.size()) + " pulses\n\n";
  if (answers.map) out += spots_table(answers) + "\n";
  out += sentence(best_sentence(answers)) + sentence(centre_sentence(answers)) +
         sentence(next_spot_sentence(answers)) + "\n";
  if (answers.threshold) out += threshold_text(*answers.threshold, the_case) + "\n";
  return out + wrapped_text("Training and illustration only.");
}

}  // namespace scalpmark::viewer
