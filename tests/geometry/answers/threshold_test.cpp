#include "geometry/answers/threshold.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "tests/support/sentence.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

namespace {

ThresholdBelief believed(const std::vector<Pulse>& pulses, const EstimateSettings& settings = {}) {
  ThresholdBelief belief(settings);
  belief.add(pulses);
  return belief;
}

const std::vector<Pulse>& hunted() {
  static const std::vector<Pulse> pulses{{50, true},  {45, false}, {47, true},  {46, false},
                                         {48, false}, {49, true},  {47, false}, {48, true},
                                         {46, true},  {44, false}, {52, true},  {47, true}};
  return pulses;
}

/// The same estimate by other means: Simpson's rule over a grid five times finer, the Gaussian by its
/// series and continued fraction's stand-in, erf, and every pulse multiplied in on its own.
struct FineEstimate {
  double mean = 0, sd = 0, below_low = 0, below_high = 0;
};

FineEstimate on_fine_grid(const std::vector<Pulse>& pulses, const std::vector<double>& spreads, double low,
                          double high) {
  constexpr int steps = 9000;  // of 0.01 %
  double sum = 0, first = 0, second = 0, below_low = 0, below_high = 0;
  for (int i = 0; i <= steps; ++i) {
    const double t = 10 + 90.0 * i / steps, simpson = i == 0 || i == steps ? 1 : (i % 2 == 1 ? 4 : 2);
    double density = 0;
    for (const double s : spreads) {
      double likelihood = 1;
      for (const Pulse& pulse : pulses) {
        const double p =
            0.01 + 0.98 * 0.5 * (1 + std::erf((pulse.output_percent - t) / (s * t) / std::sqrt(2)));
        likelihood *= pulse.answered ? p : 1 - p;
      }
      density += likelihood;
    }
    sum += simpson * density;
    first += simpson * density * t;
    second += simpson * density * t * t;
    if (t <= low) below_low += simpson * density;
    if (t <= high) below_high += simpson * density;
  }
  const double mean = first / sum;
  return {mean, std::sqrt(second / sum - mean * mean), below_low / sum, below_high / sum};
}

}  // namespace

TEST_CASE("the chance of an answer is a cumulative Gaussian between its lapses") {
  CHECK(answer_chance(47, 47, 0.07) == Approx(0.5).epsilon(1e-14));
  // One deviation up and down: 0.841344746 and the rest, a table's value.
  CHECK(answer_chance(53.5, 50, 0.07, 0) == Approx(0.8413447461).epsilon(1e-9));
  CHECK(answer_chance(46.5, 50, 0.07, 0) == Approx(0.1586552539).epsilon(1e-9));
  CHECK(answer_chance(53.5, 50, 0.07) == Approx(0.01 + 0.98 * 0.8413447461).epsilon(1e-9));
  CHECK(answer_chance(100, 30, 0.05) == Approx(0.99).epsilon(1e-12));
  CHECK(answer_chance(1, 30, 0.05) == Approx(0.01).epsilon(1e-12));
}

TEST_CASE("the estimate agrees with a finer grid by another rule") {
  std::vector<double> unknown;
  for (int s = 3; s <= 15; ++s) unknown.push_back(s / 100.0);
  for (const bool fixed : {false, true}) {
    EstimateSettings settings;
    if (fixed) settings.spread = 0.07;
    const auto estimate = believed(hunted(), settings).estimate();
    REQUIRE(estimate);
    const auto fine = on_fine_grid(hunted(), fixed ? std::vector<double>{0.07} : unknown,
                                   estimate->low_percent, estimate->high_percent);
    CHECK(estimate->mean_percent == Approx(fine.mean).margin(2e-3));
    CHECK(estimate->sd_percent == Approx(fine.sd).margin(2e-3));
    CHECK(fine.below_low == Approx(0.025).margin(1e-3));
    CHECK(fine.below_high == Approx(0.975).margin(1e-3));
  }
}

TEST_CASE("a known spread and a steep muscle leave the threshold between the last answer and the last miss") {
  // With a spread of 1 % of it a threshold between 40 (missed) and 60 (answered) is as likely anywhere
  // between: a mean of 50, a deviation of 20 / sqrt(12), and the ends as sharp as half a percent, but for the
  // hundredths that lapses leave outside, where the whole range counts: 30 below with 0.01/0.99 of the
  // weight, 40 above.
  const auto estimate = believed({{40, false}, {60, true}}, {0.01, 0.05}).estimate();
  const double lapse = 0.01 / 0.99, inside = 20, below = 30 * lapse, above = 40 * lapse;
  const double sum = inside + below + above;
  CHECK(estimate->mean_percent == Approx((50 * inside + 25 * below + 80 * above) / sum).margin(0.05));
}

