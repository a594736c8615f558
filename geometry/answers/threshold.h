#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/answers/pulse.h"

namespace scalpmark::geometry {

/// The model of an answer: P = l + (1 - 2 l) Phi((x - T) / (s T)) at the output x, percent of the
/// stimulator's; T the threshold, answered half of the time, s its spread as a share of it, l the chance of a
/// slip of eye or hand. Cumulative Gaussian, its spread about 7 %: Awiszus 2003, Suppl Clin Neurophysiol
/// 56:13-23 (memory). Refuses nothing; the threshold and spread are above 0.
[[nodiscard]] double answer_chance(double output_percent, double threshold_percent, double spread,
                                   double lapse = 0.01);

/// How a threshold is estimated. A spread taken for known that is too small makes the interval too narrow: of
/// simulated people whose spread is 0.12, 0.07 held the threshold in 79 of 100, an unknown one in 92.
struct EstimateSettings {
  std::optional<double>
      spread;                  ///< taken for known; else each from 0.03 to 0.15 in steps of 0.01 is as likely
  double grid_percent = 0.05;  ///< width of the cells that hold the threshold

  friend bool operator==(const EstimateSettings&, const EstimateSettings&) = default;
};

/// What the pulses say.
enum class ThresholdKnown {
  nothing,    ///< no pulses
  below,      ///< all were answered: the threshold lies below, nobody knows by how much
  above,      ///< none was answered
  estimated,  ///< there are answers and there are none: the numbers say
};

/// The threshold in percent of the stimulator's output, from all pulses at a spot. A threshold read by eye is
/// on average 11.3 % above one by EMG, up to 27.8 (Westin et al. 2014, Clin Neurophysiol 125:142-147): say so
/// wherever one is shown.
struct ThresholdEstimate {
  double mean_percent = 0;
  double sd_percent = 0;
  double low_percent = 0, high_percent = 0;  ///< 95 of 100: one in forty lies below, one in forty above
};

/// The chance of an answer at one output, as far as it is known.
struct AnswerBand {
  double mean = 0;
  double low = 0, high = 0;  ///< 95 of 100, to 0.001
};

/// What is believed of a threshold: before the first pulse each from 10 to 100 % is as likely as any other,
/// and after it by Bayes' rule, on a grid. A threshold above 100 % is no part of it: an interval that reaches
/// to 100 ends there for want of output.
class ThresholdBelief {
public:
  /// Refuses (GeometryError) a spread that is not from 0.01 to 0.5 and a grid that is not from 0.01 to 1 %.
  explicit ThresholdBelief(const EstimateSettings& settings = {});

  /// Refuses as check_pulses() does.
  void add(const Pulse& pulse);
  /// All of them at once; the order says nothing.
  void add(const std::vector<Pulse>& pulses);

  [[nodiscard]] ThresholdKnown known() const;
  /// None but when known() is estimated.
  [[nodiscard]] std::optional<ThresholdEstimate> estimate() const;
  /// The chance of an answer at an output from 1 to 100 %, for a chart. Wide before the first pulses, and
  /// shown with them.
  [[nodiscard]] AnswerBand answers_at(double output_percent) const;
  /// The output at which the next pulse tells most of the threshold: the mean of what is believed, to a whole
  /// percent, at most `step_up_percent` above the last output, from 1 to 100; the first is `first_percent`.
  /// Near the mean the answer is an even bet. For finding the threshold only: no output to treat with.
  [[nodiscard]] int next_output_percent(int step_up_percent = 5, int first_percent = 50) const;

private:
  void multiply(int output_percent, int answers, int misses);
  [[nodiscard]] double threshold_of(std::size_t cell) const;
  [[nodiscard]] std::vector<double> weights() const;   ///< they sum to 1
  [[nodiscard]] std::vector<double> marginal() const;  ///< of the cells, whatever the spread

  double grid_percent_;
  std::size_t cells_;
  std::vector<double> spreads_;
  std::vector<double> log_weights_;  ///< cell after cell, spread after spread; the largest is 0
  int answers_ = 0, misses_ = 0;
  std::optional<int> last_percent_;
};

}  // namespace scalpmark::geometry
