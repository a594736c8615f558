#include "geometry/hands/after_search.h"

#include <catch2/catch.hpp>

#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"

using namespace scalpmark;
using namespace scalpmark::geometry;

// A grid of 1 cm around a wrong start: the nearest of its spots to a place that lies a whole step off is that
// very place, but for what the head curves over a centimetre; half a step off half a step stays (elementary
// geometry).
TEST_CASE("the twitch search makes up for whole steps of the grid, and leaves what lies between") {
  const Head head = tests::sphere_head(90, 6);
  Case c;
  c.coil.model = tests::flat_coil();
  c.search.grid_on = GridOn::pulse_points;
  use_one_rule(c, MarkRule::tape);
  const Plan plan = solve(head, c);
  const auto off = [&](double forward_mm, double inward_mm) {
    Placement start = plan.start;
    start.pulse += forward_mm * start.forward + inward_mm * start.inward;
    return after_search(plan, start);
  };
  CHECK(off(0, 0).left_mm == Approx(0).margin(1e-9));
  const AfterSearch step = off(10, 0);
  CHECK(step.row == -1);  // of a grid too far forward the rear spot answers
  CHECK(step.column == 0);
  CHECK(step.left_mm < 1.5);
  CHECK(off(5, 0).left_mm == Approx(5).margin(0.8));
  CHECK(off(3, 0).left_mm == Approx(3).margin(0.2));
  const AfterSearch inward = off(0, 10);
  CHECK(inward.column == 1);  // outward
  CHECK(inward.left_mm < 1.5);
  // Further off than the grid reaches, the rest stays.
  CHECK(off(25, 0).left_mm == Approx(15).margin(2.5));
}
