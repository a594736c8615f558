#include "geometry/coil/underside.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "tests/support/plate.h"
#include "tests/support/round_head.h"
#include "tests/support/shapes.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

std::vector<Vector2d> rectangle(double low_x, double low_y, double high_x, double high_y) {
  return {{low_x, low_y}, {high_x, low_y}, {high_x, high_y}, {low_x, high_y}};
}

Coil coil_of(std::vector<CoilPart> parts) {
  Coil coil;
  coil.parts = std::move(parts);
  return coil;
}

/// Two wings, 80 mm long and wide, each bent toward the head.
Coil bent(double bend_deg) {
  return coil_of({{"right wing", rectangle(0, -40, 80, 40), 0, 15, bend_deg},
                  {"left wing", rectangle(-80, -40, 0, 40), 0, 15, -bend_deg}});
}

/// A casing with a hole 20 mm wide, as its outline goes: round the outside, in along a cut, round the hole
/// and back out.
std::vector<Vector2d> with_hole() {
  return {{-50, -50}, {50, -50}, {50, 50},  {-50, 50},  {-50, 0}, {-10, 0},
          {-10, 10},  {10, 10},  {10, -10}, {-10, -10}, {-10, 0}, {-50, 0}};
}

CoilPose pose_on_top() {
  return {{0, 0, ball_mm}, Vector3d::UnitZ(), Vector3d::UnitY()};
}

}  // namespace

TEST_CASE("the underside of a flat part is its outline at the height of its bottom") {
  const auto pieces = undersides(coil_of(
      {{"casing", rectangle(-30, -20, 30, 20), 2, 12}, {"handle", rectangle(-5, -90, 5, -20), 7, 30}}));
  REQUIRE(pieces.size() == 2);
  for (size_t i = 0; i < 2; ++i) {
    CHECK(pieces[i].part == i);
    CHECK_FALSE(pieces[i].is_wall);
    CHECK(pieces[i].outline.size() == 4);
    CHECK(pieces[i].slope.norm() == 0);
  }
  CHECK(pieces[0].height_at({13, -4}) == Approx(2));
  CHECK(pieces[1].height_at({0, -50}) == Approx(7));
}

// A wing turned about the front axis by the bend: its underside falls by tan(bend) a millimetre outward and
// is cos(bend) as wide seen from above (elementary geometry).
TEST_CASE("the undersides of an angled coil fall away from the fold, and its end walls lean over the head") {
  for (const double bend_deg : {10.0, 25.0, 40.0}) {
    CAPTURE(bend_deg);
    const double c = std::cos(bend_deg * M_PI / 180), s = std::sin(bend_deg * M_PI / 180);
    const auto pieces = undersides(bent(bend_deg));
    size_t walls = 0;
    for (const Underside& piece : pieces) {
      const double side = piece.part == 0 ? 1 : -1;  // the right wing, the left
      if (!piece.is_wall) {
        for (const double x : {1.0, 30.0, 79 * c})
          CHECK(piece.height_at({side * x, 11}) == Approx(-x * s / c).margin(1e-9));
        for (const Vector2d& p : piece.outline) CHECK(side * p.x() <= 80 * c + 1e-9);
        continue;
      }
      ++walls;
      // Only the wall at the wing's end leans over: it turns down with the wing, and seen from above it
      // reaches outward by what its upper edge hangs over. The wall at the fold faces up, the others stay
      // upright.
      for (const Vector2d& p : piece.outline) {
        CHECK(side * p.x() >= 80 * c - 1e-9);
        CHECK(side * p.x() <= 80 * c + 15 * s + 1e-9);
      }
      CHECK(piece.height_at({side * (80 * c + 15 * s), 0}) == Approx(-80 * s + 15 * c));
      CHECK(piece.height_at({side * 80 * c, 0}) == Approx(-80 * s));
    }
    CHECK(walls == 2);
  }
}

