#include "geometry/answers/visit_answers.h"

#include <algorithm>
#include <array>

namespace scalpmark::geometry {

std::size_t place_in_spiral(const GridPosition& spot) {
  return static_cast<std::size_t>(std::find(spiral.begin(), spiral.end(), spot) - spiral.begin());
}

bool counts(SeenAnswer seen, CountedAnswers counted) {
  const bool thumb = seen == SeenAnswer::thumb, index = seen == SeenAnswer::index;
  switch (counted) {
    case CountedAnswers::thumb:
      return thumb;
    case CountedAnswers::index:
      return index;
    case CountedAnswers::thumb_or_index:
      break;
  }
  return thumb || index;
}

CountingRule rule_of(const AnswerSettings& settings) {
  return settings.rule == CountingBy::four_of_eight ? four_of_eight : five_of_ten;
}

CountingSteps steps_of(const AnswerSettings& settings) {
  CountingSteps steps;
  steps.step_percent = settings.step_percent;
  steps.fine_percent = settings.fine_percent;
  return steps;
}

std::vector<Pulse> pulses_at(const Visit& visit, const GridPosition& spot, CountedAnswers counted) {
  std::vector<Pulse> pulses;
  for (const LoggedPulse& pulse : visit.pulses)
    if (pulse.spot == spot) pulses.push_back({pulse.output_percent, counts(pulse.answer, counted)});
  return pulses;
}

std::vector<ProbedSpot> probed_spots(const Plan& plan, const Visit& visit, CountedAnswers counted) {
  std::vector<ProbedSpot> spots;
  for (const GridSpot& spot : plan.grid) {
    const Eigen::Vector3d from_start = spot.placement.pulse - plan.start.pulse;
    spots.push_back({{from_start.dot(plan.start.forward), -from_start.dot(plan.start.inward)},
                     pulses_at(visit, {spot.row, spot.column}, counted)});
  }
  return spots;
}

std::optional<GridPosition> threshold_spot(const Visit& visit, const GridPosition& hotspot) {
  // Rows and columns from -1 to 1, in the order of a plan's grid.
  std::array<int, 9> pulses{};
  const auto place = [](const GridPosition& spot) {
    return static_cast<std::size_t>(3 * (spot.row + 1) + spot.column + 1);
  };
  for (const LoggedPulse& pulse : visit.pulses)
    if (pulse.spot) ++pulses[place(*pulse.spot)];
  if (pulses[place(hotspot)] > 0) return hotspot;
  const auto most = std::max_element(pulses.begin(), pulses.end());
  if (*most == 0) return {};
  const int at = static_cast<int>(most - pulses.begin());
  return GridPosition{at / 3 - 1, at % 3 - 1};
}

std::optional<GridPosition> spot_nearest_centre(const VisitAnswers& answers) {
  if (!answers.map || !answers.map->centre) return {};
  const auto& spots = answers.map->spots;
  const auto away = [&](const SpotAnswers& spot) { return (spot.at_mm - answers.map->centre->at_mm).norm(); };
  const auto nearest =
      std::min_element(spots.begin(), spots.end(),
                       [&](const SpotAnswers& a, const SpotAnswers& b) { return away(a) < away(b); });
  return answers.spots[static_cast<std::size_t>(nearest - spots.begin())];
}

std::optional<ThresholdAtSpot> threshold_at(const Case& the_case, const Visit& visit,
                                            const GridPosition& spot, std::optional<double> spread) {
  const AnswerSettings& settings = the_case.answers;
  auto pulses = pulses_at(visit, spot, settings.counted);
  if (pulses.empty()) return {};
  EstimateSettings estimate;
  estimate.spread = spread;
  ThresholdBelief belief(estimate);
  belief.add(pulses);
  Counting counting = count_threshold(pulses, rule_of(settings), steps_of(settings));
  return ThresholdAtSpot{spot, std::move(pulses), std::move(counting), std::move(belief)};
}

VisitAnswers visit_answers(const Plan& plan, const Case& the_case, const Visit& visit,
                           const AnswersAsked& asked) {
  VisitAnswers found;
  for (const GridSpot& spot : plan.grid) found.spots.push_back({spot.row, spot.column});
  found.map = answer_map(probed_spots(plan, visit, the_case.answers.counted), asked.output_percent);
  const auto spot = asked.spot ? asked.spot : threshold_spot(visit, the_case.hotspot);
  if (spot) found.threshold = threshold_at(the_case, visit, *spot, asked.spread);
  return found;
}

}  // namespace scalpmark::geometry
