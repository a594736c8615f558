#include "geometry/answers/best_spot.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <numeric>
#include <random>

#include "geometry/base/error.h"
#include "tests/support/sentence.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

namespace {

SpotAnswers counted(int answers, int pulses) {
  return {{0, 0}, pulses, answers};
}

/// The same by a fine grid: densities x^k (1 - x)^(n - k) scaled to 1, their sums, and products of these.
std::vector<double> chances_on_fine_grid(const std::vector<SpotAnswers>& spots) {
  constexpr int cells = 20000;
  std::vector<std::vector<double>> mass(spots.size(), std::vector<double>(cells)), below = mass;
  for (size_t i = 0; i < spots.size(); ++i) {
    double sum = 0;
    for (int c = 0; c < cells; ++c) {
      const double x = (c + 0.5) / cells;
      sum += mass[i][size_t(c)] =
          std::exp(spots[i].answers * std::log(x) + (spots[i].pulses - spots[i].answers) * std::log(1 - x));
    }
    double under = 0;
    for (int c = 0; c < cells; ++c) {
      mass[i][size_t(c)] /= sum;
      below[i][size_t(c)] = under + 0.5 * mass[i][size_t(c)];
      under += mass[i][size_t(c)];
    }
  }
  std::vector<double> chances;
  for (size_t i = 0; i < spots.size(); ++i) {
    double sum = 0;
    for (size_t c = 0; c < cells; ++c) {
      double product = mass[i][c];
      for (size_t j = 0; j < spots.size(); ++j) product *= j == i ? 1 : below[j][c];
      sum += product;
    }
    chances.push_back(sum);
  }
  return chances;
}

}  // namespace

TEST_CASE("before any pulse every spot is as likely the best") {
  const auto chances = chances_of_being_best(std::vector<SpotAnswers>(9));
  for (const double chance : chances) CHECK(chance == Approx(1.0 / 9).epsilon(1e-12));
  CHECK(uncertainty_bits(chances) == Approx(std::log2(9)).epsilon(1e-12));
  CHECK_FALSE(best_spot(std::vector<SpotAnswers>(9), chances));
}

TEST_CASE("two spots have the closed form") {
  // One answer to one pulse (density 2 x) against no pulse (1): the integral of 2 x x is 2/3.
  CHECK(chances_of_being_best({counted(1, 1), counted(0, 0)})[0] == Approx(2.0 / 3).epsilon(1e-13));
  // One of one against none of one: of 2 x (1 - (1 - x)^2) it is 5/6.
  CHECK(chances_of_being_best({counted(1, 1), counted(0, 1)})[0] == Approx(5.0 / 6).epsilon(1e-13));
  // n of n against no pulse: of (n + 1) x^n x it is (n + 1) / (n + 2).
  CHECK(chances_of_being_best({counted(40, 40), counted(0, 0)})[0] == Approx(41.0 / 42).epsilon(1e-13));
}

TEST_CASE("n of n against eight spots without a pulse has the closed form") {
  // The integral of (n + 1) x^n x^8.
  std::vector<SpotAnswers> spots(9);
  spots[4] = counted(4, 4);
  const auto chances = chances_of_being_best(spots);
  CHECK(chances[4] == Approx(5.0 / 13).epsilon(1e-13));
  CHECK(chances[0] == Approx(1.0 / 13).epsilon(1e-13));
}

TEST_CASE("chances agree with a fine grid, and sum to one") {
  const std::vector<std::vector<SpotAnswers>> maps{
      {counted(3, 4), counted(2, 4), counted(0, 4), counted(4, 5), counted(0, 0)},
      {counted(1, 3), counted(0, 2), counted(2, 3), counted(7, 10), counted(3, 3), counted(0, 1),
       counted(0, 9), counted(1, 1), counted(5, 6)},
      {counted(120, 200), counted(131, 200), counted(90, 180)},
      {counted(700, 1000), counted(690, 1000), counted(20, 30)},
  };
  for (const auto& spots : maps) {
    const auto chances = chances_of_being_best(spots), fine = chances_on_fine_grid(spots);
    for (size_t i = 0; i < spots.size(); ++i) CHECK(chances[i] == Approx(fine[i]).margin(2e-6));
    CHECK(std::accumulate(chances.begin(), chances.end(), 0.0) == Approx(1).epsilon(1e-11));
  }
}

