#include "viewer/words/numbers.h"

#include <catch2/catch.hpp>

using namespace scalpmark::viewer;

// One inch is 25.4 mm (international yard and pound agreement, 1959).
TEST_CASE("lengths are shown in centimetres and millimetres, or all of them in inches") {
  CHECK(tape_length(50) == "5.0 cm");
  CHECK(small_length(14.66) == "14.7 mm");
  CHECK(rough_length(19.6) == "20 mm");
  CHECK(tape_length(-0.2) == "0.0 cm");
  CHECK(half_of_tape(345) == "17.25 cm");
  CHECK(half_of_tape(362) == "18.1 cm");
  set_length_unit(LengthUnit::inch);
  CHECK(half_of_tape(25.4) == "0.50 in");
  CHECK(tape_length(50.8) == "2.00 in");
  CHECK(small_length(12.7) == "0.50 in");
  CHECK(rough_length(25.4) == "1.0 in");
  CHECK(small_number(-0.01) == "0.00");
  CHECK(tape_unit() == "in");
  CHECK(small_unit() == "in");
  CHECK(tape_tick_mm() == Approx(25.4));
  set_length_unit(LengthUnit::centimetre);
  CHECK(tape_unit() == "cm");
}

TEST_CASE("a coil's angle is to the midline, or away from it where it is negative") {
  CHECK(coil_angle(45) == "45\u00b0 to the midline");
  CHECK(coil_angle(-43.2) == "43\u00b0 away from the midline");
  CHECK(coil_angle(-0.3) == "0\u00b0 to the midline");
}
