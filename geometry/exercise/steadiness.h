#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/exercise/score.h"

namespace scalpmark::geometry {

/// Whether a hand is right, and whether it is steady: one step over repeated tries on the same head, by its
/// own errors.
struct Steadiness {
  Step step;
  int tries = 0;  ///< in which it was done
  /// The mean own error, forward and outward (of a reading: too long, and 0), mm, and its length.
  Eigen::Vector2d bias_mm = Eigen::Vector2d::Zero();
  double bias = 0;
  /// How far a try lies from the mean of all, one standard deviation in both directions together, mm; needs
  /// two tries.
  std::optional<double> spread_mm;
  std::optional<double> bias_deg, spread_deg;  ///< where an angle is meant
};

/// Of each step done in at least one try, in order.
[[nodiscard]] std::vector<Steadiness> steadiness(const std::vector<Score>& tries);

/// Where half of some values lie, and their middle. Linear between order statistics (Hyndman and Fan 1996,
/// Am Stat 50:361-365, definition 7).
struct Quartiles {
  double low = 0, median = 0, high = 0;
};
/// All 0 of no values.
[[nodiscard]] Quartiles quartiles(std::vector<double> values);

/// One step over all attempts of a class.
struct ClassStep {
  Step step;
  int count = 0;  ///< of attempts in which it was done
  Quartiles own_mm, off_mm;
  std::optional<Quartiles> own_deg;  ///< sizes, without their signs
};
[[nodiscard]] std::vector<ClassStep> class_steps(const std::vector<Score>& attempts);

}  // namespace scalpmark::geometry
