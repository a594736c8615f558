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
      "The habit that would shrink it most: make the edge mark and lay the coil by the same rule (drop) at every visit "
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

TEST_CASE("how many placements lie how near is told in centimetres as on a tape") {
  geometry::Tolerance t;
  t.half_mm = 8.04;
  t.most_mm = 20;
  CHECK(english(viewer::tolerance_sentence(t)) ==
        "Half of the placements lie within 0.8 cm of the site, 95 of 100 within 2.0 cm.");
}