TEST_CASE("the best spot so far is one that answered, with its honest chance") {
  const std::vector<SpotAnswers> spots{counted(0, 4), counted(1, 4), counted(3, 4), counted(0, 0),
                                       counted(3, 4)};
  const auto chances = chances_of_being_best(spots);
  const auto best = best_spot(spots, chances);
  REQUIRE(best);
  CHECK(best->spot == 2);  // the first of two alike
  CHECK(best->probability == chances[2]);
  // One weak answer and spots that were never tried: these may well be better.
  const std::vector<SpotAnswers> weak{counted(0, 0), counted(1, 4), counted(0, 0)};
  const auto weakly = chances_of_being_best(weak);
  CHECK(best_spot(weak, weakly)->spot == 1);
  CHECK(weakly[0] > weakly[1]);
}

TEST_CASE("the most telling pulse is where both outcomes are weighed against what is known now") {
  const std::vector<SpotAnswers> spots{counted(3, 4), counted(2, 4), counted(0, 4)};
  const auto bits = [](const std::vector<SpotAnswers>& s) {
    return uncertainty_bits(chances_on_fine_grid(s));
  };
  std::vector<double> gains;
  for (size_t i = 0; i < spots.size(); ++i) {
    auto yes = spots, no = spots;
    ++yes[i].pulses, ++yes[i].answers, ++no[i].pulses;
    const double chance = (spots[i].answers + 1.0) / (spots[i].pulses + 2.0);
    gains.push_back(bits(spots) - chance * bits(yes) - (1 - chance) * bits(no));
  }
  const auto next = most_telling_pulse(spots);
  REQUIRE(next);
  const auto most = std::max_element(gains.begin(), gains.end());
  CHECK(next->spot == size_t(most - gains.begin()));
  CHECK(next->gain_bits == Approx(*most).margin(1e-5));
  CHECK(next->spot != 2);  // a spot that never answered is no rival
}

TEST_CASE("with nothing known the first spot is next, and then one without a pulse") {
  std::vector<SpotAnswers> spots(9);
  CHECK(most_telling_pulse(spots)->spot == 0);
  spots[0] = counted(0, 1);
  CHECK(most_telling_pulse(spots)->spot == 1);
  CHECK_FALSE(most_telling_pulse({}));
  CHECK(chances_of_being_best({}).empty());
}

TEST_CASE("one spot alone is the best for sure, and no pulse tells more") {
  const auto alone = most_telling_pulse({counted(2, 4)});
  CHECK(alone->gain_bits == Approx(0).margin(1e-12));
}

TEST_CASE("a pulse is never expected to make things less certain") {
  std::mt19937 random(3);
  for (int map = 0; map < 20; ++map) {
    std::vector<SpotAnswers> spots;
    for (int i = 0; i < 5; ++i) {
      const int pulses = int(random() % 8);
      spots.push_back(counted(int(random() % unsigned(pulses + 1)), pulses));
    }
    CHECK(most_telling_pulse(spots)->gain_bits >= 0);
  }
}

TEST_CASE("counts that are none are refused in a sentence") {
  const auto said = [](SpotAnswers spot) {
    return sentence_of<GeometryError>([&] { (void)chances_of_being_best({counted(0, 0), spot}); });
  };
  CHECK(said(counted(3, 2)) ==
        "Spot 2 has 3 answers to 2 pulses; there are at most 1000 pulses and no more answers; correct it.");
  CHECK(is_sentence(said(counted(-1, 2))));
  CHECK(is_sentence(said(counted(0, -2))));
  CHECK(is_sentence(said(counted(0, 1001))));
  CHECK(is_sentence(said({{0, std::nan("")}, 1, 1})));
  CHECK(is_sentence(
      sentence_of<GeometryError>([] { (void)most_telling_pulse(std::vector<SpotAnswers>(101)); })));
}
