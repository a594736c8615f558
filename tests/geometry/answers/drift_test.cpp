#include "geometry/answers/drift.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "geometry/base/error.h"
#include "tests/support/sentence.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector2d;

namespace {

/// Visits about a place, `moved` after `steady` of them.
std::vector<Vector2d> course(std::mt19937& random, size_t visits, size_t steady, const Vector2d& moved,
                             double sd_mm) {
  std::normal_distribution<double> off(0, sd_mm);
  std::vector<Vector2d> places;
  for (size_t i = 0; i < visits; ++i) {
    const double forward = off(random), outward = off(random);
    places.push_back(Vector2d(forward, outward) + (i < steady ? Vector2d(0, 0) : moved));
  }
  return places;
}

}  // namespace

TEST_CASE("the last four visits that lie behind the first eight are found, and how far") {
  std::mt19937 random(4);
  const auto drift = find_drift(course(random, 12, 8, {-5, 0}, 1));
  REQUIRE(drift);
  CHECK(drift->before == 8);
  CHECK(drift->moved_mm.x() == Approx(-5).margin(2));
  CHECK(std::abs(drift->moved_mm.y()) < 2);
  // 1 mm, of eight and of four: sqrt(1/8 + 1/4); the scatter of ten known to a fifth or so.
  CHECK(drift->se_mm.x() == Approx(std::sqrt(0.375)).margin(0.3));
  CHECK(drift->chance <= drift_error_rate);
}

TEST_CASE("the step and its error have their closed forms") {
  const std::vector<Vector2d> places{{1, 0},   {-1, 0}, {1, 0}, {-1, 0}, {1, 1},
                                     {-1, -1}, {11, 0}, {9, 0}, {11, 0}, {9, 0}};
  const auto drift = likeliest_change(places);
  REQUIRE(drift);
  CHECK(drift->before == 6);
  CHECK(drift->moved_mm.x() == Approx(10).epsilon(1e-12));
  CHECK(drift->moved_mm.y() == Approx(0).margin(1e-12));
  // Squares about the two means: 10 along the first axis, 2 along the second, of 8 degrees of freedom.
  CHECK(drift->se_mm.x() == Approx(std::sqrt(10 / 8.0 * (1 / 6.0 + 1 / 4.0))).epsilon(1e-12));
  CHECK(drift->se_mm.y() == Approx(std::sqrt(2 / 8.0 * (1 / 6.0 + 1 / 4.0))).epsilon(1e-12));
}

TEST_CASE("the split is where the two sides part best for their numbers") {
  // Three at 10, seven at 3, ten at 0: 3 17 / 20 (10 - 21/17)^2 = 195.9 after the third, 10 10 / 20 5.1^2 =
  // 130.1 after the tenth, though the sum of what is off the mean is larger there.
  std::vector<Vector2d> places(20, Vector2d(0, 0));
  for (size_t i = 0; i < 10; ++i) places[i].x() = i < 3 ? 10 : 3;
  CHECK(likeliest_change(places)->before == 3);
}

TEST_CASE("the chance is the share of all orders that part as well") {
  // Four of ten visits elsewhere, all else alike: an order parts as well if the four are first or last: 2 of
  // the 210 ways to place them; 9999 shuffles know it to 0.001.
  std::vector<Vector2d> places(10, Vector2d(0, 0));
  for (size_t i = 6; i < 10; ++i) places[i] = {0, 3};
  const auto drift = likeliest_change(places);
  CHECK(drift->chance == Approx(2.0 / 210).margin(0.003));
  // Five and five: 2 of 252.
  places[5] = {0, 3};
  CHECK(likeliest_change(places)->chance == Approx(2.0 / 252).margin(0.003));
  // Numbers that no binary fraction holds: the other order sums them to another last digit.
  for (size_t i = 0; i < 10; ++i) places[i] = i < 6 ? Vector2d(0.1, 0.7) : Vector2d(0.37, 3.1);
  CHECK(likeliest_change(places)->chance == Approx(2.0 / 210).margin(0.003));
}

TEST_CASE("visits that never differ are no drift, and few visits say nothing") {
  const auto same = likeliest_change(std::vector<Vector2d>(12, Vector2d(3, 1)));
  CHECK(same->chance == 1);
  CHECK_FALSE(find_drift(std::vector<Vector2d>(12, Vector2d(3, 1))));
  std::mt19937 random(1);
  CHECK_FALSE(likeliest_change(course(random, 9, 5, {30, 0}, 0.1)));
  CHECK(likeliest_change(course(random, 10, 5, {30, 0}, 0.1)));
}

TEST_CASE("a change of one visit is no drift, and one of axes is the same drift") {
  std::mt19937 random(9);
  auto places = course(random, 12, 8, {0, 6}, 1);
  const auto outward = find_drift(places);
  for (auto& place : places) place = {place.y(), place.x()};
  const auto forward = find_drift(places);
  REQUIRE(outward);
  REQUIRE(forward);
  CHECK(outward->chance == forward->chance);
  CHECK(outward->moved_mm.y() == Approx(forward->moved_mm.x()));
  auto wild = course(random, 16, 16, {0, 0}, 1);
  wild[15] = {25, 0};
  CHECK_FALSE(find_drift(wild));
  CHECK(likeliest_change(wild)->before <= 13);
  std::swap(wild[0], wild[15]);
  CHECK(likeliest_change(wild)->before >= 3);
}

// 9999 shuffles each: the error rate of one look, and of a look after each visit from the tenth to the
// thirtieth.
TEST_CASE("where nothing changes one course of a hundred is called a drift at one look", "[slow]") {
  std::mt19937 random(12);
  int at_last = 0, at_any = 0;
  constexpr int courses = 150;
  for (int i = 0; i < courses; ++i) {
    const auto places = course(random, 30, 30, {0, 0}, 5);
    bool any = false;
    for (size_t n = fewest_visits_for_drift; n <= places.size(); ++n) {
      const bool found = find_drift({places.begin(), places.begin() + long(n)}).has_value();
      any = any || found;
      if (n == places.size() && found) ++at_last;
    }
    if (any) ++at_any;
  }
  CHECK(at_last <= 6);  // 1.5 expected; more than 6 in one of a thousand such tests
  CHECK(at_any / double(courses) == Approx(0.08).margin(0.06));
}

TEST_CASE("too many visits and places that are none are refused in a sentence") {
  CHECK(is_sentence(
      sentence_of<GeometryError>([] { (void)find_drift(std::vector<Vector2d>(1001, Vector2d(0, 0))); })));
  CHECK(sentence_of<GeometryError>([] {
          (void)find_drift({{0, 0}, {0, std::nan("")}});
        }) == "The place of visit 2 is no number; leave the visit out.");
}
