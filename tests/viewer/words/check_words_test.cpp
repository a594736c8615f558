#include "viewer/words/check_words.h"

#include <catch2/catch.hpp>

using namespace scalpmark;
using geometry::Check;
using geometry::Verdict;

namespace {

Check swung(Verdict verdict, double angle_error_deg) {
  Check c;
  c.pulse_off_mm = 8.04;
  c.forward_mm = 3.2;
  c.outward_mm = -1;
  c.planned_deg = 45;
  c.angle_error_deg = angle_error_deg;
  c.angle_deg = c.planned_deg + angle_error_deg;
  c.limits = {5, 6.5};
  c.verdict = verdict;
  return c;
}

}  // namespace

TEST_CASE("a check's sentence gives the verdict, the numbers it rests on and what to do") {
  CHECK(
      english(viewer::check_sentence(swung(Verdict::good, 2))) ==
      "Good: the pulse lands 8 mm from the treatment site, and the coil stands at 47 degrees to the midline, 2 more "
      "than the 45 planned.");
  CHECK(
      english(viewer::check_sentence(swung(Verdict::pulse_off, -2))) ==
      "Pulse off: the pulse lands 8 mm from the treatment site (3.2 mm forward and 1 mm toward the midline), more than "
      "the 5 mm allowed; measure again and make both marks new.");
  CHECK(
      english(viewer::check_sentence(swung(Verdict::both_off, -12))) ==
      "Pulse and angle off: the pulse lands 8 mm from the treatment site (3.2 mm forward and 1 mm toward the midline), "
      "more than the 5 mm allowed, and the coil stands at 33 degrees to the midline, 12 less than the 45 planned, over "
      "the 6.5 degrees allowed; measure again and make both marks new.");
}

TEST_CASE("an angle that is off is turned back the other way") {
  const std::string wide = english(viewer::check_sentence(swung(Verdict::angle_off, 12)));
  const std::string narrow = english(viewer::check_sentence(swung(Verdict::angle_off, -12)));
  CHECK_THAT(wide,
             Catch::Contains("12 more than") && Catch::Contains("turn the front edge away from the midline"));
  CHECK_THAT(narrow,
             Catch::Contains("12 less than") && Catch::Contains("turn the front edge toward the midline"));
}
