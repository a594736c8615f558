#include "geometry/tapes/laid_tape.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <random>

#include "geometry/base/error.h"
#include "geometry/paths/walk.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

TEST_CASE("a tape laid on a sphere follows the great circle") {
  const Surface ball = sphere(90, 6);
  for (const double mm : {0.0, 10.0, 60.0, 100.0})
    for (const double turn : {0.0, 0.7, 2.5}) {
      const SurfacePoint start = ball.closest({-30, 20, 80});
      const Vector3d from = ball.position(start), up = from.normalized();
      const Vector3d heading = Eigen::AngleAxisd(turn, up) * up.unitOrthogonal();
      const auto tape = lay_tape(ball, start, heading, mm);
      REQUIRE(tape);
      const Vector3d ideal = 90 * (std::cos(mm / 90) * up + std::sin(mm / 90) * heading);
      CHECK((tape->at - ideal).norm() < 0.08);
      CHECK((ball.position(tape->end) - tape->at).norm() < 1e-9);
    }
}

TEST_CASE("on a smooth head a laid tape ends where the straightest geodesic does") {
  const Surface egg = sphere(1, 7, {76, 97, 92});
  for (const double x : {-30.0, -60.0})
    for (const double y : {-20.0, 50.0}) {
      const SurfacePoint start = egg.closest({x, y, 70});
      const Vector3d heading = egg.smooth_normal(start).cross(Vector3d(1, 0.4, 0).normalized()).normalized();
      const Walk straightest = walk(egg, start, heading, 60);
      CHECK((lay_tape(egg, start, heading, 60)->at - straightest.at).norm() < 0.15);
    }
}

TEST_CASE("on a grainy skin the tape's end moves as evenly as its start, where a line without width jumps") {
  const Surface smooth = sphere(90, 7);
  std::mt19937 random(5);
  std::normal_distribution<double> grain(0, 0.08);
  std::vector<Vector3d> rough = smooth.vertices();
  for (auto& v : rough) v += v.normalized() * grain(random);
  const Surface skin = smooth.moved(rough);
  double worst_tape = 0, worst_line = 0, worst_nearest = 0;
  Vector3d last_tape, last_line, last_nearest;
  for (int i = 0; i < 60; ++i) {
    const double a = 0.3 + 0.2 * i / 90;
    const SurfacePoint start = skin.closest(90 * Vector3d(-0.5, std::sin(a), std::cos(a)).normalized());
    const Vector3d up = skin.position(start).normalized();
    const Vector3d heading = up.cross(Vector3d(1, 0.3, 0)).normalized();
    const Vector3d tape = lay_tape(skin, start, heading, 60)->at;
    const Vector3d line = walk(skin, start, heading, 60).at;
    const Vector3d nearest = skin.position(*nearest_skin(skin, skin.position(start) + 60 * heading));
    if (i > 0) {
      worst_tape = std::max(worst_tape, (tape - last_tape).norm());
      worst_line = std::max(worst_line, (line - last_line).norm());
      worst_nearest = std::max(worst_nearest, (nearest - last_nearest).norm());
    }
    last_tape = tape;
    last_line = line;
    last_nearest = nearest;
  }
  // The start moves by 0.17 mm a step.
  CHECK(worst_tape < 0.35);
  CHECK(worst_nearest < 0.35);
  CHECK(worst_line > 0.7);
}

TEST_CASE("a laid tape ends where the skin ends, and says so by being empty") {
  const Surface ball = sphere(90, 5);
  std::vector<Triangle> upper;
  for (const auto& t : ball.triangles())
    if (ball.vertex(t[0]).z() + ball.vertex(t[1]).z() + ball.vertex(t[2]).z() > 0) upper.push_back(t);
  const Surface bowl(ball.vertices(), upper);
  const SurfacePoint start = bowl.closest({0, 70, 57});
  CHECK(lay_tape(bowl, start, Vector3d::UnitY(), 40));
  CHECK_FALSE(lay_tape(bowl, start, Vector3d::UnitY(), 100));
  CHECK_FALSE(nearest_skin(bowl, {0, 120, -60}));
  CHECK_THROWS_AS(lay_tape(ball, start, Vector3d::UnitY(), -1), GeometryError);
  CHECK_THROWS_AS(lay_tape(ball, start, Vector3d::UnitY(), std::numeric_limits<double>::infinity()),
                  GeometryError);
}

// Elementary geometry: the nearest point of a sphere lies on the line to its middle.
TEST_CASE("the nearest skin of a sphere lies under the place") {
  const Surface ball = sphere(90, 6);
  for (const double gap : {0.5, 18.0, 60.0}) {
    const Vector3d from = (90 + gap) * Vector3d(0.3, -0.5, 0.7).normalized();
    const auto foot = nearest_skin(ball, from);
    REQUIRE(foot);
    CHECK((ball.position(*foot) - 90 * from.normalized()).norm() < 0.06);
  }
}
