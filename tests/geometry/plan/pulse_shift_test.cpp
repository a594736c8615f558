#include "geometry/plan/pulse_shift.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

// On a sphere of radius R a mark drawn by tape lies an arc d from the point measured, and a coil laid over it
// by drop has its pulse an arc R asin(d / R) from it (elementary geometry): the pulse lies R asin(d / R) - d
// behind, along the front axis, which points 45 degrees toward the midline.
TEST_CASE("on a sphere the pulse of a mark drawn by tape and laid by drop lies behind along the front axis") {
  constexpr double radius = 90, d = 60;
  const double arc = radius * std::asin(d / radius) - d, straight = 2 * radius * std::sin(arc / 2 / radius);
  const Head head = sphere_head(radius, 6);
  for (const Side side : {Side::left, Side::right}) {
    Case c;
    c.coil.model = flat_coil();
    c.side = side;
    c.search.drawn_by = MarkRule::tape;
    c.coil.laid_by = MarkRule::drop;
    const Plan plan = solve(head, c, TapeDistances::left_out);
    const PulseShift shift = pulse_shift(plan.start);
    CAPTURE(side, shift.front_mm, shift.beside_mm, shift.forward_mm, shift.inward_mm);
    CHECK(is_shifted(plan.start));
    // Forward at the pulse is not quite forward at the point measured: off the midline it turns from place to
    // place, and the coil's angle with it, by 1.5 mm at the mark here.
    CHECK(shift.front_mm == Approx(-straight).margin(0.3));
    CHECK(std::abs(shift.beside_mm) < 2);
    // Toward the handle is backward and outward, on either side.
    CHECK(shift.forward_mm < -2.5);
    CHECK(shift.inward_mm < -2.5);
    CHECK(std::hypot(shift.forward_mm, shift.inward_mm) == Approx(straight).margin(0.35));
    CHECK(std::hypot(shift.front_mm, shift.beside_mm) ==
          Approx(std::hypot(shift.forward_mm, shift.inward_mm)).margin(0.01));
    CHECK_FALSE(is_shifted(plan.treatment));  // drawn and laid by drop
    CHECK(pulse_shift(plan.treatment).front_mm == Approx(0).margin(0.02));
  }
}
