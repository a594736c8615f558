#pragma once

#include <array>
#include <functional>
#include <vector>

#include "geometry/hands/by_hand.h"
#include "geometry/hands/scatter.h"

namespace scalpmark::geometry {

/// How a placement follows each source of error of its own size, and the two other rules.
struct FirstOrder {
  std::vector<OffByHand> by_source;  ///< in the order of the sources
  std::array<OffByHand, 2> by_rule{OffByHand::Zero(), OffByHand::Zero()};
  /// Without any error: how far a coil laid by other marks than the plan's is off, as where they are drawn by
  /// one rule and met by another. None for the plan's own marks.
  OffByHand without_error = OffByHand::Zero();
  double other_rule_share = 0;  ///< of placements laid by one of the two, 0 to 1
  std::array<Eigen::Matrix<double, 5, 5>, all_causes.size()>
      squares;  ///< of each cause but the rule, added up
};
/// By central differences of one standard deviation. `between` is called before each placement, from any
/// thread.
[[nodiscard]] FirstOrder first_order(const ByHand& hand, const std::vector<ErrorSource>& sources,
                                     MarkRule laid_by, const HandErrors& errors, int threads,
                                     const std::function<void()>& between);

/// Where one looks at the pulse.
enum class PulseLevel { skin, depth };

/// How the pulse scatters with these causes alone, each with its error so many times as large (of the rule:
/// used so many times as often).
using Times = std::array<double, all_causes.size()>;
[[nodiscard]] Scatter scatter_of(const FirstOrder& first, PulseLevel level, const Times& times);

[[nodiscard]] inline Times all_once() {
  Times t;
  t.fill(1);
  return t;
}
[[nodiscard]] inline Times but(Cause cause, double times) {
  Times t = all_once();
  t[static_cast<size_t>(cause)] = times;
  return t;
}
[[nodiscard]] inline Times only(Cause cause) {
  Times t{};
  t[static_cast<size_t>(cause)] = 1;
  return t;
}

/// How far the coil's angle is off on average, degrees: of a normal error around what it is without one.
[[nodiscard]] double mean_angle_deg(const FirstOrder& first);

}  // namespace scalpmark::geometry
