#include "viewer/words/cortex_words.h"

#include <catch2/catch.hpp>

using namespace scalpmark;
using viewer::depth_in_words;
using viewer::regions_in_words;

TEST_CASE("a depth is a range in whole millimetres, and one number where both ends are one") {
  geometry::CortexHit hit;
  hit.depth_mm = 28;
  hit.nearest_mm = 15.6;
  hit.median_mm = 19.4;
  CHECK(depth_in_words(hit) == "16 to 19 mm");
  hit.median_mm = 16.2;
  CHECK(depth_in_words(hit) == "16 mm");
  hit.median_mm = 15.1;  // a ray can meet what is nearer than the skin point's own nearest
  CHECK(depth_in_words(hit) == "16 mm");
}

TEST_CASE("regions are said in bands, with the words they share once, and one that hardly counts is not") {
  CHECK(regions_in_words({}) == "no named region");
  CHECK(regions_in_words({{"Brodmann area 6", 0.99}}) == "mostly Brodmann area 6");
  CHECK(regions_in_words({{"Brodmann area 9", 0.75}, {"Brodmann area 46", 0.25}}) ==
        "mostly Brodmann area 9");
  CHECK(regions_in_words({{"Brodmann area 9", 0.61}, {"Brodmann area 46", 0.22}}) ==
        "Brodmann area 9, some 46");
  CHECK(regions_in_words({{"left middle frontal gyrus", 0.7}, {"left inferior frontal gyrus", 0.3}}) ==
        "left middle frontal gyrus, some inferior frontal gyrus");
  CHECK(regions_in_words({{"left cuneus", 0.5}, {"right cuneus", 0.5}}) == "left cuneus, some right cuneus");
  CHECK(regions_in_words({{"Brodmann area 9", 0.6}, {"Brodmann area 46", 0.1}}) ==
        "Brodmann area 9 and others");
}
