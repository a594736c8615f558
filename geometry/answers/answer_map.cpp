#include "geometry/answers/answer_map.h"

#include <map>

namespace scalpmark::geometry {

namespace {

SpotAnswers answers_at(const ProbedSpot& spot, int output_percent) {
  SpotAnswers counted{spot.at_mm, 0, 0};
  for (const Pulse& pulse : spot.pulses) {
    if (pulse.output_percent != output_percent) continue;
    ++counted.pulses;
    if (pulse.answered) ++counted.answers;
  }
  return counted;
}

}  // namespace

std::optional<int> most_used_output(const std::vector<ProbedSpot>& spots) {
  std::map<int, int> pulses;
  for (const ProbedSpot& spot : spots)
    for (const Pulse& pulse : spot.pulses) ++pulses[pulse.output_percent];
  std::optional<int> most;
  for (const auto& [output, count] : pulses)
    if (!most || count >= pulses.at(*most)) most = output;
  return most;
}

std::optional<AnswerMap> answer_map(const std::vector<ProbedSpot>& spots, std::optional<int> output_percent) {
  for (const ProbedSpot& spot : spots) check_pulses(spot.pulses);
  if (output_percent) check_pulses({{*output_percent, false}});
  const std::optional<int> output = output_percent ? output_percent : most_used_output(spots);
  if (!output) return {};
  AnswerMap map;
  map.output_percent = *output;
  for (const ProbedSpot& spot : spots) map.spots.push_back(answers_at(spot, *output));
  map.chance_of_being_best = chances_of_being_best(map.spots);
  map.best = best_spot(map.spots, map.chance_of_being_best);
  map.next = most_telling_pulse(map.spots);
  map.centre = centre_of_answers(map.spots);
  return map;
}

}  // namespace scalpmark::geometry
