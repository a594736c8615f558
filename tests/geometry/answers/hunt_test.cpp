// How well a threshold is found in simulated people: a short run of bench_threshold, whose table for 20 000
// of them is in DEVELOPERS.md. Published figures stand beside each.
#include <catch2/catch.hpp>
#include <functional>

#include "tests/support/simulated_muscle.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

namespace {

HuntTally tallied(int people, const std::vector<double>& spreads,
                  const std::function<Hunted(const SimulatedMuscle&, std::mt19937_64&)>& hunt) {
  std::mt19937_64 random(2026);
  HuntTally tally;
  for (int i = 0; i < people; ++i) {
    const SimulatedMuscle muscle = somebody(spreads[size_t(i) % spreads.size()], random);
    tally.add(muscle, hunt(muscle, random));
  }
  return tally;
}

/// The grid five times coarser than the kernel's, for time: see threshold_test.
EstimateSettings coarse(std::optional<double> spread = {}) {
  return {spread, 0.25};
}

const std::vector<double> usual_spreads{0.05, 0.07, 0.12};

}  // namespace

TEST_CASE("counting finds a threshold with some forty-five pulses, within two percent in most") {
  const auto tally = tallied(1500, usual_spreads, [](const auto& muscle, auto& random) {
    return hunted_by_counting(muscle, five_of_ten, random);
  });
  // About 75 pulses by counting in steps down to fewer than 5 of 10, as told by a textbook (memory). An
  // output whose outcome is settled is left at once here: 35 to 60 were expected before this was run.
  CHECK(tally.pulses() > 35);
  CHECK(tally.pulses() < 60);
  CHECK(tally.found_share() > 0.99);
  // Counted again, the same person differs by 8.5 % of the mean (SD 7.2), Neurophysiol Clin 2006, 36:1-7: at
  // 50 % some 4 points of output between two counts. Chance alone makes less, as it must: sqrt(2) 1.6.
  CHECK(tally.sd_percent() > 1);
  CHECK(tally.sd_percent() < 2.5);
  CHECK(std::abs(tally.bias_percent()) < 0.3);
}

TEST_CASE("the estimate needs a third of the pulses for nearly the same, and its interval holds", "[slow]") {
  const auto tally = tallied(300, usual_spreads, [](const auto& muscle, auto& random) {
    return hunted_by_estimate(muscle, coarse(), {60, 2}, random);
  });
  // Adaptive maximum likelihood: about 17 (Awiszus 2003, memory).
  CHECK(tally.pulses() > 12);
  CHECK(tally.pulses() < 20);
  CHECK(tally.sd_percent() < 2.2);
  CHECK(std::abs(tally.bias_percent()) < 0.35);
  // 95 on average over what was believed before; these thresholds and spreads are less spread out than that.
  CHECK(tally.held_share() > 0.93);
  CHECK(tally.found_share() == 1);
}

TEST_CASE("with more pulses the estimate is closer than counting with as many", "[slow]") {
  const auto counted = tallied(300, usual_spreads, [](const auto& muscle, auto& random) {
    return hunted_by_counting(muscle, five_of_ten, random);
  });
  const auto estimated = tallied(300, usual_spreads, [](const auto& muscle, auto& random) {
    return hunted_by_estimate(muscle, coarse(), {40, 0}, random);
  });
  // Estimates are faster and better than counts (Wang, Peterchev and Goetz 2023, J Neural Eng 20:056002).
  CHECK(estimated.pulses() < counted.pulses());
  CHECK(estimated.sd_percent() < 0.85 * counted.sd_percent());
}

// Bayes' rule keeps its word where people are drawn from what was believed of them: any threshold from 10 to
// 100, any of the spreads, the model's own lapses. 600 such people know a share of 95 in 100 to 0.9.
TEST_CASE("where people are as believed, 95 intervals of 100 hold the threshold", "[slow]") {
  std::mt19937_64 random(5);
  HuntTally tally;
  for (int i = 0; i < 600; ++i) {
    const SimulatedMuscle muscle{10 + 90 * uniform(random), 0.03 + 0.01 * double(random() % 13), 0.01};
    tally.add(muscle, hunted_by_estimate(muscle, coarse(), {20, 0}, random));
  }
  // The few whose twenty pulses were all answered or all missed have no interval, and are mostly at the ends.
  CHECK(tally.found_share() > 0.9);
  CHECK(tally.held_share() == Approx(0.95).margin(0.03));
}

TEST_CASE("a spread taken for known that is not makes the interval too narrow") {
  const auto hunt = [](double truth) {
    return tallied(400, {truth}, [](const auto& muscle, auto& random) {
      return hunted_by_estimate(muscle, coarse(0.07), {60, 2}, random);
    });
  };
  CHECK(hunt(0.07).held_share() > 0.93);
  CHECK(hunt(0.12).held_share() < 0.85);
}
