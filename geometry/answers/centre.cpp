#include "geometry/answers/centre.h"

#include <algorithm>
#include <cmath>

namespace scalpmark::geometry {

namespace {

bool differ_along(const std::vector<SpotAnswers>& probed, int axis) {
  constexpr double same_mm = 1e-6;  // rounding of places; no grid is as fine
  const auto [low, high] =
      std::minmax_element(probed.begin(), probed.end(),
                          [&](const auto& a, const auto& b) { return a.at_mm[axis] < b.at_mm[axis]; });
  return high->at_mm[axis] - low->at_mm[axis] > same_mm;
}

}  // namespace

std::optional<AnswerCentre> centre_of_answers(const std::vector<SpotAnswers>& spots) {
  check_spots(spots);
  std::vector<SpotAnswers> probed;
  std::copy_if(spots.begin(), spots.end(), std::back_inserter(probed),
               [](const auto& s) { return s.pulses > 0; });
  double weight = 0;
  Eigen::Vector2d sum(0, 0);
  for (const SpotAnswers& spot : probed) {
    const double share = static_cast<double>(spot.answers) / spot.pulses;
    weight += share;
    sum += share * spot.at_mm;
  }
  if (weight == 0) return {};
  AnswerCentre centre;
  centre.at_mm = sum / weight;
  Eigen::Array2d variance(0, 0);
  for (const SpotAnswers& spot : probed) {
    const double q = (spot.answers + 0.5) / (spot.pulses + 1);
    variance += ((spot.at_mm - centre.at_mm) / weight).array().square() * (q * (1 - q) / spot.pulses);
  }
  if (differ_along(probed, 0)) centre.se_forward_mm = std::sqrt(variance[0]);
  if (differ_along(probed, 1)) centre.se_outward_mm = std::sqrt(variance[1]);
  return centre;
}

}  // namespace scalpmark::geometry
