#include "geometry/paths/shortest_path.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "geometry/base/error.h"
#include "geometry/paths/distance_field.h"
#include "tests/support/plate.h"
#include "tests/support/random_point.h"
#include "tests/support/shapes.h"

using namespace scalpmark;
using Eigen::Vector3d;
using geometry::Surface;
using geometry::SurfacePoint;
using tests::plate;
using tests::random_point;

namespace {

double line_length(const std::vector<Vector3d>& line) {
  double mm = 0;
  for (size_t i = 1; i < line.size(); ++i) mm += (line[i] - line[i - 1]).norm();
  return mm;
}

}  // namespace

TEST_CASE("shortest paths on a sphere are great circles, to second order in the triangles' size") {
  // Closed form: arc = radius * angle.
  std::vector<double> errors;
  for (const int level : {3, 4, 5}) {
    const auto skin = tests::sphere(90, level);
    std::mt19937 random(3);
    double worst = 0;
    for (int i = 0; i < 10; ++i) {
      const auto a = random_point(skin, random), b = random_point(skin, random);
      const Vector3d p = skin.position(a).normalized(), q = skin.position(b).normalized();
      const double arc = 90 * std::atan2(p.cross(q).norm(), p.dot(q));
      worst = std::max(worst, std::abs(geometry::shortest_path(skin, a, b).length_mm - arc));
    }
    errors.push_back(worst);
  }
  CAPTURE(errors[0], errors[1], errors[2]);
  CHECK(errors[2] < 0.2);
  CHECK(errors[2] < errors[0] / 6);  // second order would be 16
}

TEST_CASE("on a flat plate the shortest path is the straight line") {
  const auto skin = plate(false);
  std::mt19937 random(7);
  for (int i = 0; i < 50; ++i) {
    const auto a = random_point(skin, random), b = random_point(skin, random);
    const double straight = (skin.position(a) - skin.position(b)).norm();
    const auto path = geometry::shortest_path(skin, a, b);
    CHECK(path.length_mm == Approx(straight).epsilon(1e-9));
    CHECK(line_length(path.line) == Approx(straight).epsilon(1e-9));
    CHECK((path.line.front() - skin.position(a)).norm() < 1e-9);
    CHECK((path.line.back() - skin.position(b)).norm() < 1e-9);
  }
}

TEST_CASE("a shortest path bends round a hole's corners") {
  const auto skin = plate(true);
  const Vector3d a(20, 52, 0), b(80, 50, 0);
  const auto path = geometry::shortest_path(skin, skin.closest(a), skin.closest(b));
  // The taut string over the hole's upper corners (40, 60) and (60, 60).
  const double taut = std::hypot(20, 8) + 20 + std::hypot(20, 10);
  CHECK(path.length_mm == Approx(taut).epsilon(1e-9));
  CHECK(line_length(path.line) == Approx(taut).epsilon(1e-9));
  const geometry::DistanceField field(skin, skin.closest(a));
  CHECK(field.at(skin, skin.closest(b)) == Approx(taut).epsilon(1e-6));
}

TEST_CASE("distances are the same both ways, keep the triangle inequality, and agree with paths and fields",
          "[slow]") {
  auto skin = tests::sphere(1, 4, {75, 98, 88});
  auto vertices = skin.vertices();
  for (auto& v : vertices) v *= 1 + 0.05 * std::sin(v.x() / 9) * std::sin(v.y() / 8 + 1);
  skin = skin.moved(std::move(vertices));
  std::mt19937 random(11);
  std::vector<SurfacePoint> p;
  for (int i = 0; i < 8; ++i) p.push_back(random_point(skin, random));
  p.push_back({40, {1, 0, 0}});
  p.push_back({41, {0.5, 0.5, 0}});
  p.push_back({42, {0, 1 - 1e-9, 1e-9}});
  std::vector<std::vector<double>> mm;
  for (const auto& a : p) mm.push_back(geometry::shortest_distances(skin, a, p));
  for (size_t i = 0; i < p.size(); ++i) {
    const geometry::DistanceField field(skin, p[i]);
    for (size_t j = 0; j < p.size(); ++j) {
      REQUIRE(mm[i][j] == Approx(mm[j][i]).epsilon(1e-8).margin(1e-6));
      for (size_t k = 0; k < p.size(); ++k) REQUIRE(mm[i][j] <= mm[i][k] + mm[k][j] + 1e-6);
      const auto path = geometry::shortest_path(skin, p[i], p[j]);
      REQUIRE(path.length_mm == Approx(mm[i][j]).epsilon(1e-9).margin(1e-6));
      REQUIRE(line_length(path.line) == Approx(mm[i][j]).epsilon(1e-9).margin(1e-6));
      REQUIRE(field.at(skin, p[j]) == Approx(mm[i][j]).margin(0.2));  // 10 mm triangles
    }
  }
}

TEST_CASE("separate pieces of skin: no path, and an infinite distance") {
  auto v = tests::sphere(50, 2).vertices();
  auto t = tests::sphere(50, 2).triangles();
  const int count = static_cast<int>(v.size());
  for (int i = 0; i < count; ++i) v.push_back(v[static_cast<size_t>(i)] + Vector3d(200, 0, 0));
  const size_t faces = t.size();
  for (size_t f = 0; f < faces; ++f) t.push_back({t[f][0] + count, t[f][1] + count, t[f][2] + count});
  const Surface two(v, t);
  const SurfacePoint a{3, {0.2, 0.3, 0.5}}, b{static_cast<int>(faces) + 3, {0.2, 0.3, 0.5}};
  CHECK_THROWS_AS(geometry::shortest_path(two, a, b), geometry::GeometryError);
  CHECK(std::isinf(geometry::shortest_distances(two, a, {b}).front()));
  const geometry::DistanceField field(two, a);
  CHECK(std::isinf(field.at(two, b)));
  CHECK(geometry::shortest_distances(two, a, {}).empty());
}
