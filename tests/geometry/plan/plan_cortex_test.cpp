#include "geometry/plan/plan_cortex.h"

#include <catch2/catch.hpp>

#include "geometry/plan/solve.h"
#include "tests/support/brains.h"
#include "tests/support/coils.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

TEST_CASE("a plan says what lies under every placement of a head with a cortex, and nothing without") {
  Case c;
  c.coil.model = flat_coil();
  const Head head = sphere_head(90, 6);
  const Cortex cortex(round_brain(75), head);
  const Plan plain = solve(head, c, TapeDistances::left_out), plan = with_cortex(plain, &cortex);
  CHECK_FALSE(plain.treatment.cortex);
  std::vector<const Placement*> all{&plan.start, &plan.hotspot, &plan.treatment};
  for (const auto& spot : plan.grid) all.push_back(&spot.placement);
  for (const Placement* p : all) {
    REQUIRE(p->cortex);
    CHECK(p->cortex->depth_mm == Approx(15).margin(0.15));
    CHECK((p->cortex->point - (p->pulse - p->cortex->depth_mm * p->normal)).norm() < 1e-6);
    CHECK(p->cortex->areas.front().name == "area left");
  }
  // And without again.
  CHECK_FALSE(with_cortex(plan, nullptr).treatment.cortex);
  // The brain moves no mark.
  CHECK(plan.treatment.pulse == plain.treatment.pulse);
}
