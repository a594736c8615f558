#include "geometry/answers/control_chart.h"

#include <cmath>

#include "geometry/base/error.h"

namespace scalpmark::geometry {

ControlLimits control_limits(const std::vector<double>& by_visit, std::optional<std::size_t> from) {
  const std::size_t count = from.value_or(by_visit.size());
  if (count < 2 || count > by_visit.size())
    throw GeometryError(Message::of(
        "Limits from %1 of %2 visits cannot be drawn; take two visits or more of those there are.", count,
        by_visit.size()));
  for (std::size_t i = 0; i < by_visit.size(); ++i)
    if (!std::isfinite(by_visit[i]))
      throw GeometryError(
          Message::of("The measurement of visit %1 is no number; leave the visit out.", i + 1));
  ControlLimits limits;
  double sum = by_visit[0], moved = 0;
  for (std::size_t i = 1; i < count; ++i) {
    sum += by_visit[i];
    moved += std::abs(by_visit[i] - by_visit[i - 1]);
  }
  constexpr double three_deviations = 2.66;  // 3 / 1.128, in moving ranges of two
  limits.centre = sum / static_cast<double>(count);
  limits.mean_moving_range = moved / static_cast<double>(count - 1);
  limits.low = limits.centre - three_deviations * limits.mean_moving_range;
  limits.high = limits.centre + three_deviations * limits.mean_moving_range;
  for (std::size_t i = 0; i < by_visit.size(); ++i)
    if (by_visit[i] < limits.low || by_visit[i] > limits.high) limits.outside.push_back(i);
  return limits;
}

}  // namespace scalpmark::geometry
