#include "geometry/plan/plan_cortex.h"

#include <catch2/catch.hpp>

#include "geometry/plan/solve.h"
#include "tests/support/brains.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

TEST_CASE("a plan given its cortex afterwards is the plan solved with it") {
  const Head bare = sphere_head(90, 5);
  const Head head = bare.with_cortex(std::make_shared<const Cortex>(round_brain(75, 4), bare));
  const Case entered;
  const Plan after = with_cortex(solve(bare, entered, TapeDistances::left_out), head);
  const Plan at_once = solve(head, entered, TapeDistances::left_out);
  const auto same = [](const Placement& a, const Placement& b) {
    REQUIRE(a.cortex);
    REQUIRE(b.cortex);
    CHECK(a.cortex->point == b.cortex->point);
    CHECK(a.cortex->depth_mm == b.cortex->depth_mm);
    // The brain lies 15 mm under the head everywhere (the sphere's own geometry).
    CHECK(a.cortex->depth_mm == Approx(15).margin(0.5));
    REQUIRE(a.cortex->areas.size() == b.cortex->areas.size());
    for (size_t i = 0; i < a.cortex->areas.size(); ++i)
      CHECK(a.cortex->areas[i].share == b.cortex->areas[i].share);
  };
  same(after.start, at_once.start);
  same(after.hotspot, at_once.hotspot);
  same(after.treatment, at_once.treatment);
  REQUIRE(after.grid.size() == at_once.grid.size());
  for (size_t i = 0; i < after.grid.size(); ++i) same(after.grid[i].placement, at_once.grid[i].placement);
  // And without again.
  const Plan taken_out = with_cortex(at_once, bare);
  CHECK_FALSE(taken_out.treatment.cortex);
  CHECK_FALSE(taken_out.grid.front().placement.cortex);
}
