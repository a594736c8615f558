#pragma once

#include <cmath>
#include <optional>
#include <random>

#include "geometry/answers/counting.h"
#include "geometry/answers/threshold.h"

namespace scalpmark::tests {

/// Somebody whose threshold is known: answers as the model has it, with a share of lapses either way.
struct SimulatedMuscle {
  double threshold_percent = 0;
  double spread = 0;
  double lapse = 0;
};

/// From 0 to below 1, the same on every computer.
inline double uniform(std::mt19937_64& random) {
  return static_cast<double>(random() >> 11) * 0x1p-53;
}

/// A threshold from 30 to 75 % and up to 2 % of lapses, each as likely.
inline SimulatedMuscle somebody(double spread, std::mt19937_64& random) {
  const double threshold = 30 + 45 * uniform(random);
  return {threshold, spread, 0.02 * uniform(random)};
}

inline geometry::Pulse pulsed(const SimulatedMuscle& muscle, int output_percent, std::mt19937_64& random) {
  // Written anew here: the kernel's own model would hide a mistake in it.
  const double off = output_percent / muscle.threshold_percent - 1;
  const double chance =
      muscle.lapse + (1 - 2 * muscle.lapse) * 0.5 * (1 + std::erf(off / muscle.spread / std::sqrt(2)));
  return {output_percent, uniform(random) < chance};
}

/// A threshold that was hunted.
struct Hunted {
  std::optional<double> percent;
  double low_percent = 0, high_percent = 0;  ///< 95 of 100, where the way of hunting has one
  int pulses = 0;
};

inline Hunted hunted_by_counting(const SimulatedMuscle& muscle, const geometry::CountingRule& rule,
                                 std::mt19937_64& random) {
  std::vector<geometry::Pulse> log;
  auto counting = geometry::count_threshold(log, rule);
  while (counting.next_percent) {
    log.push_back(pulsed(muscle, *counting.next_percent, random));
    counting = geometry::count_threshold(log, rule);
  }
  Hunted hunted{{}, 0, 0, counting.pulses};
  if (counting.threshold_percent) hunted.percent = *counting.threshold_percent;
  return hunted;
}

/// When to stop hunting by the estimate: after that many pulses, or before, once it is that sure.
struct HuntEnd {
  int pulses = 60;
  double sd_percent = 2;
};

inline Hunted hunted_by_estimate(const SimulatedMuscle& muscle, const geometry::EstimateSettings& settings,
                                 const HuntEnd& end, std::mt19937_64& random) {
  geometry::ThresholdBelief belief(settings);
  Hunted hunted;
  while (hunted.pulses < end.pulses) {
    belief.add(pulsed(muscle, belief.next_output_percent(), random));
    ++hunted.pulses;
    const auto estimate = belief.estimate();
    if (!estimate) continue;
    hunted.percent = estimate->mean_percent;
    hunted.low_percent = estimate->low_percent;
    hunted.high_percent = estimate->high_percent;
    if (estimate->sd_percent < end.sd_percent) break;
  }
  return hunted;
}

/// What many hunts come to.
class HuntTally {
public:
  void add(const SimulatedMuscle& muscle, const Hunted& hunted) {
    ++people_;
    pulses_ += hunted.pulses;
    if (!hunted.percent) return;
    const double off = *hunted.percent - muscle.threshold_percent;
    ++found_;
    sum_ += off;
    squares_ += off * off;
    near_ += std::abs(off) <= 2 ? 1 : 0;
    held_ +=
        hunted.low_percent <= muscle.threshold_percent && muscle.threshold_percent <= hunted.high_percent;
  }
  [[nodiscard]] int people() const { return people_; }
  [[nodiscard]] double found_share() const { return static_cast<double>(found_) / people_; }
  [[nodiscard]] double bias_percent() const { return sum_ / found_; }
  [[nodiscard]] double sd_percent() const {
    return std::sqrt(squares_ / found_ - bias_percent() * bias_percent());
  }
  [[nodiscard]] double pulses() const { return static_cast<double>(pulses_) / people_; }
  [[nodiscard]] double within_two_share() const { return static_cast<double>(near_) / people_; }
  [[nodiscard]] double held_share() const { return static_cast<double>(held_) / found_; }

private:
  int people_ = 0, found_ = 0, near_ = 0, held_ = 0;
  long pulses_ = 0;
  double sum_ = 0, squares_ = 0;
};

}  // namespace scalpmark::tests
