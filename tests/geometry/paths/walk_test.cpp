#include "geometry/paths/walk.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "tests/support/shapes.h"

using namespace scalpmark;
using Eigen::Vector3d;
using geometry::pi;
using geometry::SurfacePoint;

namespace {

constexpr double sphere_mm = 90;

/// Where a great circle of that arc ends (closed form).
Vector3d great_circle(const Vector3d& from, const Vector3d& towards, double arc_mm) {
  const Vector3d up = from.normalized();
  const Vector3d t = (towards - towards.dot(up) * up).normalized();
  return sphere_mm * (std::cos(arc_mm / sphere_mm) * up + std::sin(arc_mm / sphere_mm) * t);
}

/// The worst distance from the great circle's end, over headings all round `start`.
double worst_miss(const geometry::Surface& skin, const SurfacePoint& start, double arc_mm) {
  const Vector3d at = skin.position(start), n = skin.smooth_normal(start);
  const Vector3d x = n.unitOrthogonal(), y = n.cross(x);
  double worst = 0;
  for (int i = 0; i < 72; ++i) {
    const double a = i * pi / 36 + 0.001;
    const Vector3d heading = std::cos(a) * x + std::sin(a) * y;
    const auto w = geometry::walk(skin, start, heading, arc_mm);
    REQUIRE_FALSE(w.reached_border);
    REQUIRE(w.length_mm == Approx(arc_mm).epsilon(1e-12));
    worst = std::max(worst, (w.at - great_circle(at, heading, arc_mm)).norm());
  }
  return worst;
}

/// A flat plate, 100 x 100 mm with 10 mm squares cut in two, in the plane z = 0.
geometry::Surface plate() {
  std::vector<Vector3d> v;
  std::vector<geometry::Triangle> t;
  for (int j = 0; j <= 10; ++j)
    for (int i = 0; i <= 10; ++i) v.emplace_back(10 * i, 10 * j, 0);
  for (int j = 0; j < 10; ++j)
    for (int i = 0; i < 10; ++i) {
      const int a = 11 * j + i;
      t.push_back({a, a + 1, a + 12});
      t.push_back({a, a + 12, a + 11});
    }
  return {v, t};
}

}  // namespace

TEST_CASE("a walk over a sphere follows the great circle, closer on a finer mesh") {
  std::vector<double> misses;
  for (const int level : {4, 5, 6}) {
    const auto skin = tests::sphere(sphere_mm, level);
    double worst = 0;
    for (const Vector3d& q : {Vector3d(1, 2, 3), Vector3d(-3, 1, 0.4), Vector3d(0.3, -0.2, -1)})
      worst = std::max(worst, worst_miss(skin, skin.closest(sphere_mm * q.normalized()), 60));
    misses.push_back(worst);
  }
  CAPTURE(misses[0], misses[1], misses[2]);
  // The order of convergence is measured, not known beforehand: better than half per four-fold refinement.
  CHECK(misses[2] < 0.3);
  CHECK(misses[2] < 0.55 * misses[0]);
}

TEST_CASE("a walk may start at a vertex or on an edge, in any direction") {
  const auto skin = tests::sphere(sphere_mm, 6);
  const SurfacePoint corner{0, {1, 0, 0}}, edge{1234, {0.4, 0.6, 0}}, nearly{77, {1e-13, 1 - 2e-13, 1e-13}};
  CHECK(worst_miss(skin, corner, 60) < 0.4);
  CHECK(worst_miss(skin, edge, 60) < 0.4);
  CHECK(worst_miss(skin, nearly, 60) < 0.4);
}

TEST_CASE("a walk along the mirror plane of a symmetric head stays in it") {
  // Edges of the octahedral sphere lie in the plane x = 0: the walk runs along edges and through vertices.
  const auto skin = tests::sphere(sphere_mm, 5);
  const auto w = geometry::walk(skin, skin.closest({0, 0, sphere_mm}), {0, 1, 0}, 200);
  CHECK(w.length_mm == Approx(200));
  for (const auto& p : w.line) REQUIRE(std::abs(p.x()) < 1e-6);
  CHECK(std::abs(w.heading.x()) < 1e-6);
}

TEST_CASE("on a flat plate a walk is the straight line") {
  const auto skin = plate();
  for (int i = 0; i < 24; ++i) {
    const double a = i * pi / 12;
    const Vector3d heading(std::cos(a), std::sin(a), 0);
    for (const Vector3d& from : {Vector3d(52, 47, 0), Vector3d(50, 50, 0), Vector3d(45, 45, 0)}) {
      const auto w = geometry::walk(skin, skin.closest(from), heading, 40);
      CHECK((w.at - (from + 40 * heading)).norm() < 1e-7);
      CHECK((w.heading - heading).norm() < 1e-9);
    }
  }
}

TEST_CASE("a walk stops at the border and says so") {
  const auto skin = plate();
  const auto w = geometry::walk(skin, skin.closest({52, 47, 0}), Vector3d(1, 0.1, 0).normalized(), 500);
  CHECK(w.reached_border);
  CHECK(w.at.x() == Approx(100));
  CHECK(w.length_mm == Approx(48 * std::sqrt(1.01)));
  // From the border itself: inwards it goes, outwards it does not move.
  const auto rim = skin.closest({100, 43, 0});
  CHECK(geometry::walk(skin, rim, {-1, 0, 0}, 30).at.x() == Approx(70));
  const auto out = geometry::walk(skin, rim, {1, 0, 0}, 30);
  CHECK(out.reached_border);
  CHECK(out.length_mm == 0);
  const auto vertex = geometry::walk(skin, skin.closest({100, 40, 0}), {1, 0, 0}, 30);
  CHECK(vertex.reached_border);
  CHECK(vertex.length_mm == 0);
}

TEST_CASE("a walk's pieces add up, and it comes back the way it went") {
  const auto skin = tests::sphere(sphere_mm, 5, {0.8, 1.05, 0.95});
  const auto start = skin.closest({20, 30, 80});
  const Vector3d heading = Vector3d(1, -0.3, -0.1).normalized();
  const auto whole = geometry::walk(skin, start, heading, 120);
  const auto half = geometry::walk(skin, start, heading, 60);
  const auto rest = geometry::walk(skin, half.end, half.heading, 60);
  CHECK((rest.at - whole.at).norm() < 1e-6);
  const auto back = geometry::walk(skin, whole.end, -whole.heading, 120);
  CHECK((back.at - skin.position(start)).norm() < 1e-6);
}

TEST_CASE("a walk's length or direction that makes no sense is refused") {
  const auto skin = tests::sphere(sphere_mm, 3);
  const SurfacePoint start{5, {0.2, 0.3, 0.5}};
  const Vector3d n = skin.smooth_normal(start), t = n.unitOrthogonal();
  const double nan = std::numeric_limits<double>::quiet_NaN();
  CHECK_THROWS_AS(geometry::walk(skin, start, t, -1), geometry::GeometryError);
  CHECK_THROWS_AS(geometry::walk(skin, start, t, nan), geometry::GeometryError);
  CHECK_THROWS_AS(geometry::walk(skin, start, t, 1e300), geometry::GeometryError);
  CHECK_THROWS_AS(geometry::walk(skin, start, n, 10), geometry::GeometryError);
  CHECK_THROWS_AS(geometry::walk(skin, start, Vector3d::Zero(), 10), geometry::GeometryError);
  CHECK_THROWS_AS(geometry::walk(skin, start, Vector3d(nan, 0, 0), 10), geometry::GeometryError);
  CHECK(geometry::walk(skin, start, t, 0).length_mm == 0);
}
