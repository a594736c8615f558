#include "models/meshes/thin_triangles.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "models/meshes/thin_scan.h"
#include "tests/support/shapes.h"

using namespace scalpmark;

namespace {

/// Our own collapses for the skin of an MRI, and OpenMesh's for scans.
models::Mesh thinned(int how, const models::Mesh& mesh, std::size_t most) {
  return how == 0 ? models::thin_triangles(mesh, most) : models::thin_scan(mesh, most);
}

}  // namespace

TEST_CASE("thinning an ellipsoid keeps it closed and in place", "[slow]") {
  const int how = GENERATE(0, 1);
  CAPTURE(how);
  const Eigen::Vector3d axes{0.8, 1.0, 0.9};
  const auto fine = tests::sphere(90, 6, axes);  // 32 768 triangles
  const auto thin = thinned(how, {fine.vertices(), fine.triangles()}, 16000);
  CHECK(thin.triangles.size() <= 16000);
  CHECK(thin.triangles.size() > 15900);
  const geometry::Surface skin(thin.vertices, thin.triangles);  // refuses what is not manifold
  CHECK(skin.is_closed());
  CHECK(2 * skin.vertices().size() == skin.triangles().size() + 4);  // Euler: still a sphere
  double mean = 0, worst = 0;
  for (const auto& v : fine.vertices()) {
    const double off = (skin.position(skin.closest(v)) - v).norm();
    mean += off;
    worst = std::max(worst, off);
  }
  // With edges e of 2 to 4 mm on a radius R of 72 mm or more, a flat edge is off by e^2 / 8R = 0.03 mm at
  // most.
  CHECK(mean / static_cast<double>(fine.vertices().size()) < 0.02);
  CHECK(worst < 0.1);
}

TEST_CASE("thinning stops where only pinching collapses are left") {
  const int how = GENERATE(0, 1);
  CAPTURE(how);
  const auto thin = thinned(how, {tests::sphere(90, 1).vertices(), tests::sphere(90, 1).triangles()}, 1);
  const geometry::Surface skin(thin.vertices, thin.triangles);
  CHECK(skin.is_closed());
  CHECK(skin.triangles().size() >= 4);
}

TEST_CASE("a mesh that is small enough stays as it is, without unused vertices") {
  const int how = GENERATE(0, 1);
  CAPTURE(how);
  const auto ball = tests::sphere(90, 2);
  auto vertices = ball.vertices();
  vertices.emplace_back(0, 0, 0);
  const auto same = thinned(how, {vertices, ball.triangles()}, 1000);
  CHECK(same.triangles.size() == ball.triangles().size());
  CHECK(same.vertices.size() == ball.vertices().size());
}
