#include "geometry/paths/empty_ball.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "geometry/paths/shortest_path.h"
#include "geometry/surface/section.h"
#include "tests/support/random_point.h"
#include "tests/support/shapes.h"

using namespace scalpmark;
using Eigen::Vector3d;
using geometry::EmptyBall;
using geometry::Surface;
using geometry::SurfacePoint;
using tests::random_point;

namespace {

/// With hollows and knobs of a few millimetres, as ears and brows have.
Surface bumpy_skin() {
  const Surface smooth = tests::sphere(100, 5, {0.75, 0.95, 0.85});
  std::vector<Vector3d> vertices = smooth.vertices();
  for (Vector3d& v : vertices)
    v *= 1 + 0.03 * std::sin(v.x() / 7) * std::sin(v.y() / 9 + 1) * std::sin(v.z() / 8 + 2);
  return smooth.moved(std::move(vertices));
}

/// Half a head's ellipsoid: an open skin.
Surface open_skin() {
  const Surface whole = tests::sphere(100, 4, {0.75, 0.95, 0.85});
  std::vector<geometry::Triangle> upper;
  for (const auto& t : whole.triangles())
    if (whole.vertex(t[0]).z() > -20 && whole.vertex(t[1]).z() > -20 && whole.vertex(t[2]).z() > -20)
      upper.push_back(t);
  return {whole.vertices(), upper};
}

}  // namespace

TEST_CASE("the way around a ball is two tangents and an arc") {
  const EmptyBall ball{{1, 2, 3}, 50};
  const auto around = [&](const Vector3d& a, const Vector3d& b) {
    return geometry::length_around(ball, ball.centre + a, ball.centre + b);
  };
  // Closed forms: on the ball from pole to pole; from 100 mm off the centre on both sides (tangents of
  // sqrt(100^2 - 50^2), each turning by 60 degrees); a quarter turn on the ball; past it; beside it.
  CHECK(around({0, 0, 50}, {0, 0, -50}) == Approx(50 * M_PI).epsilon(1e-12));
  CHECK(around({100, 0, 0}, {-100, 0, 0}) == Approx(2 * std::sqrt(7500.0) + 50 * M_PI / 3).epsilon(1e-12));
  CHECK(around({50, 0, 0}, {0, 50, 0}) == Approx(25 * M_PI).epsilon(1e-12));
  CHECK(around({100, 0, 0}, {60, 30, 0}) == Approx(50).epsilon(1e-12));
  CHECK(around({-100, 51, 0}, {100, 51, 0}) == Approx(200).epsilon(1e-12));
  CHECK(around({30, 0, 0}, {30, 0, 0}) == 0);
  // Just touching, both ways lead on into each other.
  CHECK(around({-100, 50 - 1e-9, 0}, {100, 50 - 1e-9, 0}) == Approx(200).epsilon(1e-9));
  CHECK(geometry::length_around({}, {0, 0, 50}, {0, 0, -50}) == 100);
}

TEST_CASE("no path over the skin is shorter than the way around the ball between its ends", "[slow]") {
  const std::vector<Surface> skins{tests::sphere(90, 4), tests::sphere(100, 4, {0.75, 0.95, 0.85}),
                                   open_skin(), bumpy_skin()};
  for (const Surface& skin : skins) {
    CAPTURE(skin.triangles().size());
    std::mt19937 random(5);
    double straight = 0, around = 0, over = 0;
    for (int i = 0; i < 20; ++i) {
      const SurfacePoint a = random_point(skin, random), b = random_point(skin, random);
      const Vector3d from = skin.position(a), to = skin.position(b);
      const EmptyBall ball = geometry::ball_between(skin, from, to);
      const double mm = geometry::length_around(ball, from, to);
      const double shortest = geometry::shortest_path(skin, a, b).length_mm;
      CHECK(mm >= (to - from).norm() * (1 - 1e-12));
      CHECK(mm <= shortest * (1 + 1e-12));
      straight += (to - from).norm();
      around += mm;
      over += shortest;
      // No corner, and no middle of a triangle, lies in the ball.
      for (int f = 0; f < static_cast<int>(skin.triangles().size()); ++f) {
        REQUIRE((skin.position({f}) - ball.centre).norm() >= ball.radius_mm);
        REQUIRE((skin.corner(f, 0) - ball.centre).norm() >= ball.radius_mm);
      }
    }
    // It leaves less than half of what the straight line leaves.
    CHECK(over - around < 0.5 * (over - straight));
  }
}
