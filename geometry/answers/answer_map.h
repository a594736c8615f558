#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/answers/best_spot.h"
#include "geometry/answers/centre.h"
#include "geometry/answers/pulse.h"
#include "geometry/answers/spot_answers.h"

namespace scalpmark::geometry {

/// A spot of the grid with all its pulses, in the order given.
struct ProbedSpot {
  Eigen::Vector2d at_mm =
      Eigen::Vector2d::Zero();  ///< of its real pulse point from the start: forward, outward
  std::vector<Pulse> pulses;
};

/// What the answers at one output say about the place. At different outputs the same spot answers
/// differently, so pulses at others are left out.
struct AnswerMap {
  int output_percent = 0;
  std::vector<SpotAnswers> spots;            ///< one for each probed spot, in the same order
  std::vector<double> chance_of_being_best;  ///< the same; they sum to 1
  std::optional<BestSpot> best;              ///< none where nothing answered
  std::optional<TellingPulse> next;          ///< none where there is no spot
  std::optional<AnswerCentre> centre;        ///< none where nothing answered
};

/// The output with the most pulses over all spots; of several with as many, the highest. None without pulses.
[[nodiscard]] std::optional<int> most_used_output(const std::vector<ProbedSpot>& spots);

/// The map at that output, or at the most used one. None where no pulse was given and no output is named.
/// Refuses (GeometryError) as check_pulses() and check_spots() do, and an output out of its range.
[[nodiscard]] std::optional<AnswerMap> answer_map(const std::vector<ProbedSpot>& spots,
                                                  std::optional<int> output_percent = {});

}  // namespace scalpmark::geometry
