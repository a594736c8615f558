#include "geometry/brain/atlas.h"

#include <catch2/catch.hpp>

#include "tests/support/brains.h"

using namespace scalpmark::geometry;
using scalpmark::tests::halves;

TEST_CASE("a ball cut by a boundary has the shares of its two caps") {
  const Atlas atlas = halves("left", "right");
  constexpr double r = 10;
  for (const double x : {0.0, 2.0, -5.0, 8.0}) {
    const auto shares = atlas.around({x, 13, -20}, r);
    REQUIRE(shares.size() == 2);
    // The cap of height h = r + x on the right: h^2 (3 r - h) / (4 r^3) of the ball.
    const double h = r + x, right = h * h * (3 * r - h) / (4 * r * r * r);
    const auto& on_right = shares[shares[0].name == "right" ? 0 : 1];
    CHECK(on_right.name == "right");
    CHECK(on_right.share == Approx(right).margin(0.02));
    CHECK(shares[0].share >= shares[1].share);
    CHECK(shares[0].share + shares[1].share == Approx(1));
  }
}

TEST_CASE("regions of one name are one, voxels of no region do not count, and nothing is nothing") {
  Atlas atlas = halves("cuneus", "cuneus");
  CHECK(atlas.around({0, 0, 0}, 10).size() == 1);
  CHECK(atlas.around({0, 0, 0}, 10).front().share == Approx(1));
  for (auto& l : atlas.label)
    if (l == 1) l = 0;
  CHECK(atlas.around({0, 0, 0}, 10).front().share == Approx(1));
  CHECK(atlas.around({-30, 0, 0}, 10).empty());
  CHECK(atlas.around({300, 0, 0}, 10).empty());
  CHECK(atlas.around({1e300, 0, 0}, 10).empty());
}

TEST_CASE("an atlas whose voxels are flipped, turned and 2 mm wide is read in mm") {
  Atlas atlas = halves("front", "back", 50);
  // The index that runs fastest goes backward along y, in steps of 2 mm.
  atlas.to_voxel.linear() << 0, -0.5, 0, 0.5, 0, 0, 0, 0, 0.5;
  CHECK(atlas.around({0, 20, 0}, 10).front().name == "front");
  CHECK(atlas.around({0, 20, 0}, 10).front().share == Approx(1));
  CHECK(atlas.around({0, -20, 0}, 10).front().name == "back");
}