TEST_CASE("a part without an outline has no underside") {
  CHECK(undersides(coil_of({{"nothing", {{0, 0}, {1, 0}}, 0, 10}})).empty());
  CHECK(undersides(Coil{}).empty());
}

TEST_CASE(
    "the lowest piece over a place counts, walls apart, beside the coil and in its hole there is none") {
  const auto pieces =
      undersides(coil_of({{"casing", with_hole(), 3, 12}, {"handle", rectangle(20, -30, 90, 30), 1, 30}}));
  CHECK(lowest_over(pieces, {-30, 20}).value() == Approx(3));
  CHECK(lowest_over(pieces, {30, 20}).value() == Approx(1));  // both over it
  CHECK(lowest_over(pieces, {80, 20}).value() == Approx(1));
  CHECK_FALSE(lowest_over(pieces, {0, 3}));
  CHECK_FALSE(lowest_over(pieces, {120, 0}));
  const auto wings = undersides(bent(20));
  CHECK(std::any_of(wings.begin(), wings.end(), [](const Underside& u) { return u.is_wall; }));
  const double end = 80 * std::cos(20 * M_PI / 180);
  CHECK(lowest_over(wings, {end - 1, 0}).value() == Approx(-(end - 1) * std::tan(20 * M_PI / 180)));
  CHECK_FALSE(lowest_over(wings, {end + 1, 0}));  // a wall leans over it
}

TEST_CASE("a place lies in an outline or out of it, notches and all") {
  // A U, open to the front.
  const std::vector<Vector2d> u{{0, 0}, {30, 0}, {30, 40}, {20, 40}, {20, 10}, {10, 10}, {10, 40}, {0, 40}};
  CHECK(within(u, {5, 30}));
  CHECK(within(u, {25, 30}));
  CHECK(within(u, {15, 5}));
  CHECK_FALSE(within(u, {15, 30}));
  CHECK_FALSE(within(u, {-1, 5}));
  CHECK_FALSE(within(u, {15, -1}));
  CHECK_FALSE(within(u, {5, 41}));
}

// R - sqrt(R2 - r2): how far a sphere falls below the plane on its top (elementary geometry).
TEST_CASE("the highest skin under an underside is where the closed form on a sphere says") {
  const Surface ball = sphere(ball_mm, 7);
  const auto rise = [&](const std::vector<Vector2d>& outline, double bottom_mm, double known_mm = -1e9) {
    const auto pieces = undersides(coil_of({{"casing", outline, bottom_mm, bottom_mm + 10}}));
    return highest_rise(ball, pieces.front(), pose_on_top(), known_mm);
  };
  const auto fall = [](double r) { return ball_mm - std::sqrt(ball_mm * ball_mm - r * r); };
  // Over the top, beside it, and over it but higher.
  const auto over = rise(rectangle(-40, -40, 40, 40), 0);
  CHECK(over->mm == Approx(0).margin(0.01));
  CHECK(over->under.norm() < 2);
  const auto beside = rise(rectangle(30, -10, 50, 10), 0);
  CHECK(beside->mm == Approx(-fall(30)).margin(0.03));
  CHECK(beside->under.x() == Approx(30).margin(1e-6));
  CHECK(std::abs(beside->under.y()) < 2);
  const auto corner = rise(rectangle(30, 20, 50, 60), 4);
  CHECK(corner->mm == Approx(-fall(std::hypot(30, 20)) - 4).margin(0.03));
  CHECK((corner->under - Vector2d(30, 20)).norm() < 1e-6);
  // The place itself lies on the skin.
  for (const auto& r : {over, beside, corner})
    CHECK((ball.position(ball.closest(r->skin)) - r->skin).norm() < 1e-6);
  // Only what rises above what is known already.
  CHECK(rise(rectangle(30, -10, 50, 10), 0, -fall(30) - 1));
  CHECK_FALSE(rise(rectangle(30, -10, 50, 10), 0, -fall(30) + 1));
  CHECK_FALSE(rise(rectangle(200, 200, 250, 250), 0));
}

