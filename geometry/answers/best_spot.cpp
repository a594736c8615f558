#include "geometry/answers/best_spot.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "geometry/answers/binomial.h"
#include "geometry/answers/gauss_legendre.h"

namespace scalpmark::geometry {

namespace {

/// A spot's posterior at every node: Beta(k + 1, n - k + 1), which for whole numbers is binomial.
struct RateBelief {
  std::vector<double> density, below;
};

std::vector<QuadratureNode> nodes_for(const std::vector<SpotAnswers>& spots) {
  // With more the rule stays exact in theory; densities of 1000 pulses are resolved with these.
  constexpr long most = 512;
  long degree = 1;  // one pulse more, for looking ahead
  for (const SpotAnswers& spot : spots) degree += spot.pulses + 1;
  return gauss_legendre(static_cast<int>(std::min(most, degree / 2 + 1)));
}

RateBelief belief_of(const SpotAnswers& spot, const std::vector<QuadratureNode>& nodes) {
  RateBelief belief;
  belief.density.reserve(nodes.size());
  belief.below.reserve(nodes.size());
  for (const QuadratureNode& node : nodes) {
    belief.density.push_back((spot.pulses + 1) * exactly(spot.answers, spot.pulses, node.at));
    belief.below.push_back(at_least(spot.answers + 1, spot.pulses + 1, node.at));
  }
  return belief;
}

/// With the products of all distributions before and behind each spot nothing is divided by.
std::vector<double> chances(const std::vector<const RateBelief*>& beliefs,
                            const std::vector<QuadratureNode>& nodes) {
  const std::size_t count = beliefs.size();
  std::vector<double> sums(count, 0), behind(count + 1, 1);
  for (std::size_t q = 0; q < nodes.size(); ++q) {
    for (std::size_t i = count; i-- > 0;) behind[i] = behind[i + 1] * beliefs[i]->below[q];
    double before = nodes[q].weight;
    for (std::size_t i = 0; i < count; ++i) {
      sums[i] += before * beliefs[i]->density[q] * behind[i + 1];
      before *= beliefs[i]->below[q];
    }
  }
  return sums;
}

std::vector<RateBelief> beliefs_of(const std::vector<SpotAnswers>& spots,
                                   const std::vector<QuadratureNode>& nodes) {
  std::vector<RateBelief> beliefs;
  for (const SpotAnswers& spot : spots) beliefs.push_back(belief_of(spot, nodes));
  return beliefs;
}

std::vector<const RateBelief*> seen(const std::vector<RateBelief>& beliefs) {
  std::vector<const RateBelief*> all;
  for (const RateBelief& belief : beliefs) all.push_back(&belief);
  return all;
}

}  // namespace

std::vector<double> chances_of_being_best(const std::vector<SpotAnswers>& spots) {
  check_spots(spots);
  const auto nodes = nodes_for(spots);
  const auto beliefs = beliefs_of(spots, nodes);
  return chances(seen(beliefs), nodes);
}

std::optional<BestSpot> best_spot(const std::vector<SpotAnswers>& spots, const std::vector<double>& chances) {
  assert(spots.size() == chances.size());
  constexpr double alike = 1e-9;  // rounding of the chances, and more
  std::optional<BestSpot> best;
  for (std::size_t i = 0; i < spots.size(); ++i)
    if (spots[i].answers > 0 && (!best || chances[i] > best->probability + alike))
      best = BestSpot{i, chances[i]};
  return best;
}

double uncertainty_bits(const std::vector<double>& chances) {
  double bits = 0;
  for (const double p : chances)
    if (p > 0) bits -= p * std::log2(p);
  return bits;
}

std::optional<TellingPulse> most_telling_pulse(const std::vector<SpotAnswers>& spots) {
  check_spots(spots);
  constexpr double alike_bits = 1e-9;  // rounding of the sums, and more
  const auto nodes = nodes_for(spots);
  const auto beliefs = beliefs_of(spots, nodes);
  auto now = seen(beliefs);
  const double bits_now = uncertainty_bits(chances(now, nodes));
  std::optional<TellingPulse> best;
  for (std::size_t i = 0; i < spots.size(); ++i) {
    double bits_then = 0;
    for (const int answer : {0, 1}) {
      SpotAnswers then = spots[i];
      ++then.pulses;
      then.answers += answer;
      const RateBelief belief = belief_of(then, nodes);
      const double yes = (spots[i].answers + 1.0) / (spots[i].pulses + 2.0);
      now[i] = &belief;
      bits_then += (answer == 1 ? yes : 1 - yes) * uncertainty_bits(chances(now, nodes));
      now[i] = &beliefs[i];
    }
    const double gain = bits_now - bits_then;
    if (!best || gain > best->gain_bits + alike_bits) best = TellingPulse{i, gain};
  }
  return best;
}

}  // namespace scalpmark::geometry
