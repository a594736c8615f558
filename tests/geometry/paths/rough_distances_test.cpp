#include "geometry/paths/rough_distances.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/paths/distance_field.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

TEST_CASE("rough distances on a sphere are great-circle arcs within a millimetre and a percent and a half") {
  const Surface ball = sphere(90, 5);
  const Vector3d from = Vector3d(0.3, -0.5, 0.8).normalized();
  const auto mm = rough_distances(ball, ball.closest(90 * from));
  for (size_t v = 0; v < mm.size(); ++v) {
    const Vector3d n = ball.vertices()[v].normalized();
    const double arc = 90 * std::atan2(n.cross(from).norm(), n.dot(from));
    REQUIRE(std::abs(mm[v] - arc) < 1 + 0.015 * arc);
  }
}

TEST_CASE("on a lopsided head rough distances stay as near to the exact ones") {
  const Head head = lopsided_head(5);
  for (const SurfacePoint& from : {head.vertex(), head.fiducials().nasion, head.fiducials().right_tragus}) {
    const auto mm = rough_distances(head.skin(), from);
    const DistanceField exact(head.skin(), from);
    for (size_t v = 0; v < mm.size(); ++v)
      REQUIRE(std::abs(mm[v] - exact.at_vertices()[v]) < 1 + 0.015 * exact.at_vertices()[v]);
  }
}

TEST_CASE("a separate piece of skin is infinitely far") {
  std::vector<Vector3d> corners{{0, 0, 0}, {10, 0, 0}, {0, 10, 0}, {0, 0, 50}, {10, 0, 50}, {0, 10, 50}};
  const Surface two(corners, {{0, 1, 2}, {3, 4, 5}});
  const auto mm = rough_distances(two, {0, Vector3d(1, 0, 0)});
  CHECK(mm[1] == Approx(10));
  CHECK(std::isinf(mm[4]));
}
