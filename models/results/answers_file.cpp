#include "models/results/answers_file.h"

#include "models/cases/settings_json.h"
#include "models/files/json_numbers.h"
#include "models/files/safe_file.h"
#include "models/files/strict_json.h"

namespace scalpmark::models {

namespace g = geometry;
using nlohmann::ordered_json;

namespace {

ordered_json spot_json(const g::GridPosition& spot) {
  return {spot.row, spot.column};
}

ordered_json spots_json(const g::VisitAnswers& answers) {
  auto out = ordered_json::array();
  if (!answers.map) return out;
  for (std::size_t i = 0; i < answers.spots.size(); ++i) {
    const g::SpotAnswers& spot = answers.map->spots[i];
    out.push_back({{"spot", spot_json(answers.spots[i])},
                   {"forward_mm", number(spot.at_mm.x())},
                   {"outward_mm", number(spot.at_mm.y())},
                   {"pulses", spot.pulses},
                   {"answers", spot.answers},
                   {"chance_of_being_best", number(answers.map->chance_of_being_best[i])}});
  }
  return out;
}

ordered_json centre_json(const g::AnswerMap& map) {
  if (!map.centre) return nullptr;
  return {{"forward_mm", number(map.centre->at_mm.x())},
          {"outward_mm", number(map.centre->at_mm.y())},
          {"se_forward_mm", number(map.centre->se_forward_mm)},
          {"se_outward_mm", number(map.centre->se_outward_mm)}};
}

const char* verdict_key(g::CountVerdict verdict) {
  return verdict == g::CountVerdict::met ? "met" : verdict == g::CountVerdict::failed ? "failed" : "open";
}

const char* state_key(g::CountingState state) {
  switch (state) {
    case g::CountingState::open:
      return "open";
    case g::CountingState::found:
      return "found";
    case g::CountingState::below:
      return "below";
    case g::CountingState::above_all:
      break;
  }
  return "above";
}

ordered_json whole(const std::optional<int>& value) {
  return value ? ordered_json(*value) : ordered_json(nullptr);
}

ordered_json counting_json(const g::Counting& counting, const g::Case& the_case) {
  ordered_json out;
  out["rule"] = file_word(the_case.answers.rule);
  out["state"] = state_key(counting.state);
  out["percent"] = whole(counting.threshold_percent);
  out["pulses"] = counting.pulses;
  out["next_percent"] = whole(counting.next_percent);
  out["outputs"] = ordered_json::array();
  for (const g::CountAtOutput& output : counting.outputs)
    out["outputs"].push_back({{"output_percent", output.output_percent},
                              {"pulses", output.pulses},
                              {"answers", output.answers},
                              {"beyond", output.beyond},
                              {"verdict", verdict_key(output.verdict)}});
  return out;
}

ordered_json threshold_json(const g::ThresholdAtSpot& threshold, const g::Case& the_case) {
  ordered_json out;
  out["spot"] = spot_json(threshold.spot);
  out["counting"] = counting_json(threshold.counting, the_case);
  const auto estimate = threshold.belief.estimate();
  out["estimate"] = estimate ? ordered_json{{"mean", number(estimate->mean_percent)},
                                            {"sd", number(estimate->sd_percent)},
                                            {"low", number(estimate->low_percent)},
                                            {"high", number(estimate->high_percent)}}
                             : ordered_json(nullptr);
  const g::ThresholdKnown known = threshold.belief.known();
  out["estimate_bound"] = known == g::ThresholdKnown::below   ? ordered_json("below")
                          : known == g::ThresholdKnown::above ? ordered_json("above")
                                                              : ordered_json(nullptr);
  out["next_output_percent"] = threshold.belief.next_output_percent(the_case.answers.step_percent);
  return out;
}

}  // namespace

std::string answers_json(const g::VisitAnswers& answers, const g::Case& the_case, std::size_t visit) {
  ordered_json out;
  out["format"] = "scalpmark-answers";
  out["version"] = 1;
  out["visit"] = visit;
  out["date"] = iso(the_case.visits[visit - 1]->date);
  out["counted"] = file_word(the_case.answers.counted);
  out["output_percent"] = answers.map ? ordered_json(answers.map->output_percent) : ordered_json(nullptr);
  out["spots"] = spots_json(answers);
  out["best"] = out["next"] = out["centre"] = out["threshold"] = nullptr;
  if (answers.map) {
    if (const auto& best = answers.map->best)
      out["best"] = {{"spot", spot_json(answers.spots[best->spot])},
                     {"probability", number(best->probability)}};
    if (const auto& next = answers.map->next)
      out["next"] = {{"spot", spot_json(answers.spots[next->spot])}, {"gain_bits", number(next->gain_bits)}};
    out["centre"] = centre_json(*answers.map);
  }
  if (answers.threshold) out["threshold"] = threshold_json(*answers.threshold, the_case);
  return pretty_json(out);
}

void write_answers(const std::filesystem::path& file, const g::VisitAnswers& answers, const g::Case& the_case,
                   std::size_t visit) {
  write_whole(file, answers_json(answers, the_case, visit));
}

}  // namespace scalpmark::models
