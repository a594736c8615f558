#include "geometry/answers/answer_map.h"

#include <catch2/catch.hpp>

#include "geometry/base/error.h"
#include "tests/support/sentence.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

namespace {

/// Three spots, mostly at 60 %.
std::vector<ProbedSpot> mapped_spots() {
  return {{{0, 0}, {{60, true}, {60, true}, {55, false}, {60, false}}},
          {{10, 0}, {{60, false}, {70, true}}},
          {{0, 10}, {{55, true}, {55, true}}}};
}

}  // namespace

TEST_CASE("a map counts the pulses of one output, the one with most of them") {
  CHECK(most_used_output(mapped_spots()) == 60);
  const auto map = answer_map(mapped_spots());
  REQUIRE(map);
  CHECK(map->output_percent == 60);
  CHECK(map->spots[0].pulses == 3);
  CHECK(map->spots[0].answers == 2);
  CHECK(map->spots[1].pulses == 1);
  CHECK(map->spots[1].answers == 0);
  CHECK(map->spots[2].pulses == 0);
  CHECK(map->best->spot == 0);
  CHECK(map->best->probability == map->chance_of_being_best[0]);
  CHECK(map->centre->at_mm.norm() == 0);
  REQUIRE(map->next);
}

TEST_CASE("a map at another output is another map") {
  const auto map = answer_map(mapped_spots(), 55);
  CHECK(map->best->spot == 2);
  CHECK(map->centre->at_mm == Eigen::Vector2d(0, 10));
  CHECK(map->spots[0].pulses == 1);
}

TEST_CASE("of outputs with as many pulses the higher one is mapped") {
  CHECK(most_used_output({{{0, 0}, {{50, true}, {60, true}, {40, true}}}}) == 60);
}

TEST_CASE("without pulses there is no map, and without answers none of its findings") {
  CHECK_FALSE(answer_map({{{0, 0}, {}}, {{10, 0}, {}}}));
  CHECK_FALSE(most_used_output({}));
  const auto named = answer_map({{{0, 0}, {}}, {{10, 0}, {}}}, 50);
  REQUIRE(named);
  CHECK_FALSE(named->best);
  CHECK_FALSE(named->centre);
  CHECK(named->next->spot == 0);
  const auto silent = answer_map({{{0, 0}, {{50, false}}}, {{10, 0}, {}}});
  CHECK_FALSE(silent->best);
  CHECK_FALSE(silent->centre);
}

TEST_CASE("an output no stimulator has is refused by the pulse's number") {
  CHECK(sentence_of<GeometryError>([] {
          (void)answer_map({{{0, 0}, {{50, true}, {101, true}}}});
        }) == "The output of pulse 2 is 101 %; it must be from 1 to 100 %; correct it.");
  CHECK(is_sentence(sentence_of<GeometryError>([] { (void)answer_map({{{0, 0}, {{0, true}}}}); })));
  CHECK(is_sentence(sentence_of<GeometryError>([] { (void)answer_map({}, 0); })));
}