TEST_CASE("under a sloping underside the rise is counted from the slope") {
  const Surface ball = sphere(ball_mm, 7);
  const double bend_deg = 25, t = bend_deg * M_PI / 180;
  const auto pieces = undersides(bent(bend_deg));
  // From the plane z = -x tan t over the sphere: the skin over it is highest where the sphere's own slope is
  // tan t, at x = R sin t, by R cos t - R + R sin t tan t = R (1 / cos t - 1).
  for (const Underside& piece : pieces) {
    if (piece.is_wall) continue;
    const auto rise = highest_rise(ball, piece, pose_on_top(), 0);
    REQUIRE(rise);
    CHECK(rise->mm == Approx(ball_mm * (1 / std::cos(t) - 1)).margin(0.02));
    CHECK(rise->under.x() == Approx((piece.part == 0 ? 1 : -1) * ball_mm * std::sin(t)).margin(2));
    CHECK((ball.position(ball.closest(rise->skin)) - rise->skin).norm() < 1e-6);
  }
}

TEST_CASE("no place under a coil rises higher than the highest rise, on a rough skin in any pose") {
  const Surface ball = sphere(ball_mm, 4);
  std::mt19937 random(9);
  std::uniform_real_distribution<double> unit(0, 1);
  std::vector<Vector3d> rough = ball.vertices();
  for (Vector3d& v : rough) v *= 0.95 + 0.1 * unit(random);
  const Surface skin = ball.moved(rough);
  for (int round = 0; round < 10; ++round) {
    const Vector3d normal = Vector3d(unit(random) - 0.5, unit(random) - 0.5, unit(random)).normalized();
    const CoilPose pose{ball_mm * normal, normal, normal.unitOrthogonal()};
    const std::vector<Vector2d> outline{
        {-20 - 30 * unit(random), -25}, {30, -35 * unit(random)}, {25, 40}, {-10, 10}};
    const auto piece = undersides(coil_of({{"casing", outline, 0, 10, 30 * unit(random)}})).front();
    const auto rise = highest_rise(skin, piece, pose, -1e9);
    REQUIRE(rise);
    CHECK(within(piece.outline, 0.999 * rise->under + 0.001 * Vector2d(0, 5)));
    double highest = -1e9;
    for (int i = 0; i < 2000; ++i) {
      const Vector2d at(-60 + 120 * unit(random), -60 + 120 * unit(random));
      if (!within(piece.outline, at)) continue;
      const Vector3d above = pose.pulse + at.x() * pose.right() + at.y() * pose.front + 100 * pose.normal;
      const auto hit = skin.ray_hit(above, -pose.normal);
      if (hit) highest = std::max(highest, 100 - hit->distance_mm - piece.height_at(at));
    }
    CHECK(rise->mm >= highest - 1e-9);
    CHECK(rise->mm < highest + 3);  // the samples lie 3 mm apart
  }
}

TEST_CASE("faces that do not count are as if they were not there") {
  const Surface ball = sphere(ball_mm, 5);
  const auto piece = undersides(coil_of({{"casing", rectangle(-40, -40, 40, 40), 0, 10}})).front();
  const auto beyond = [&](int face) {
    const Vector3d m = (ball.corner(face, 0) + ball.corner(face, 1) + ball.corner(face, 2)) / 3;
    return std::hypot(m.x(), m.y()) > 25;
  };
  const auto all = highest_rise(ball, piece, pose_on_top(), -1e9),
             some = highest_rise(ball, piece, pose_on_top(), -1e9, beyond);
  CHECK(all->under.norm() < 5);
  CHECK(some->under.norm() > 20);
  CHECK(some->mm == Approx(-(ball_mm - std::sqrt(ball_mm * ball_mm - 25 * 25))).margin(1));
  CHECK_FALSE(highest_rise(ball, piece, pose_on_top(), -1e9, [](int) { return false; }));
}
