#include "geometry/hands/first_order.h"

#include <cmath>

#include "geometry/base/all_cores.h"
#include "geometry/base/angles.h"

namespace scalpmark::geometry {

using Eigen::Matrix2d;

namespace {

constexpr Eigen::Index start_of(PulseLevel level) {
  return level == PulseLevel::skin ? 0 : 2;
}

}  // namespace

FirstOrder first_order(const ByHand& hand, const std::vector<ErrorSource>& sources, MarkRule laid_by,
                       const HandErrors& errors, int threads, const std::function<void()>& between) {
  constexpr double exact_mm = 1e-3;
  const std::array<MarkRule, 2> others = other_rules(laid_by);
  FirstOrder f;
  f.other_rule_share = errors.other_rule_percent / 100;
  f.by_source.assign(sources.size(), OffByHand::Zero());
  const auto off = [&](const ErrorsMade& made) -> std::optional<OffByHand> {
    const auto placed = hand.make(made, exact_mm);
    if (!placed) return {};
    return placed->off;
  };
  on_all_cores(
      sources.size() + others.size(),
      [&](size_t k) {
        if (between) between();
        if (k >= sources.size()) {
          ErrorsMade made;
          made.laid_by = others[k - sources.size()];
          // A rule whose mark would fall off the head is one that nobody can use here.
          f.by_rule[k - sources.size()] = off(made).value_or(OffByHand::Zero());
          return;
        }
        if (!(sources[k].deviation > 0)) return;
        ErrorsMade more, less;
        sources[k].in(more) = sources[k].deviation;
        sources[k].in(less) = -sources[k].deviation;
        const auto up = off(more), down = off(less);
        if (up || down)
          f.by_source[k] = up && down ? OffByHand(0.5 * (*up - *down)) : up ? *up : OffByHand(-*down);
      },
      threads);
  f.squares.fill(Eigen::Matrix<double, 5, 5>::Zero());
  for (size_t k = 0; k < sources.size(); ++k)
    f.squares[static_cast<size_t>(sources[k].cause)] += f.by_source[k] * f.by_source[k].transpose();
  return f;
}

Scatter scatter_of(const FirstOrder& first, PulseLevel level, const Times& times) {
  const Eigen::Index at = start_of(level);
  Scatter s;
  for (const Cause cause : all_causes) {
    const double t = times[static_cast<size_t>(cause)];
    s.covariance += t * t * first.squares[static_cast<size_t>(cause)].block<2, 2>(at, at);
  }
  const double other = first.other_rule_share * times[static_cast<size_t>(Cause::rule)];
  s.clusters = {{1 - other, first.without_error.segment<2>(at)}};
  for (const auto& o : first.by_rule) s.clusters.push_back({other / 2, o.segment<2>(at)});
  return s;
}

double mean_angle_deg(const FirstOrder& first) {
  double square = 0;
  for (const auto& s : first.squares) square += s(4, 4);
  for (const auto& o : first.by_rule) square += first.other_rule_share / 2 * o[4] * o[4];
  return folded_mean(first.without_error[4], std::sqrt(square));
}

}  // namespace scalpmark::geometry
