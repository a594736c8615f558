#include "viewer/words/contact_words.h"

#include <catch2/catch.hpp>

#include "tests/support/sentence.h"

using namespace scalpmark;
using geometry::Contact;
using geometry::Region;
using geometry::Wing;
using tests::is_sentence;

namespace {

std::vector<std::string> said(const Contact& c) {
  return english(viewer::contact_sentences(c));
}

}  // namespace

TEST_CASE("a coil that rests on its centre, with the gap under its wings") {
  Contact c;
  c.touches.push_back({"casing", Region::scalp, {}, {}});
  c.wings.push_back({Wing::left, 0.04, 5, 12.3, 6.25, {}, 0});
  c.wings.push_back({Wing::right, 1, 5, 12.3, {}, {}, 0});
  CHECK(said(c) ==
        std::vector<std::string>{"The coil rests on its centre.",
                                 "Under the left wing the gap is 0.0 mm to 12.3 mm, 6.2 mm under its middle.",
                                 "Under the right wing the gap is 1.0 mm to 12.3 mm."});
}

TEST_CASE("a coil on its wings, one that rocks, and one held off by an ear") {
  Contact both;
  both.rests_on_wings = true;
  both.lift_mm = both.resting_lift_mm = 3.5;
  CHECK(said(both).front() == "The coil rests on both wings; its centre is 3.5 mm clear of the skin.");

  Contact rocking;
  rocking.lift_mm = rocking.resting_lift_mm = 2;
  rocking.rock_deg = -3;
  rocking.touches.push_back({"handle", Region::scalp, {}, {}});
  CHECK(said(rocking) ==
        std::vector<std::string>{
            "The coil rests on its handle, away from its centre; its centre is 2.0 mm clear of the skin.",
            "Tilted by 3 degrees, its left side down, it would rest on both wings."});

  Contact held;
  held.lift_mm = held.resting_lift_mm = 8;
  held.hits.push_back({Region::left_ear, "casing", {}, 7.5});
  held.hits.push_back({Region::face, "nose piece", {}, 0.01});
  held.cap_mm = 4;
  held.presses_cap_mm = 1.5;
  CHECK(
      said(held) ==
      std::vector<std::string>{
          "The casing hits the left ear, which holds the coil 7.5 mm further off; turn the coil, or ask the prescriber about the site.",
          "The nose piece hits the brow or face; watch out there.",
          "A cap of 4.0 mm would be pressed in by 1.5 mm; enter its thickness for cap and hair."});
}

TEST_CASE("a coil held askew, by roll, pitch or both, and the way its axis moved") {
  Contact c;
  c.tilt = {8, 0};
  c.askew.emplace();
  c.askew->skin_moved_mm = 1.2;
  c.askew->skin_way = {1, -1};
  CHECK(
      said(c).front() ==
      "With the coil tilted by 8 degrees, its right side down, its axis meets the skin 1.2 mm forward and toward the "
      "midline from the pulse point.");
  c.tilt = {-8, -4};
  c.askew->skin_way = {0, 0};
  c.askew->cortex.emplace();
  c.askew->cortex_moved_mm = 4;
  c.askew->cortex_way = {-1, 0};
  CHECK(
      said(c)[0] ==
      "With the coil tilted by 8 degrees, its left side down, and tilted by 4 degrees, its front edge down, its axis "
      "meets the skin 1.2 mm from the pulse point.");
  CHECK(
      said(c)[1] ==
      "It meets the cortex 4.0 mm backward from where it would with the coil held flat (on the template; a person's own "
      "brain differs).");
  for (const std::string& sentence : said(c)) CHECK(is_sentence(sentence));

  geometry::FieldAskew field;
  field.moved_mm = 1.9;
  field.way = {0, 1};
  field.left = 0.946;
  // Of what lies deeper the field is told, not the axis.
  const auto with_field = english(viewer::contact_sentences(c, field));
  CHECK(
      with_field[1] ==
      "In a round model head its field is then strongest, 2 cm under the skin, 1.9 mm outward from where it is with "
      "the coil held flat, and 95 % of it is left at that place.");
  for (const std::string& sentence : with_field) CHECK(sentence.find("the cortex") == std::string::npos);
  // The strongest place lies a little aside of the coil's centre, and a small tilt brings it nearer: no gain.
  field.left = 1.013;
  CHECK(english(viewer::contact_sentences(c, field))[1].ends_with(
      "the coil held flat, and all of it is left at that place."));
}
