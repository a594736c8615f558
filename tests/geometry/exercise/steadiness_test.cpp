#include "geometry/exercise/steadiness.h"

#include <catch2/catch.hpp>
#include <cmath>

using namespace scalpmark::geometry;

namespace {

Score with_own(const Step& step, double forward_mm, double outward_mm, double deg) {
  StepScore s;
  s.step = step;
  s.placed = Placed{};
  s.own = {std::hypot(forward_mm, outward_mm), forward_mm, outward_mm, deg};
  s.off = s.own;
  Score score;
  score.steps.push_back(s);
  return score;
}

}  // namespace

TEST_CASE("bias is the mean of the tries, spread how far they lie from it") {
  const Step coil{Task::coil, 0};
  // By hand: forward 3, 5, 4; outward 0, 2, -2; mean (4, 0); squares 1 + 1 + 0 and 0 + 4 + 4, over two.
  const auto all = steadiness({with_own(coil, 3, 0, 2), with_own(coil, 5, 2, 4), with_own(coil, 4, -2, 0)});
  REQUIRE(all.size() == 1);
  CHECK(all[0].tries == 3);
  CHECK(all[0].bias_mm.isApprox(Eigen::Vector2d(4, 0)));
  CHECK(all[0].bias == Approx(4));
  REQUIRE(all[0].spread_mm);
  CHECK(*all[0].spread_mm == Approx(std::sqrt(5)));
  CHECK(*all[0].bias_deg == Approx(2));
  CHECK(*all[0].spread_deg == Approx(2));
}

TEST_CASE("one try says nothing of how steady a hand is, and a step left out counts in no mean") {
  const Step vertex{Task::vertex, 0};
  Score without = with_own(vertex, 9, 9, 0);
  without.steps[0].placed.reset();
  const auto all = steadiness({with_own(vertex, 1, 0, 0), without});
  REQUIRE(all.size() == 1);
  CHECK(all[0].tries == 1);
  CHECK_FALSE(all[0].spread_mm);
  CHECK(all[0].bias == Approx(1));
}

TEST_CASE("readings are too long or too short, and their mean knows which") {
  std::vector<Score> tries;
  for (const double mm : {-6.0, -2.0}) {
    Score one = with_own({Task::three_tapes, 1}, 0, 0, 0);
    one.steps[0].placed->reading_mm = 350;
    one.steps[0].own.mm = mm;
    tries.push_back(one);
  }
  const auto all = steadiness(tries);
  REQUIRE(all.size() == 1);
  CHECK(all[0].bias_mm.isApprox(Eigen::Vector2d(-4, 0)));
  CHECK(*all[0].spread_mm == Approx(std::sqrt(8)));
}

TEST_CASE("quartiles are those of the textbook's definition") {
  // Hyndman and Fan 1996, definition 7: of 1, 2, 3, 4 the quarter is 1.75, the middle 2.5, three quarters
  // 3.25.
  const Quartiles q = quartiles({4, 1, 3, 2});
  CHECK(q.low == Approx(1.75));
  CHECK(q.median == Approx(2.5));
  CHECK(q.high == Approx(3.25));
  CHECK(quartiles({5}).high == Approx(5));
  CHECK(quartiles({}).median == 0);
}

TEST_CASE("a class's table counts each trainee who did the step, with sizes and no signs") {
  const Step tape{Task::three_tapes, 0};
  std::vector<Score> scores;
  for (const double mm : {-6.0, 2.0, 4.0}) {
    Score score = with_own(tape, 0, 0, 0);
    score.steps[0].placed->reading_mm = 300;
    score.steps[0].own = {mm, 0, 0, {}};
    score.steps[0].off = {mm + 1, 0, 0, {}};
    scores.push_back(score);
  }
  const auto steps = class_steps(scores);
  REQUIRE(steps.size() == 1);
  CHECK(steps[0].count == 3);
  CHECK(steps[0].own_mm.median == Approx(4));
  CHECK(steps[0].off_mm.median == Approx(5));
  CHECK_FALSE(steps[0].own_deg);
}
