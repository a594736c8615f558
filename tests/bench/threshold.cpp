// How well a threshold is found, by counting and by the estimate, in 20 000 simulated people whose thresholds
// are known: 30 to 75 % of the stimulator's output, spreads of 5, 7 and 12 % of the threshold, up to 2 % of
// lapses. Not a matter of time; run by hand: scripts/bench. An argument is another number of people.
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <vector>

#include "geometry/base/all_cores.h"
#include "tests/support/simulated_muscle.h"

using namespace scalpmark;
using namespace scalpmark::tests;

namespace {

using Hunt = std::function<Hunted(const SimulatedMuscle&, std::mt19937_64&)>;

struct Way {
  const char* name;
  bool has_interval;
  Hunt hunt;
};

/// A grid of 0.25 % moves an estimate by less than 0.01 % (tested) and is five times as quick.
geometry::EstimateSettings quick(std::optional<double> spread = {}) {
  return {spread, 0.25};
}

const std::vector<Way>& ways() {
  static const std::vector<Way> all{
      {"counting 5 of 10", false,
       [](const auto& m, auto& r) { return hunted_by_counting(m, geometry::five_of_ten, r); }},
      {"counting 4 of 8", false,
       [](const auto& m, auto& r) { return hunted_by_counting(m, geometry::four_of_eight, r); }},
      {"estimate to an SD of 2", true,
       [](const auto& m, auto& r) {
         return hunted_by_estimate(m, quick(), {60, 2}, r);
       }},
      {"the same, spread 0.07", true,
       [](const auto& m, auto& r) {
         return hunted_by_estimate(m, quick(0.07), {60, 2}, r);
       }},
      {"estimate, 17 pulses", true,
       [](const auto& m, auto& r) {
         return hunted_by_estimate(m, quick(), {17, 0}, r);
       }},
      {"estimate, 40 pulses", true,
       [](const auto& m, auto& r) {
         return hunted_by_estimate(m, quick(), {40, 0}, r);
       }},
  };
  return all;
}

void report(const Way& way, const char* spread, const HuntTally& tally) {
  std::printf("%-24s %-6s %6d %6.1f %+7.2f %6.2f %7.1f %7.1f ", way.name, spread, tally.people(),
              tally.pulses(), tally.bias_percent(), tally.sd_percent(), 100 * tally.within_two_share(),
              100 * (1 - tally.found_share()));
  if (way.has_interval)
    std::printf("%7.1f\n", 100 * tally.held_share());
  else
    std::printf("%7s\n", "-");
}

void simulate(const Way& way, int people) {
  constexpr double spreads[] = {0.05, 0.07, 0.12};
  struct Outcome {
    SimulatedMuscle muscle;
    Hunted hunted;
  };
  std::vector<Outcome> outcomes(static_cast<size_t>(people));
  geometry::on_all_cores(outcomes.size(), [&](size_t i) {
    std::mt19937_64 random(7919 * i + 16);  // the same people for every way
    outcomes[i].muscle = somebody(spreads[i % 3], random);
    outcomes[i].hunted = way.hunt(outcomes[i].muscle, random);
  });
  HuntTally all, by_spread[3];
  for (size_t i = 0; i < outcomes.size(); ++i) {
    all.add(outcomes[i].muscle, outcomes[i].hunted);
    by_spread[i % 3].add(outcomes[i].muscle, outcomes[i].hunted);
  }
  report(way, "all", all);
  report(way, "0.05", by_spread[0]);
  report(way, "0.07", by_spread[1]);
  report(way, "0.12", by_spread[2]);
}

}  // namespace

int main(int argc, char** argv) {
  const int people = argc > 1 ? std::atoi(argv[1]) : 20000;
  if (people < 30) {
    std::fprintf(stderr, "usage: bench_threshold [PEOPLE, 30 or more]\n");
    return 2;
  }
  std::printf("%-24s %-6s %6s %6s %7s %6s %7s %7s %7s\n", "way", "spread", "people", "pulses", "bias", "SD",
              "in 2 %", "none", "held");
  for (const Way& way : ways()) simulate(way, people);
  return 0;
}
