#include "viewer/words/cap_words.h"

#include <catch2/catch.hpp>

#include "viewer/words/cap_text.h"

using namespace scalpmark;
using geometry::CapToday;

namespace {

/// A cap slid so far, as cap_today() would tell of it on a sphere of 100 mm (1.745 mm a degree).
CapToday slid(double forward_deg, double side_deg, double turn_deg) {
  CapToday today;
  auto& f = today.found;
  f.slip = {forward_deg, side_deg, turn_deg};
  f.sd = {0.6, 0.6, 0.9};
  f.forward_said = f.side_said = f.turn_said = true;
  geometry::Cap cap;
  cap.sphere.radius_mm = 100;
  today.back = move_back(cap, f.slip);
  today.pulse_sd_mm = 2.1;
  return today;
}

}  // namespace

TEST_CASE("the cap's sentence says what to do, and where the pulse goes if nothing is done") {
  CapToday today = slid(3, 0.2, 4);
  today.check.forward_mm = 7;
  today.check.outward_mm = 0.2;
  CHECK(english(viewer::cap_sentence(today)) ==
        "Slide the cap 0.5 cm back and turn its arrow 4 degrees to the patient's left; as it sits the pulse "
        "goes 0.7 cm forward, give or take 0.2 cm.");
  today = slid(-3, 4, -4);
  today.check.forward_mm = -7;
  today.check.outward_mm = -3;
  CHECK(english(viewer::cap_sentence(today)) ==
        "Slide the cap 0.5 cm forward and 0.7 cm to the patient's left and turn its arrow 4 degrees to the "
        "patient's right; as it sits the pulse goes 0.7 cm backward and 0.3 cm toward the midline, give or "
        "take 0.2 cm.");
  // Moves that the tapes cannot tell from none are not asked for.
  today = slid(1, -4, 1.5);
  today.check.outward_mm = 3;
  CHECK(
      english(viewer::cap_sentence(today)) ==
      "Slide the cap 0.7 cm to the patient's right; as it sits the pulse goes 0.3 cm away from the midline, "
      "give or take 0.2 cm.");
  today = slid(0, 0, 4);
  CHECK(english(viewer::cap_sentence(today)) ==
        "Turn the cap's arrow 4 degrees to the patient's left; as it sits the pulse still goes where it is "
        "wanted, give or take 0.2 cm.");
}

TEST_CASE("a cap that sits as it should is left alone, in the unit that is asked for") {
  CapToday today = slid(0.4, 0, 0);
  today.sits = true;
  const auto inches = [](double mm) {
    return std::to_string(std::lround(mm / 25.4 * 10)) + " tenths of an inch";
  };
  CHECK(
      english(viewer::cap_sentence(today, inches)) ==
      "The cap sits as it should, as far as these tapes can tell: they leave the pulse uncertain by 1 tenths of "
      "an inch.");
}

TEST_CASE("what the heights leave open is asked for") {
  geometry::FoundSlip found;
  found.forward_said = found.side_said = found.turn_said = true;
  CHECK(viewer::unsaid_sentence(found).empty());
  found.turn_said = false;
  CHECK_THAT(english(viewer::unsaid_sentence(found)), Catch::Contains("turned") && Catch::Contains("arrow"));
  found.side_said = false;
  CHECK_THAT(english(viewer::unsaid_sentence(found)),
             Catch::Contains("to a side; measure over a tragus.") && Catch::Contains("arrow"));
  found = {};
  CHECK_THAT(english(viewer::unsaid_sentence(found)), Catch::Contains("measure over nasion or inion."));
}

TEST_CASE("the brim's heights are told for all four points, and where a point is under it") {
  CHECK(english(viewer::brim_sentence({20, 51.2, 49, {}})) ==
        "Brim 2.0 cm over the nasion, 5.1 cm over the left tragus, 4.9 cm over the right, 0 (it is under the "
        "brim) over the inion.");
}

TEST_CASE("on a terminal the cap's sentences keep within its lines") {
  CapToday today = slid(-3, 4, -4);
  today.check.forward_mm = -7;
  today.found.turn_said = false;
  const std::string text = viewer::cap_text(today);
  CHECK_THAT(text,
             Catch::StartsWith("Slide the cap 0.5 cm forward") && Catch::Contains("its arrow passes.\n"));
  for (size_t from = 0, end = 0; (end = text.find('\n', from)) != std::string::npos; from = end + 1)
    CHECK(end - from <= 80);
}
