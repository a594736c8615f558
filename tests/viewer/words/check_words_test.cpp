#include "viewer/words/check_words.h"

#include <catch2/catch.hpp>

using namespace scalpmark;
using geometry::Check;
using geometry::Verdict;

namespace {

Check swung(Verdict verdict, double angle_error_deg) {
  Check c;
  c.pulse_off_mm = 8.04;
  c.forward_mm = 5.2;
  c.outward_mm = -6;
  c.planned_deg = 45;
  c.angle_error_deg = angle_error_deg;
  c.angle_deg = c.planned_deg + angle_error_deg;
  c.limits = {5, 6.5};
  c.verdict = verdict;
  return c;
}

std::string said(const Check& c) {
  return english(viewer::check_sentence(c));
}

}  // namespace

TEST_CASE("a check says what to move before it says how far off it is") {
  CHECK(
      said(swung(Verdict::good, 2)) ==
      "The marks agree with the plan: laid by them, the pulse goes 0.8 cm from the site, and the coil stands "
      "at 47 degrees to the midline, 2 degrees too far toward the midline.");
  CHECK(
      said(swung(Verdict::pulse_off, -3)) ==
      "Move the coil: 0.5 cm backward, 0.6 cm away from the midline, turned 3 degrees toward the midline; "
      "then draw both marks new. As they are, the pulse goes 0.8 cm from the site, and 0.5 cm are allowed.");
  CHECK(
      said(swung(Verdict::both_off, 12)) ==
      "Move and turn the coil: 0.5 cm backward, 0.6 cm away from the midline, turned 12 degrees away from "
      "the midline; then draw both marks new. As they are, the pulse goes 0.8 cm from the site (0.5 cm "
      "allowed), and the coil stands at 57 degrees to the midline, 12 degrees too far toward the midline (6.5 degrees "
      "allowed).");
}

TEST_CASE("the move leads back: against the offset that was found, and against the turn") {
  Check c = swung(Verdict::both_off, -12);
  c.forward_mm = -20;
  c.outward_mm = 4;
  CHECK(english(viewer::move_in_words(c)) ==
        "2.0 cm forward, 0.4 cm toward the midline, turned 12 degrees toward the midline");
  c.outward_mm = 0.3;
  c.angle_error_deg = 0.2;
  CHECK(english(viewer::move_in_words(c)) == "2.0 cm forward");
  c.forward_mm = 0;
  CHECK(viewer::move_in_words(c).empty());
  CHECK_THAT(said(swung(Verdict::angle_off, 12)), Catch::Contains("turned 12 degrees away from the midline"));
  CHECK_THAT(said(swung(Verdict::angle_off, -12)), Catch::Contains("turned 12 degrees toward the midline"));
}

TEST_CASE("marks that agree promise no millimetres: what hands do stands beside them") {
  geometry::Tolerance t;
  t.placements = 1000;
  t.sampled.mean_mm = 10.4;
  t.half_mm = 9.1;
  t.most_mm = 20.6;
  CHECK(english(viewer::by_hand_sentence(t)) ==
        "By hand, expect about 1.0 cm: half of the trials lie within 0.9 cm, 95 of 100 within 2.1 cm.");
}
