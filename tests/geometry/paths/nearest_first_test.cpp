#include "geometry/paths/nearest_first.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <limits>
#include <random>
#include <set>
#include <vector>

using scalpmark::geometry::NearestFirst;

TEST_CASE("what waits is given out nearest first to within a step") {
  constexpr double step = 0.5;
  NearestFirst<int> waiting(step);
  std::mt19937 random(3);
  std::uniform_real_distribution<double> place(0, 30);
  std::vector<double> mm;
  for (int i = 0; i < 500; ++i) {
    mm.push_back(place(random));
    waiting.put(mm.back(), i);
  }
  double farthest = 0;
  std::vector<bool> seen(mm.size());
  while (!waiting.empty()) {
    const auto next = waiting.take();
    CHECK(next.mm == mm[static_cast<size_t>(next.what)]);
    CHECK_FALSE(seen[static_cast<size_t>(next.what)]);
    seen[static_cast<size_t>(next.what)] = true;
    CHECK(next.mm > farthest - step);
    farthest = std::max(farthest, next.mm);
  }
  CHECK(std::all_of(seen.begin(), seen.end(), [](bool s) { return s; }));
}

TEST_CASE("while others come, what is taken is within a step of the nearest, over many rounds of the ring") {
  constexpr double step = 0.25, longest = 3;
  NearestFirst<int> waiting(step);
  std::multiset<double> all{0};
  std::mt19937 random(5);
  std::uniform_real_distribution<double> further(0, longest);
  waiting.put(0, 0);
  for (int taken = 0; taken < 20000; ++taken) {
    const double now = waiting.take().mm;
    REQUIRE(now < *all.begin() + step);
    const auto it = all.find(now);
    REQUIRE(it != all.end());
    all.erase(it);
    for (int i = 0; i < (taken < 200 ? 2 : 1); ++i) {
      const double mm = now + further(random);
      waiting.put(mm, i);
      all.insert(mm);
    }
  }
  CHECK(*all.begin() > 100);  // the ring, 16 long, has gone round some times
}

TEST_CASE("what is nearer than the last comes next, and what is no number is not lost") {
  NearestFirst<int> waiting(1);
  waiting.put(20, 1);
  waiting.put(std::numeric_limits<double>::quiet_NaN(), 3);
  CHECK(waiting.take().what == 3);
  CHECK(waiting.take().what == 1);
  waiting.put(5, 4);
  CHECK(waiting.take().what == 4);
  CHECK(waiting.empty());
}

// A head's scan may stand on a plate of a few large triangles.
TEST_CASE("what lies beyond the ring keeps its turn, however far") {
  NearestFirst<int> waiting(1);
  waiting.put(std::numeric_limits<double>::infinity(), 6);
  waiting.put(1e9, 5);
  waiting.put(100.5, 3);
  waiting.put(20, 1);
  waiting.put(90, 2);
  CHECK(waiting.take().what == 1);
  CHECK(waiting.take().what == 2);
  waiting.put(102, 4);
  for (const int next : {3, 4, 5, 6}) {
    REQUIRE_FALSE(waiting.empty());
    CHECK(waiting.take().what == next);
  }
  CHECK(waiting.empty());
  waiting.put(1e9 + 3, 8);
  waiting.put(7, 7);
  CHECK(waiting.take().what == 7);
  CHECK(waiting.take().what == 8);
}
