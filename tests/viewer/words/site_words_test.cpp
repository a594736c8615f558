#include "viewer/words/site_words.h"

#include <catch2/catch.hpp>
#include <set>

using namespace scalpmark;
using namespace scalpmark::viewer;

TEST_CASE("sites are named alike wherever they are named") {
  geometry::Case c;
  geometry::TreatmentSettings& treatment = c.treatment;
  treatment.distance_mm = 55;
  CHECK(site_in_words(c) == "5.5 cm forward of the hotspot");
  CHECK(hotspot_in_words(c) == "the start");
  c.hotspot_awaited = true;
  CHECK(site_in_words(c) == "5.5 cm forward of the middle spot, if that one answers");
  CHECK(hotspot_in_words(c) == "not found yet");
  c.hotspot_awaited = false;
  treatment.rule = geometry::TreatmentRule::landmark;
  treatment.label = "f3";
  CHECK(site_in_words(c) == "at F3");
  geometry::TreatmentAlternative other;
  other.distance_mm = 60;
  CHECK(other_site_in_words(other) == "6.0 cm forward of the hotspot");
  CHECK(other_site_in_short(other) == "6.0 cm forward");
  other.rule = geometry::TreatmentRule::landmark;
  other.label = "F4-AF4";
  CHECK(other_site_in_words(other) == "half way between F4 and AF4");
  CHECK(other_site_in_short(other) == "half way between F4 and AF4");
  other.label = "F4";
  CHECK(other_site_in_words(other) == "F4");
}

TEST_CASE("each of the nine spots has a name of its own") {
  std::set<std::string> names;
  for (const int row : {-1, 0, 1})
    for (const int column : {-1, 0, 1}) names.insert(spot_in_words(row, column));
  CHECK(names.size() == 9);
  CHECK(spot_in_words(0, 0) == "the start");
  CHECK(spot_in_words(1, 0) == "one step forward");
  CHECK(spot_in_words(-1, 1) == "one step back, one step outward");
  CHECK(spot_in_words(0, -1) == "one step toward the midline");
}
