#include "geometry/exercise/steadiness.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace scalpmark::geometry {

using Eigen::Vector2d;

namespace {

/// Own errors of one step, over tries or trainees.
struct OwnErrors {
  std::vector<Vector2d> mm;
  std::vector<double> deg;
};

Vector2d in_two_ways(const StepScore& step) {
  if (step.placed->reading_mm) return {step.own.mm, 0};
  return {step.own.forward_mm, step.own.outward_mm};
}

std::map<Step, OwnErrors> own_errors(const std::vector<Score>& scores) {
  std::map<Step, OwnErrors> all;
  for (const Score& score : scores)
    for (const StepScore& step : score.steps) {
      if (!step.placed) continue;
      OwnErrors& errors = all[step.step];
      errors.mm.push_back(in_two_ways(step));
      if (step.own.angle_deg) errors.deg.push_back(*step.own.angle_deg);
    }
  return all;
}

template <class Value>
Value mean_of_all(const std::vector<Value>& values, Value sum) {
  for (const Value& value : values) sum += value;
  return sum / static_cast<double>(values.size());
}

}  // namespace

std::vector<Steadiness> steadiness(const std::vector<Score>& tries) {
  std::vector<Steadiness> all;
  for (const auto& [step, errors] : own_errors(tries)) {
    Steadiness s;
    s.step = step;
    s.tries = static_cast<int>(errors.mm.size());
    s.bias_mm = mean_of_all<Vector2d>(errors.mm, Vector2d::Zero());
    s.bias = s.bias_mm.norm();
    const double others = static_cast<double>(s.tries - 1);
    if (s.tries > 1) {
      double squares = 0;
      for (const Vector2d& mm : errors.mm) squares += (mm - s.bias_mm).squaredNorm();
      s.spread_mm = std::sqrt(squares / others);
    }
    if (!errors.deg.empty()) s.bias_deg = mean_of_all(errors.deg, 0.0);
    if (errors.deg.size() > 1) {
      double squares = 0;
      for (const double deg : errors.deg) squares += (deg - *s.bias_deg) * (deg - *s.bias_deg);
      s.spread_deg = std::sqrt(squares / static_cast<double>(errors.deg.size() - 1));
    }
    all.push_back(s);
  }
  return all;
}

Quartiles quartiles(std::vector<double> values) {
  if (values.empty()) return {};
  std::sort(values.begin(), values.end());
  const auto at = [&](double share) {
    const double place = share * static_cast<double>(values.size() - 1);
    const auto below = static_cast<size_t>(place);
    const size_t above = std::min(below + 1, values.size() - 1);
    return values[below] + (place - static_cast<double>(below)) * (values[above] - values[below]);
  };
  return {at(0.25), at(0.5), at(0.75)};
}

std::vector<ClassStep> class_steps(const std::vector<Score>& attempts) {
  struct Sizes {
    std::vector<double> own_mm, off_mm, own_deg;
  };
  std::map<Step, Sizes> all;
  for (const Score& score : attempts)
    for (const StepScore& step : score.steps) {
      if (!step.placed) continue;
      Sizes& sizes = all[step.step];
      sizes.own_mm.push_back(std::abs(step.own.mm));
      sizes.off_mm.push_back(std::abs(step.off.mm));
      if (step.own.angle_deg) sizes.own_deg.push_back(std::abs(*step.own.angle_deg));
    }
  std::vector<ClassStep> steps;
  for (const auto& [step, sizes] : all) {
    ClassStep& each = steps.emplace_back();
    each.step = step;
    each.count = static_cast<int>(sizes.own_mm.size());
    each.own_mm = quartiles(sizes.own_mm);
    each.off_mm = quartiles(sizes.off_mm);
    if (!sizes.own_deg.empty()) each.own_deg = quartiles(sizes.own_deg);
  }
  return steps;
}

}  // namespace scalpmark::geometry
