#include "viewer/words/found_words.h"

#include <catch2/catch.hpp>

using namespace scalpmark;
using geometry::FoundMark;

namespace {

FoundMark mark_with(const std::vector<double>& spreads_mm) {
  FoundMark mark;
  for (const double spread_mm : spreads_mm) mark.places.push_back({{}, 1, 2, spread_mm});
  if (mark.places.size() == 1) mark.taken = 0;
  return mark;
}

std::string said(const FoundMark& mark, double apart_mm = 0) {
  return english(viewer::found_sentence(mark, apart_mm));
}

}  // namespace

TEST_CASE("places are tagged by letters, in their order") {
  CHECK(viewer::place_tag(0) == "A");
  CHECK(viewer::place_tag(1) == "B");
  CHECK(viewer::place_tag(25) == "Z");
  CHECK(viewer::place_tag(26) == "27");
}

TEST_CASE("what is said of a mark found by tapes: how closely, or what to do") {
  CHECK(said(mark_with({})).empty());
  CHECK(said(mark_with({6.5})) == "The mark is within 0.7 cm of where these tapes meet, 95 times of 100.");
  CHECK(said(mark_with({36.1})) ==
        "These tapes cross at a sharp angle, and the mark may be 3.6 cm off; measure one more tape.");
  FoundMark two = mark_with({6.5, 7});
  CHECK(
      said(two, 83) ==
      "These tapes fit 2 places, up to 8.3 cm apart; choose the one where the mark is, or measure one more tape.");
  two.taken = 1;
  CHECK(said(two, 83) ==
        "Of 2 places that fit these tapes, B was chosen; the tapes do not say that the mark is there.");
  two.nearest_to_plan = true;
  CHECK(
      said(two, 83) ==
      "Of 2 places that fit these tapes the one nearest to the plan was taken, as was asked for (B); the tapes do not say that the mark is there.");
}
