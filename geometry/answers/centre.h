#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/answers/spot_answers.h"

namespace scalpmark::geometry {

/// The centre of gravity of the answers, from the start, forward and outward.
/// It is pulled toward the middle of the spots that were probed: where the field of answers reaches past
/// them, what lies outside has no weight. Show it with that caution.
struct AnswerCentre {
  Eigen::Vector2d at_mm = Eigen::Vector2d::Zero();
  /// One standard deviation, from the pulses' chance alone; says nothing of that pull. None along an axis
  /// along which the spots do not differ: there nothing was asked.
  std::optional<double> se_forward_mm, se_outward_mm;
};

/// c = sum p r / sum p over the spots with pulses, p the share answered. Its error is that of a ratio to
/// first order, var = sum ((x - c) / W)^2 q (1 - q) / n, W = sum p, with q = (k + 1/2) / (n + 1) in place of
/// p, so that spots with no answer or only answers are not taken for sure. Spots count alike however many
/// pulses they got. None where nothing answered. Refuses (GeometryError) as check_spots() does.
[[nodiscard]] std::optional<AnswerCentre> centre_of_answers(const std::vector<SpotAnswers>& spots);

}  // namespace scalpmark::geometry
