#include "geometry/answers/threshold.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "geometry/base/error.h"

namespace scalpmark::geometry {

namespace {

/// Where a threshold is looked for, percent of the stimulator's output.
constexpr Range threshold_percent{10, 100};

constexpr Range spread_range{0.01, 0.5}, grid_range{0.01, 1};

void check(const EstimateSettings& settings) {
  if (settings.spread && !spread_range.holds(*settings.spread))
    throw GeometryError(
        Message::of("The spread of the threshold is %1; it must be from %2 to %3; correct it.",
                    number(*settings.spread, 3), number(spread_range.low, 2), number(spread_range.high, 2)));
  if (!grid_range.holds(settings.grid_percent))
    throw GeometryError(
        Message::of("The grid of the threshold is %1 %; it must be from %2 to %3 %; correct it.",
                    number(settings.grid_percent, 3), number(grid_range.low, 2), number(grid_range.high, 2)));
}

std::vector<double> spreads_for(const EstimateSettings& settings) {
  if (settings.spread) return {*settings.spread};
  std::vector<double> all;
  for (int hundredths = 3; hundredths <= 15; ++hundredths) all.push_back(hundredths / 100.0);
  return all;
}

/// How far from the first cell's beginning that share is reached, each cell's spread evenly within it.
double quantile(const std::vector<double>& cells, double width, double share) {
  double below = 0;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    if (below + cells[i] >= share) return width * (static_cast<double>(i) + (share - below) / cells[i]);
    below += cells[i];
  }
  return width * static_cast<double>(cells.size());
}

double mean_of(const std::vector<double>& cells, double width) {
  double sum = 0;
  for (std::size_t i = 0; i < cells.size(); ++i) sum += cells[i] * (static_cast<double>(i) + 0.5);
  return threshold_percent.low + width * sum;
}

}  // namespace

double answer_chance(double output_percent, double threshold_percent, double spread, double lapse) {
  const double deviations = (output_percent - threshold_percent) / (spread * threshold_percent);
  return lapse + (1 - 2 * lapse) * 0.5 * std::erfc(-deviations / std::numbers::sqrt2);
}

ThresholdBelief::ThresholdBelief(const EstimateSettings& settings) {
  check(settings);
  const double whole = threshold_percent.high - threshold_percent.low;
  cells_ = static_cast<std::size_t>(std::ceil(whole / settings.grid_percent - 1e-9));
  grid_percent_ = whole / static_cast<double>(cells_);
  spreads_ = spreads_for(settings);
  log_weights_.assign(cells_ * spreads_.size(), 0);
}

double ThresholdBelief::threshold_of(std::size_t cell) const {
  return threshold_percent.low + grid_percent_ * (static_cast<double>(cell) + 0.5);
}

void ThresholdBelief::add(const Pulse& pulse) {
  add(std::vector<Pulse>{pulse});
}

void ThresholdBelief::add(const std::vector<Pulse>& pulses) {
  check_pulses(pulses);
  struct Count {
    int answers = 0, misses = 0;
  };
  std::map<int, Count> counts;
  for (const Pulse& pulse : pulses)
    ++(pulse.answered ? counts[pulse.output_percent].answers : counts[pulse.output_percent].misses);
  for (const auto& [output, count] : counts) multiply(output, count.answers, count.misses);
  if (!pulses.empty()) last_percent_ = pulses.back().output_percent;
}

void ThresholdBelief::multiply(int output_percent, int answers, int misses) {
  for (std::size_t cell = 0, k = 0; cell < cells_; ++cell)
    for (const double spread : spreads_) {
      const double chance = answer_chance(output_percent, threshold_of(cell), spread);
      if (answers > 0) log_weights_[k] += answers * std::log(chance);
      if (misses > 0) log_weights_[k] += misses * std::log(1 - chance);
      ++k;
    }
  // However long the log and however odd, the likeliest cell keeps a weight that can be told from 0.
  const double most = *std::max_element(log_weights_.begin(), log_weights_.end());
  for (double& weight : log_weights_) weight -= most;
  answers_ += answers;
  misses_ += misses;
}

ThresholdKnown ThresholdBelief::known() const {
  if (answers_ == 0 && misses_ == 0) return ThresholdKnown::nothing;
  if (misses_ == 0) return ThresholdKnown::below;
  return answers_ == 0 ? ThresholdKnown::above : ThresholdKnown::estimated;
}

std::vector<double> ThresholdBelief::weights() const {
  std::vector<double> weights(log_weights_.size());
  double sum = 0;
  for (std::size_t k = 0; k < weights.size(); ++k) sum += weights[k] = std::exp(log_weights_[k]);
  for (double& weight : weights) weight /= sum;
  return weights;
}

std::vector<double> ThresholdBelief::marginal() const {
  const std::vector<double> weight = weights();
  std::vector<double> cells(cells_, 0);
  for (std::size_t cell = 0, k = 0; cell < cells_; ++cell)
    for (std::size_t s = 0; s < spreads_.size(); ++s) cells[cell] += weight[k++];
  return cells;
}

std::optional<ThresholdEstimate> ThresholdBelief::estimate() const {
  if (known() != ThresholdKnown::estimated) return {};
  const std::vector<double> cells = marginal();
  ThresholdEstimate estimate;
  estimate.mean_percent = mean_of(cells, grid_percent_);
  double variance = 0;
  for (std::size_t i = 0; i < cells_; ++i) {
    const double off = threshold_of(i) - estimate.mean_percent;
    variance += cells[i] * off * off;
  }
  estimate.sd_percent = std::sqrt(variance);
  estimate.low_percent = threshold_percent.low + quantile(cells, grid_percent_, 0.025);
  estimate.high_percent = threshold_percent.low + quantile(cells, grid_percent_, 0.975);
  return estimate;
}

AnswerBand ThresholdBelief::answers_at(double output_percent) const {
  constexpr std::size_t bins = 1000;
  std::vector<double> shares(bins, 0);
  AnswerBand band;
  const std::vector<double> weight = weights();
  for (std::size_t cell = 0, k = 0; cell < cells_; ++cell)
    for (const double spread : spreads_) {
      const double chance = answer_chance(output_percent, threshold_of(cell), spread);
      band.mean += weight[k] * chance;
      shares[std::min(bins - 1, static_cast<std::size_t>(chance * bins))] += weight[k++];
    }
  band.low = quantile(shares, 1.0 / bins, 0.025);
  band.high = quantile(shares, 1.0 / bins, 0.975);
  return band;
}

int ThresholdBelief::next_output_percent(int step_up_percent, int first_percent) const {
  if (!last_percent_) return first_percent;
  const int mean = static_cast<int>(std::lround(mean_of(marginal(), grid_percent_)));
  return std::clamp(std::min(mean, *last_percent_ + step_up_percent),
                    static_cast<int>(ranges::output_percent.low),
                    static_cast<int>(ranges::output_percent.high));
}

}  // namespace scalpmark::geometry
