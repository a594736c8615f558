#include "geometry/surface/surface.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <limits>
#include <random>

#include "geometry/base/error.h"
#include "tests/support/shapes.h"

using namespace scalpmark::geometry;
using Eigen::Vector3d;
using scalpmark::tests::sphere;

TEST_CASE("a closed surface has no border and three neighbours a face") {
  const Surface ball = sphere(90, 3);
  CHECK(ball.is_closed());
  for (int f = 0; f < static_cast<int>(ball.triangles().size()); ++f)
    for (int k = 0; k < 3; ++k) {
      const Neighbour n = ball.neighbour(f, k);
      REQUIRE(n.face >= 0);
      CHECK(ball.neighbour(n.face, n.edge).face == f);
      CHECK(ball.neighbour(n.face, n.edge).edge == k);
    }
}

TEST_CASE("faces around a vertex come counter-clockwise, at a border from rim to rim") {
  const std::vector<Vector3d> v{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {-1, 0, 0}, {0, -1, 0}};
  const Surface fan(v, {{0, 2, 3}, {0, 1, 2}, {0, 3, 4}});
  CHECK(fan.faces_around(0) == std::vector<int>{1, 0, 2});
  CHECK(fan.is_border_vertex(0));
  REQUIRE(fan.borders().size() == 1);
  CHECK(fan.borders()[0].size() == 5);
}

TEST_CASE("the closest skin point and a ray's first hit agree with trying every face", "[slow]") {
  const Surface ball = sphere(90, 3, {0.8, 1, 0.95});
  std::mt19937 random(7);
  std::uniform_real_distribution<double> anywhere(-150, 150);
  for (int i = 0; i < 200; ++i) {
    const Vector3d q(anywhere(random), anywhere(random), anywhere(random));
    const double found = (ball.position(ball.closest(q)) - q).norm();
    double least = std::numeric_limits<double>::infinity();
    for (int f = 0; f < static_cast<int>(ball.triangles().size()); ++f) {
      // A fine sampling of each face bounds the distance from above, within the sampling's own step.
      for (int a = 0; a <= 8; ++a)
        for (int b = 0; a + b <= 8; ++b)
          least = std::min(least, (ball.position({f, {a / 8.0, b / 8.0, (8 - a - b) / 8.0}}) - q).norm());
    }
    CHECK(found <= least + 1e-9);
    CHECK(found >= least - 1.5);

    const Vector3d direction = -q.normalized();
    const auto hit = ball.ray_hit(q * (200 / q.norm()), direction);
    REQUIRE(hit);
    const Vector3d at = ball.position(hit->point);
    CHECK(at.cross(q.normalized()).norm() < 1e-9);  // on the ray, through the middle
    CHECK(at.dot(q) > 0);                           // the near side first
    CHECK(hit->distance_mm == Approx(200 - at.norm()).margin(1e-9));
  }
  CHECK_FALSE(ball.ray_hit({200, 0, 0}, {1, 0, 0}));
  CHECK_FALSE(ball.ray_hit({200, 0, 0}, {-1, 0, 0}, 50));
}

TEST_CASE("a ray through a corner or an edge is not lost between faces") {
  const Surface ball = sphere(90, 4);
  for (const Vector3d& v : ball.vertices()) REQUIRE(ball.ray_hit(2 * v, -v.normalized()));
}

TEST_CASE("normals of a sphere point away from its middle") {
  const Surface ball = sphere(90, 5);
  for (size_t i = 0; i < ball.vertices().size(); ++i)
    CHECK(ball.vertex_normals()[i].dot(ball.vertices()[i].normalized()) > 0.9999);
}

TEST_CASE("surfaces that are none are refused with a sentence") {
  const std::vector<Vector3d> v{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {1, 1, 1}};
  CHECK_THROWS_WITH(Surface(v, std::vector<Triangle>{}), Catch::Contains("no triangles"));
  CHECK_THROWS_WITH(Surface(v, {{0, 1, 9}}), Catch::Contains("does not exist"));
  CHECK_THROWS_WITH(Surface(v, {{0, 1, 1}}), Catch::Contains("twice"));
  CHECK_THROWS_WITH(Surface(v, {{0, 1, 2}, {1, 0, 3}, {0, 1, 4}}), Catch::Contains("more than two"));
  CHECK_THROWS_WITH(Surface(v, {{0, 1, 2}, {0, 1, 3}}), Catch::Contains("opposite ways"));
  auto bad = v;
  bad[1].x() = std::numeric_limits<double>::quiet_NaN();
  CHECK_THROWS_WITH(Surface(bad, {{0, 1, 2}}), Catch::Contains("not a number"));
}

TEST_CASE("a place that is no place has no nearest point") {
  const Surface skin = sphere(90, 3);
  const double nan = std::numeric_limits<double>::quiet_NaN(), far = std::numeric_limits<double>::infinity();
  for (const Vector3d& place : {Vector3d(nan, 0, 0), Vector3d(0, nan, 1), Vector3d(0, 0, far)})
    CHECK_THROWS_AS(skin.closest(place), scalpmark::geometry::GeometryError);
}
