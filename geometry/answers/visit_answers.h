#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/answers/answer_map.h"
#include "geometry/answers/counting.h"
#include "geometry/answers/threshold.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// The grid's spots from the start outward in a spiral, the next always a neighbour: the order in which they
/// are proposed, and by which staff number them, from 1.
inline constexpr std::array<GridPosition, 9> spiral{
    {{0, 0}, {1, 0}, {1, 1}, {0, 1}, {-1, 1}, {-1, 0}, {-1, -1}, {0, -1}, {1, -1}}};
/// Its place in the spiral, from 0.
[[nodiscard]] std::size_t place_in_spiral(const GridPosition& spot);

/// Whether what was seen is an answer by the case's setting. A twitch elsewhere never is.
[[nodiscard]] bool counts(SeenAnswer seen, CountedAnswers counted);

[[nodiscard]] CountingRule rule_of(const AnswerSettings& settings);
[[nodiscard]] CountingSteps steps_of(const AnswerSettings& settings);

/// A visit's pulses at a spot, in the order given.
[[nodiscard]] std::vector<Pulse> pulses_at(const Visit& visit, const GridPosition& spot,
                                           CountedAnswers counted);

/// The plan's nine spots, in the order of its grid, each with its pulses at a visit. Places are those of the
/// laid coil's pulse points, straight from the start's, forward and outward.
[[nodiscard]] std::vector<ProbedSpot> probed_spots(const Plan& plan, const Visit& visit,
                                                   CountedAnswers counted);

/// What is asked beyond the case's own settings.
struct AnswersAsked {
  std::optional<int> output_percent;  ///< of the map; without it, the one with most pulses over the grid
  std::optional<double> spread;       ///< EstimateSettings::spread
  std::optional<GridPosition> spot;   ///< of the threshold; without it, threshold_spot()
};

/// The threshold at a spot, by counting and by estimate.
struct ThresholdAtSpot {
  GridPosition spot;
  std::vector<Pulse> pulses;
  Counting counting;
  ThresholdBelief belief;
};

/// What a visit's pulses say.
struct VisitAnswers {
  std::vector<GridPosition> spots;           ///< the grid's, in the order of the map
  std::optional<AnswerMap> map;              ///< none without pulses on the grid
  std::optional<ThresholdAtSpot> threshold;  ///< none without pulses at its spot
};

/// The spot whose pulse point lies nearest to the centre of the answers; none where nothing answered.
[[nodiscard]] std::optional<GridPosition> spot_nearest_centre(const VisitAnswers& answers);

/// Where the threshold is hunted: the case's hotspot where it has pulses, else the spot with most of them (of
/// several, the first of the grid). None without pulses on the grid.
[[nodiscard]] std::optional<GridPosition> threshold_spot(const Visit& visit, const GridPosition& hotspot);

/// None without pulses there. Refuses as visit_answers() does.
[[nodiscard]] std::optional<ThresholdAtSpot> threshold_at(const Case& the_case, const Visit& visit,
                                                          const GridPosition& spot,
                                                          std::optional<double> spread = {});

/// Refuses (GeometryError) as answer_map(), count_threshold() and ThresholdBelief do.
[[nodiscard]] VisitAnswers visit_answers(const Plan& plan, const Case& the_case, const Visit& visit,
                                         const AnswersAsked& asked = {});

}  // namespace scalpmark::geometry
