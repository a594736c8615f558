#include "models/meshes/rough_thinning.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "models/generic/generic_head.h"
#include "models/meshes/thin_scan.h"
#include "tests/support/finer.h"
#include "tests/support/shapes.h"

using namespace scalpmark;
using Eigen::Vector3d;
using geometry::Surface;

namespace {

double farthest_mm(const Surface& from, const Surface& to) {
  double most = 0;
  for (const Vector3d& v : from.vertices()) most = std::max(most, (to.position(to.closest(v)) - v).norm());
  return most;
}

std::set<std::array<double, 3>> places(const std::vector<Vector3d>& corners) {
  std::set<std::array<double, 3>> all;
  for (const Vector3d& v : corners) all.insert({v.x(), v.y(), v.z()});
  return all;
}

}  // namespace

TEST_CASE("a scan thinned roughly is still one closed skin in its place, of corners that it had", "[slow]") {
  // Grain as a scanner leaves it makes for collapses that pinch.
  const Surface fine = tests::finer(models::generic_head().skin(), 2, 0.03);
  const auto thin = models::thinned_roughly({fine.vertices(), fine.triangles()}, 60'000);
  REQUIRE(thin);
  CHECK(thin->triangles.size() <= 60'000);
  CHECK(thin->triangles.size() > 59'000);
  const Surface skin(thin->vertices, thin->triangles);  // refuses what is not manifold
  CHECK(skin.is_closed());
  CHECK(2 * skin.vertices().size() == skin.triangles().size() + 4);  // Euler: still a sphere
  CHECK(farthest_mm(fine, skin) < 0.3);
  const auto before = places(fine.vertices()), after = places(thin->vertices);
  CHECK(std::includes(before.begin(), before.end(), after.begin(), after.end()));
}

TEST_CASE("a border stays as it is when a scan is thinned roughly") {
  const auto ball = tests::sphere(90, 6);
  std::vector<geometry::Triangle> open;
  for (const auto& t : ball.triangles())
    if (std::any_of(t.begin(), t.end(), [&](int v) { return ball.vertex(v).z() > -60; })) open.push_back(t);
  const Surface half(ball.vertices(), open);
  const auto thin = models::thinned_roughly({half.vertices(), half.triangles()}, 6000);
  REQUIRE(thin);
  const Surface skin(thin->vertices, thin->triangles);
  REQUIRE(skin.borders().size() == 1);
  const auto rim = [](const Surface& of) {
    std::vector<Vector3d> corners;
    for (const int v : of.borders()[0]) corners.push_back(of.vertex(v));
    return places(corners);
  };
  CHECK(rim(skin) == rim(half));
}

TEST_CASE("a mesh of many times the triangles wanted is thinned to as many, as closely as with care alone",
          "[slow]") {
  const Surface fine = tests::finer(models::generic_head().skin(), 2, 0.03);
  constexpr std::size_t wanted = 50'000;
  REQUIRE(fine.triangles().size() > 3 * wanted);
  double told = 0;
  const auto thin = models::thin_scan({fine.vertices(), fine.triangles()}, wanted, [&](double part) {
    CHECK(part >= told);
    told = part;
  });
  CHECK(thin.triangles.size() <= wanted);
  const Surface skin(thin.vertices, thin.triangles);
  CHECK(skin.is_closed());
  CHECK(farthest_mm(fine, skin) < 0.3);
}