TEST_CASE("all answered says below and none answered above, with no number") {
  CHECK(ThresholdBelief().known() == ThresholdKnown::nothing);
  CHECK_FALSE(ThresholdBelief().estimate());
  const auto yes = believed({{50, true}, {45, true}, {40, true}});
  CHECK(yes.known() == ThresholdKnown::below);
  CHECK_FALSE(yes.estimate());
  const auto no = believed({{50, false}, {55, false}});
  CHECK(no.known() == ThresholdKnown::above);
  CHECK_FALSE(no.estimate());
  CHECK(believed({{50, false}, {55, true}}).known() == ThresholdKnown::estimated);
}

TEST_CASE("one by one, all at once or in another order, pulses say the same") {
  ThresholdBelief single;
  for (auto pulse = hunted().rbegin(); pulse != hunted().rend(); ++pulse) single.add(*pulse);
  CHECK(single.estimate()->mean_percent ==
        Approx(believed(hunted()).estimate()->mean_percent).epsilon(1e-10));
  CHECK(single.estimate()->low_percent == Approx(believed(hunted()).estimate()->low_percent).epsilon(1e-8));
}

TEST_CASE("a grid five times coarser moves the estimate by less than anybody reads") {
  const auto fine = believed(hunted()).estimate(), coarse = believed(hunted(), {{}, 0.25}).estimate();
  CHECK(coarse->mean_percent == Approx(fine->mean_percent).margin(0.01));
  CHECK(coarse->low_percent == Approx(fine->low_percent).margin(0.03));
  CHECK(coarse->high_percent == Approx(fine->high_percent).margin(0.03));
}

TEST_CASE("hundreds of pulses that contradict each other still have an estimate") {
  std::vector<Pulse> log;
  for (int i = 0; i < 400; ++i) log.push_back({80, false}), log.push_back({40, true});
  const auto estimate = believed(log).estimate();
  REQUIRE(estimate);
  CHECK(std::isfinite(estimate->mean_percent));
  CHECK(estimate->low_percent >= 10);
  CHECK(estimate->high_percent <= 100);
  CHECK(estimate->low_percent <= estimate->mean_percent);
}

TEST_CASE("the next output is the mean of what is believed, and never far above the last") {
  CHECK(ThresholdBelief().next_output_percent() == 50);
  CHECK(ThresholdBelief().next_output_percent(5, 60) == 60);
  // A miss at 50 leaves some 50 to 100 with a mean of about 75: up by no more than the step.
  CHECK(believed({{50, false}}).next_output_percent() == 55);
  CHECK(believed({{50, false}}).next_output_percent(3) == 53);
  CHECK(believed({{60, false}, {50, false}}).next_output_percent() == 55);  // above the last, not the first
  // An answer at 50 leaves 10 to 50: down to about 30 at once.
  CHECK(believed({{50, true}}).next_output_percent() == Approx(30).margin(2));
  CHECK(believed(hunted()).next_output_percent() == std::lround(believed(hunted()).estimate()->mean_percent));
  CHECK(believed({{98, false}, {100, false}, {100, false}}).next_output_percent() <= 100);
}

TEST_CASE("the band of the answers holds the mean, rises, and narrows with pulses") {
  const auto belief = believed(hunted());
  double before = 0;
  for (int output = 30; output <= 70; output += 5) {
    const auto band = belief.answers_at(output);
    CHECK(band.low <= band.mean);
    CHECK(band.mean <= band.high);
    CHECK(band.mean >= before);
    before = band.mean;
  }
  CHECK(belief.answers_at(30).high < 0.1);
  CHECK(belief.answers_at(70).low > 0.9);
  // The mean, and what lies below low and high, by the fine grid's own sums for one known spread.
  const auto fixed = believed(hunted(), {0.07, 0.05});
  const auto estimate = fixed.estimate();
  const auto band = fixed.answers_at(48);
  CHECK(band.low == Approx(answer_chance(48, estimate->high_percent, 0.07)).margin(2e-3));
  CHECK(band.high == Approx(answer_chance(48, estimate->low_percent, 0.07)).margin(2e-3));
}

TEST_CASE("spreads and grids that are none are refused in a sentence") {
  const auto said = [](EstimateSettings settings) {
    return sentence_of<GeometryError>([&] { (void)ThresholdBelief(settings); });
  };
  CHECK(said({0.6, 0.05}) == "The spread of the threshold is 0.6; it must be from 0.01 to 0.5; correct it.");
  CHECK(is_sentence(said({std::nan(""), 0.05})));
  CHECK(is_sentence(said({0.07, 0})));
  CHECK(is_sentence(said({{}, 2})));
  CHECK(is_sentence(sentence_of<GeometryError>([] { ThresholdBelief().add({0, true}); })));
}
