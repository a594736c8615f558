#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace scalpmark::geometry {

/// Limits of a chart of single measurements, one a visit, in the measurements' unit.
struct ControlLimits {
  double centre = 0;             ///< mean of the visits the limits come from
  double mean_moving_range = 0;  ///< mean of how far each of them is from the one before
  double low = 0, high = 0;  ///< centre -/+ 2.66 of it. For what cannot be below 0 a low limit there is none.
  std::vector<std::size_t> outside;  ///< the visits beyond a limit, of all
};

/// Shewhart's limits for individual measurements: 2.66 times the mean moving range either way (NIST/SEMATECH
/// e-Handbook of Statistical Methods, 6.3.2.2). The limits come from the first `from` visits, or from all:
/// with all of them a drift widens its own limits. Steady Gaussian measurements fall outside about 3 times in
/// 1000 if the limits are known well, several times as often with limits from ten visits or so.
/// Refuses (GeometryError) fewer than two visits for the limits, more than there are, and values that are no
/// numbers.
[[nodiscard]] ControlLimits control_limits(const std::vector<double>& by_visit,
                                           std::optional<std::size_t> from = {});

}  // namespace scalpmark::geometry
