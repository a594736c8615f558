#include "viewer/window/stage_view/turntable.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

using namespace scalpmark;
using Eigen::Vector3d;

TEST_CASE("however one turns, the head's up stays up in the picture") {
  const Vector3d up = Vector3d(0.1, -0.2, 1).normalized();
  viewer::Gaze gaze{up.unitOrthogonal(), up};
  std::mt19937 random(7);
  std::uniform_real_distribution<double> degrees(-60, 60);
  for (int i = 0; i < 2000; ++i) {
    gaze = window::turned(gaze, up, degrees(random), degrees(random));
    REQUIRE(gaze.up.dot(up) > 0);
    REQUIRE(std::abs(gaze.up.dot(gaze.toward_eye)) < 1e-9);
    // No roll: the picture's right is level.
    REQUIRE(std::abs(gaze.up.cross(gaze.toward_eye).dot(up)) < 1e-9);
  }
}

TEST_CASE("turning from straight above goes on from the way the picture faces") {
  const viewer::Gaze above{Vector3d::UnitZ(), Vector3d::UnitY()};
  const viewer::Gaze lower = window::turned(above, Vector3d::UnitZ(), 0, -30);
  // The nose pointed up in the picture; the eye comes down behind the head, and the nose still points away.
  CHECK(lower.toward_eye.y() < 0);
  CHECK(lower.up.y() > 0);
}

TEST_CASE("a movement between two views starts at one and ends at the other") {
  const viewer::Gaze left{-Vector3d::UnitX(), Vector3d::UnitZ()}, front{Vector3d::UnitY(), Vector3d::UnitZ()};
  CHECK((window::between(left, front, 0).toward_eye - left.toward_eye).norm() < 1e-9);
  CHECK((window::between(left, front, 1).toward_eye - front.toward_eye).norm() < 1e-9);
  CHECK(window::between(left, front, 0.5).up.isApprox(Vector3d::UnitZ(), 1e-9));
}
