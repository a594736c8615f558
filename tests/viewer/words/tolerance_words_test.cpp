#include "viewer/words/tolerance_words.h"

#include <catch2/catch.hpp>
#include <set>

#include "tests/support/sentence.h"

using namespace scalpmark;
using geometry::Cause;
using tests::is_sentence;

TEST_CASE("the habit named is against the cause that gains most, and says what it gains") {
  geometry::Tolerance t;
  CHECK(english(viewer::habit_sentence(t)) == "No error is entered, so no habit would change anything.");
  t.first_order.mean_mm = 9.2;
  t.rule = geometry::MarkRule::drop;
  t.to_halve.emplace();
  t.to_halve->cause = Cause::rule;
  t.to_halve->halved_mm = 7.6;
  CHECK(
      english(viewer::habit_sentence(t)) ==
      "The habit that would help most: make the edge mark and lay the coil by the same rule (drop) at every visit "
      "(half that error, and 0.9 cm on average become 0.8 cm).");
  std::set<std::string> habits, names;
  for (const Cause cause : geometry::all_causes) {
    t.to_halve->cause = cause;
    const std::string habit = english(viewer::habit_sentence(t));
    CHECK(is_sentence(habit));
    habits.insert(habit);
    names.insert(english(viewer::cause_name(cause)));
  }
  CHECK(habits.size() == geometry::all_causes.size());
  CHECK(names.size() == geometry::all_causes.size());
}

TEST_CASE("the largest share is told with the assumption it follows from") {
  geometry::Tolerance t;
  const geometry::HandErrors errors;
  CHECK(viewer::largest_share_sentence(t, errors).empty());
  t.causes.push_back({Cause::angle, 0.414});
  CHECK(
      english(viewer::largest_share_sentence(t, errors)) ==
      "Largest share, 41 %: Coil's angle. That follows from the assumption that the eye alone holds the coil's "
      "angle to 7.5 degrees, as was found with cap and marks.");
  std::set<std::string> told;
  for (const Cause cause : geometry::all_causes) {
    t.causes[0].cause = cause;
    told.insert(english(viewer::largest_share_sentence(t, errors)));
    CHECK(is_sentence(*told.rbegin()));
  }
  CHECK(told.size() == geometry::all_causes.size());
}

TEST_CASE("the cortex's depth is told with whose it is") {
  geometry::Tolerance t;
  t.at_depth.depth_mm = 20;
  t.at_depth.first_order.mean_mm = 9.4;
  CHECK(english(viewer::depth_sentence(t)) ==
        "At the cortex, 20 mm under the skin (assumed), 0.9 cm on average.");
  t.at_depth.of_brain = true;
  t.placements = 5;
  t.at_depth.sampled.mean_mm = 12;
  CHECK(english(viewer::depth_sentence(t)) ==
        "At the cortex, 20 mm under the skin (on the template's brain), 1.2 cm on average.");
  t.at_depth.of_field = true;
  CHECK(
      english(viewer::depth_sentence(t)) ==
      "At the cortex, 20 mm under the skin (on the template's brain), the place where the field is strongest "
      "in a round model head is 1.2 cm off on average.");
}

TEST_CASE("what placements leave of the field is told as the model's, or not at all") {
  geometry::Tolerance t;
  CHECK(viewer::field_left_sentence(t).empty());
  t.field_left = {0.914, 0.628};
  CHECK(
      english(viewer::field_left_sentence(t)) ==
      "Of the field at the wanted place, in a round model head, half of the trials leave at least 91 %, 95 of "
      "100 at least 63 %.");
}

TEST_CASE("the best way to mark is named, and what it comes to") {
  geometry::Tolerance t;
  CHECK(viewer::best_way_sentence(t).empty());
  t.ways.resize(2);
  t.ways[1].way = geometry::MarkingWay::corners;
  t.ways[1].mean_mm = 7.2;
  t.ways[1].angle_mean_deg = 3.4;
  CHECK(
      english(viewer::best_way_sentence(t)) ==
      "Best way to mark on this head, with these errors: A mark at both front corners (0.7 cm and 3 degrees off on "
      "average).");
}

TEST_CASE("ways to mark that were left out are named, and none where all were compared") {
  geometry::Tolerance t;
  for (const geometry::MarkingWay way : geometry::all_marking_ways) {
    t.ways.emplace_back();
    t.ways.back().way = way;
  }
  CHECK(viewer::left_out_sentence(t).empty());
  t.ways.erase(t.ways.begin() + 2, t.ways.end());
  CHECK(
      english(viewer::left_out_sentence(t)) ==
      "Left out, as their marks fall off this head: Front mark and side mark; A mark at both front corners.");
}

TEST_CASE("how many placements lie how near is told in centimetres as on a tape") {
  geometry::Tolerance t;
  t.half_mm = 8.04;
  t.most_mm = 20;
  CHECK(english(viewer::tolerance_sentence(t)) ==
        "Half of the trials lie within 0.8 cm of the site, 95 of 100 within 2.0 cm.");
}
