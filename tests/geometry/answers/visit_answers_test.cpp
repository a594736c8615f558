#include "geometry/answers/visit_answers.h"

#include <catch2/catch.hpp>

#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark;

namespace {

LoggedPulse at(int row, int column, int percent, SeenAnswer answer) {
  return {GridPosition{row, column}, percent, answer, {}, {}};
}

}  // namespace

TEST_CASE("whose twitch counts is the case's choice, and one elsewhere never does") {
  using enum SeenAnswer;
  const auto counted = [](CountedAnswers by) {
    return std::vector<bool>{counts(none, by), counts(thumb, by), counts(index, by), counts(other, by)};
  };
  CHECK(counted(CountedAnswers::thumb) == std::vector<bool>{false, true, false, false});
  CHECK(counted(CountedAnswers::index) == std::vector<bool>{false, false, true, false});
  CHECK(counted(CountedAnswers::thumb_or_index) == std::vector<bool>{false, true, true, false});
}

TEST_CASE("the spiral visits each spot once, from the start, always on to a neighbour") {
  for (std::size_t i = 0; i < spiral.size(); ++i) {
    CHECK(place_in_spiral(spiral[i]) == i);
    if (i > 0)
      CHECK(std::abs(spiral[i].row - spiral[i - 1].row) + std::abs(spiral[i].column - spiral[i - 1].column) ==
            1);
  }
  CHECK(spiral[0] == GridPosition{0, 0});
}

TEST_CASE("the rule and the steps are those of the case") {
  AnswerSettings settings;
  CHECK(rule_of(settings) == five_of_ten);
  settings.rule = CountingBy::four_of_eight;
  settings.step_percent = 4;
  settings.fine_percent = 2;
  CHECK(rule_of(settings) == four_of_eight);
  CHECK(steps_of(settings).step_percent == 4);
  CHECK(steps_of(settings).fine_percent == 2);
}

TEST_CASE("the threshold is hunted at the hotspot, or where most pulses were given") {
  using enum SeenAnswer;
  Visit visit;
  CHECK_FALSE(threshold_spot(visit, {0, 0}));
  visit.pulses = {at(1, -1, 50, none), at(0, 1, 50, thumb), at(0, 1, 50, thumb)};
  CHECK(threshold_spot(visit, {0, 0}) == GridPosition{0, 1});
  CHECK(threshold_spot(visit, {1, -1}) == GridPosition{1, -1});
  visit.pulses = {LoggedPulse{{}, 50, thumb, {}, {}}};  // at the treatment site
  CHECK_FALSE(threshold_spot(visit, {0, 0}));
}

TEST_CASE("a visit's pulses lie where the laid coil's pulse goes, on either side") {
  const Head head = tests::sphere_head(90, 5);
  const Side side = GENERATE(Side::left, Side::right);
  Case the_case;
  the_case.coil.model = tests::flat_coil();
  the_case.side = side;
  the_case.search.grid_on = GridOn::pulse_points;
  use_one_rule(the_case, MarkRule::tape);
  const Plan plan = solve(head, the_case, TapeDistances::left_out);
  Visit visit;
  using enum SeenAnswer;
  visit.pulses = {at(0, 1, 60, thumb), at(0, 1, 60, none), at(1, 0, 60, other), at(0, 1, 55, index),
                  LoggedPulse{{}, 60, thumb, {}, {}}};
  const auto answers = visit_answers(plan, the_case, visit);
  REQUIRE(answers.map);
  CHECK(answers.map->output_percent == 60);
  REQUIRE(answers.spots.size() == 9);
  for (std::size_t i = 0; i < 9; ++i) {
    const GridPosition& spot = answers.spots[i];
    CAPTURE(spot.row, spot.column);
    const SpotAnswers& found = answers.map->spots[i];
    // A centimetre apart on a sphere of 90 mm: 10 mm of arc, a little less straight.
    CHECK(found.at_mm.x() == Approx(10 * spot.row).margin(0.5));
    CHECK(found.at_mm.y() == Approx(10 * spot.column).margin(0.5));
    CHECK(found.pulses == (spot == GridPosition{0, 1} ? 2 : spot == GridPosition{1, 0} ? 1 : 0));
    CHECK(found.answers == (spot == GridPosition{0, 1} ? 1 : 0));
  }
  CHECK(answers.spots[answers.map->best->spot] == GridPosition{0, 1});
  REQUIRE(answers.threshold);
  CHECK(answers.threshold->spot == GridPosition{0, 1});
  CHECK(answers.threshold->pulses.size() == 3);
  CHECK(answers.threshold->counting.pulses == 3);
  CHECK(answers.threshold->belief.known() == ThresholdKnown::estimated);

  CHECK(spot_nearest_centre(answers) == GridPosition{0, 1});  // the one that answered

  AnswersAsked asked;
  asked.output_percent = 55;
  asked.spot = GridPosition{1, 0};
  const auto elsewhere = visit_answers(plan, the_case, visit, asked);
  CHECK(elsewhere.map->output_percent == 55);
  CHECK(elsewhere.threshold->belief.known() == ThresholdKnown::above);
  CHECK_FALSE(visit_answers(plan, the_case, Visit{}).map);
  CHECK_FALSE(visit_answers(plan, the_case, Visit{}).threshold);
}
