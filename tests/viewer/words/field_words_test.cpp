#include "viewer/words/field_words.h"

#include <catch2/catch.hpp>

#include "tests/support/sentence.h"
#include "tests/support/windings.h"

using namespace scalpmark;
using geometry::CoilMoved;
using tests::is_sentence;

namespace {

geometry::CoilField made() {
  geometry::LaidPose laid;
  laid.pose.pulse = {0, 0, 85};
  const geometry::RoundHead round{{0, 0, 0}, 88.4, 1.234};
  const auto coil = tests::figure_of_eight();
  geometry::SphereField field({0, 0, 0}, geometry::turns_of(coil, geometry::frame_of(laid.pose, 0)));
  geometry::CoilField f{round, laid, 0, {}, field, {}};
  f.map.from_pulse_mm = 21.4;
  f.map.half.area_cm2 = 27.6;
  f.map.seven_tenths.area_cm2 = 9.4;
  return f;
}

const std::vector<geometry::MovedRatio> moved{{CoilMoved::gap, 1, 0.9434},
                                              {CoilMoved::gap, 5, 0.752},
                                              {CoilMoved::gap, 10, 0.571},
                                              {CoilMoved::roll, 5, 0.99}};

}  // namespace

TEST_CASE("a field is told as the model's, rounded, with its gap beside what was measured") {
  geometry::CoilField f = made();
  CHECK(
      english(viewer::field_sentences(f, moved)) ==
      std::vector<std::string>{
          "In a round model head (radius 8.8 cm; the skin around the coil lies off it by 1.2 mm on average).",
          "In it the field is strongest 2.1 cm from the pulse point (on a sphere 2 cm under its skin), and has "
          "more than 71 % of that over 9 cm\u00b2, more than half over 28 cm\u00b2.",
          "Its line there runs along the coil's front axis; in which direction the current runs along it depends on the device.",
          "A gap of 5 mm leaves 75 % of it, one of 10 mm 57 %: each 1 mm more asks for about 6 % more of the "
          "output in use (in people about 3 % of the device's full output were measured, Stokes et al. 2005)."});
  f.sheet.of_brain = true;
  CHECK(english(viewer::patch_sentence(f)).find("on the template's brain") != std::string::npos);
  f.map.from_front_deg = -1.2;  // no "1 degrees"
  CHECK(english(viewer::field_line_sentence(f.map)).find("runs along the coil's front axis") !=
        std::string::npos);
  f.map.from_front_deg = 12.4;
  CHECK(english(viewer::field_line_sentence(f.map)).find("12 degrees to the right") != std::string::npos);
  f.map.from_front_deg = -12.4;
  CHECK(english(viewer::field_line_sentence(f.map)).find("12 degrees to the left") != std::string::npos);
  f.map.from_axis_mm = 38;
  CHECK(english(viewer::field_line_sentence(f.map)).find("3.8 cm away from it, not under its centre") !=
        std::string::npos);
}

TEST_CASE("a patch is as large as a thing of every day, each larger than the one before") {
  std::vector<std::string> sizes;
  for (const double cm2 : {3.0, 9.0, 20.0, 50.0, 100.0}) sizes.push_back(english(viewer::size_of_patch(cm2)));
  CHECK(sizes == std::vector<std::string>{"a large coin", "a walnut", "a hen's egg", "a playing card",
                                          "the palm of a hand"});
}

// What must never be said: volts in this patient, which gyrus fires, a depth reached, a dose, an effect.
TEST_CASE("no sentence of the field promises anything of the patient") {
  const geometry::CoilField f = made();
  for (const std::string& sentence : english(viewer::field_sentences(f, moved))) {
    CHECK(is_sentence(sentence));
    for (const char* word : {"volt", "gyrus", "fires", "reaches", "dose", "effect", "stimulates", "treats"})
      CHECK(sentence.find(word) == std::string::npos);
  }
  CHECK(english(viewer::field_caution()).find("Not this patient's field") != std::string::npos);
  CHECK(viewer::gap_loss_sentence({}).empty());
}
