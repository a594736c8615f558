#include "geometry/answers/centre.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

using namespace scalpmark::geometry;
using Eigen::Vector2d;

TEST_CASE("the centre of the answers is weighted by the share answered, not by the pulses") {
  // 4 of 4 at 0 and 5 of 10 at 30 mm forward: (1 * 0 + 0.5 * 30) / 1.5.
  const auto centre = centre_of_answers({{{0, 0}, 4, 4}, {{30, 0}, 10, 5}});
  REQUIRE(centre);
  CHECK(centre->at_mm.x() == Approx(10));
  CHECK(centre->at_mm.y() == 0);
}

TEST_CASE("its error has the smoothed closed form, along each axis") {
  // q = 4.5/5 and 5.5/11; W = 1.5; distances from 10: -10 and 20.
  const auto centre = centre_of_answers({{{0, -7}, 4, 4}, {{30, -7}, 10, 5}});
  const double first = std::pow(-10 / 1.5, 2) * 0.9 * 0.1 / 4, second = std::pow(20 / 1.5, 2) * 0.25 / 10;
  REQUIRE(centre->se_forward_mm);
  CHECK(*centre->se_forward_mm == Approx(std::sqrt(first + second)).epsilon(1e-12));
  // All spots in one row: across it nothing was asked, so there is no error to give, least of all 0.
  CHECK_FALSE(centre->se_outward_mm);
  const auto across = centre_of_answers({{{5, 0}, 4, 4}, {{5, 30}, 10, 5}});
  CHECK_FALSE(across->se_forward_mm);
  CHECK(*across->se_outward_mm == Approx(*centre->se_forward_mm).epsilon(1e-12));
}

TEST_CASE("spots that answered nothing pull at the error, not at the centre") {
  const auto centre = centre_of_answers({{{0, 0}, 4, 4}, {{10, 10}, 4, 0}, {{-10, 10}, 0, 0}});
  CHECK(centre->at_mm == Vector2d(0, 0));
  CHECK(*centre->se_forward_mm == Approx(10 * std::sqrt(0.1 * 0.9 / 4)).epsilon(1e-12));
}

TEST_CASE("where nothing answered there is no centre") {
  CHECK_FALSE(centre_of_answers({}));
  CHECK_FALSE(centre_of_answers({{{0, 0}, 4, 0}, {{10, 0}, 0, 0}}));
}

// A field of answers on nine spots, each pulsed eight times, mapped again and again: the errors said are the
// spread seen. First order and smoothing make them differ by less than a fifth here.
TEST_CASE("the error said is the spread of maps made anew") {
  std::mt19937 random(8);
  std::vector<double> rates;
  std::vector<SpotAnswers> spots;
  for (int row = -1; row <= 1; ++row)
    for (int column = -1; column <= 1; ++column) {
      spots.push_back({Vector2d(10 * row, 10 * column), 8, 0});
      rates.push_back(0.85 * std::exp(-(Vector2d(10 * row - 4, 10 * column).squaredNorm()) / 200));
    }
  constexpr int maps = 3000;
  double sum = 0, squares = 0, said = 0;
  for (int map = 0; map < maps; ++map) {
    for (size_t i = 0; i < spots.size(); ++i)
      spots[i].answers = std::binomial_distribution<int>(8, rates[i])(random);
    const auto centre = centre_of_answers(spots);
    sum += centre->at_mm.x();
    squares += centre->at_mm.x() * centre->at_mm.x();
    said += *centre->se_forward_mm;
  }
  const double mean = sum / maps, spread = std::sqrt(squares / maps - mean * mean);
  CHECK(said / maps / spread == Approx(1).margin(0.2));
  // And the pull toward the middle: the field's own centre lies 4 mm forward.
  CHECK(mean > 0.5);
  CHECK(mean < 3.5);
}
