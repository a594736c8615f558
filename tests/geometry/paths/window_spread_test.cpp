#include "geometry/paths/window_spread.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>
#include <stdexcept>

#include "geometry/surface/section.h"
#include "tests/support/plate.h"
#include "tests/support/random_point.h"
#include "tests/support/shapes.h"

using namespace scalpmark;
using Eigen::Vector2d;
using Eigen::Vector3d;
using geometry::Surface;
using geometry::SurfacePoint;
using geometry::WindowSpread;
using tests::plate;
using tests::random_point;

namespace {

double length_of_line(const std::vector<Vector3d>& line) {
  double mm = 0;
  for (size_t i = 1; i < line.size(); ++i) mm += (line[i] - line[i - 1]).norm();
  return mm;
}

/// A fan of `count` triangles of side 100 mm round one corner (vertex 0), its rim going up and down by turns:
/// flat at a lean of 0, and the steeper the more skin there is round the corner.
struct Fan {
  Surface skin;
  double sector;  ///< angle of each triangle at the corner, radians
};

Fan fan(int count, double up, double down) {
  std::vector<Vector3d> v{{0, 0, 0}};
  std::vector<geometry::Triangle> t;
  for (int i = 0; i < count; ++i) {
    const double turn = 2 * M_PI * i / count, lean = i % 2 == 0 ? up : down;
    v.emplace_back(100 * std::cos(lean) * std::cos(turn), 100 * std::cos(lean) * std::sin(turn),
                   100 * std::sin(lean));
    t.push_back({0, i + 1, (i + 1) % count + 1});
  }
  const double sector = std::acos(v[1].dot(v[2]) / 10'000);
  return {Surface(v, t), sector};
}

/// Where a point of the fan lies on its development: distance from the corner, mm, and angle round it.
struct Polar {
  double mm, angle;
};

Polar polar(const Fan& f, const SurfacePoint& p) {
  // Weight k belongs to the corner, the rim at the sector's start, the rim at its end.
  const Vector2d flat =
      100 * (p.weights[1] * Vector2d(1, 0) + p.weights[2] * Vector2d(std::cos(f.sector), std::sin(f.sector)));
  return {flat.norm(), p.face * f.sector + std::atan2(flat.y(), flat.x())};
}

/// Closed form on a cone or saddle laid flat: the straight line where it passes the corner on a side with
/// less than half a turn of skin, else over the corner itself (elementary geometry of the development).
double on_development(const Fan& f, int count, const Polar& p, const Polar& q) {
  const double whole = count * f.sector;
  double apart = std::abs(p.angle - q.angle);
  apart = std::min(apart, whole - apart);
  if (apart >= M_PI) return p.mm + q.mm;
  return std::sqrt(p.mm * p.mm + q.mm * q.mm - 2 * p.mm * q.mm * std::cos(apart));
}

/// A closed box with a corner at the origin; each wall is two triangles.
Surface box(double x, double y, double z) {
  const std::vector<Vector3d> v{{0, 0, 0}, {x, 0, 0}, {x, y, 0}, {0, y, 0},
                                {0, 0, z}, {x, 0, z}, {x, y, z}, {0, y, z}};
  return {v,
          {{0, 2, 1},
           {0, 3, 2},
           {4, 5, 6},
           {4, 6, 7},
           {0, 1, 5},
           {0, 5, 4},
           {3, 6, 2},
           {3, 7, 6},
           {0, 7, 3},
           {0, 4, 7},
           {1, 2, 6},
           {1, 6, 5}}};
}

double spread_mm(const Surface& skin, const SurfacePoint& from, const SurfacePoint& to) {
  WindowSpread spread(skin, from, WindowSpread::Keep::paths);
  spread.add_target(to);
  spread.run();
  CHECK(length_of_line(spread.path_to(0)) == Approx(spread.target_mm(0)).epsilon(1e-9));
  return spread.target_mm(0);
}

}  // namespace

// H. E. Dudeney's spider and fly (1903; The Canterbury Puzzles, 1907): in a room 30 feet long, 12 wide and 12
// high, from the middle of one end wall 1 foot under the ceiling to the middle of the other 1 foot over the
// floor, the shortest way over the walls is 40 feet and touches five of the six (memory).
TEST_CASE("the spider in the room finds the fly after 40 feet") {
  const Surface room = box(30, 12, 12);
  const SurfacePoint spider = room.closest({0, 6, 11}), fly = room.closest({30, 6, 1});
  CHECK(spread_mm(room, spider, fly) == Approx(40).epsilon(1e-12));
  CHECK(spread_mm(room, fly, spider) == Approx(40).epsilon(1e-12));
}

TEST_CASE("from corner to opposite corner of a cube is the root of five sides") {
  // Two squares laid flat side by side, and their diagonal (elementary geometry).
  const Surface cube = box(50, 50, 50);
  CHECK(spread_mm(cube, cube.closest({0, 0, 0}), cube.closest({50, 50, 50})) ==
        Approx(50 * std::sqrt(5.0)).epsilon(1e-12));
}

TEST_CASE("round the tip of a cone paths run straight on the cone laid flat, and never over the tip") {
  const Fan cone = fan(7, 0.6, 0.6);
  REQUIRE(7 * cone.sector < 2 * M_PI - 0.5);
  std::mt19937 random(12);
  for (int i = 0; i < 100; ++i) {
    const SurfacePoint a = random_point(cone.skin, random), b = random_point(cone.skin, random);
    const double flat = on_development(cone, 7, polar(cone, a), polar(cone, b));
    // The rim may be nearer than the straight line, but no straight line leaves this fan's triangles unless
    // it is longer than what the rim allows; where it does, the path keeps inside and is longer.
    CHECK(spread_mm(cone.skin, a, b) >= flat * (1 - 1e-9));
    if (std::max(polar(cone, a).mm, polar(cone, b).mm) < 40)
      CHECK(spread_mm(cone.skin, a, b) == Approx(flat).epsilon(1e-9));
  }
}

TEST_CASE("over a saddle paths bend at its corner when there is half a turn of skin on both sides") {
  const Fan saddle = fan(8, 0.6, -0.6);
  REQUIRE(8 * saddle.sector > 2 * M_PI + 0.5);
  std::mt19937 random(13);
  int over_the_corner = 0;
  for (int i = 0; i < 100; ++i) {
    SurfacePoint a = random_point(saddle.skin, random), b = random_point(saddle.skin, random);
    for (SurfacePoint* p : {&a, &b}) {  // near the corner, so that the rim is in nobody's way
      p->weights.tail<2>() *= 0.4;
      p->weights[0] = 1 - p->weights[1] - p->weights[2];
    }
    const Polar p = polar(saddle, a), q = polar(saddle, b);
    const double flat = on_development(saddle, 8, p, q);
    if (flat == p.mm + q.mm) ++over_the_corner;
    CHECK(spread_mm(saddle.skin, a, b) == Approx(flat).epsilon(1e-9));
  }
  CHECK(over_the_corner > 10);
  CHECK(over_the_corner < 90);
}

TEST_CASE(
    "spread to the end on a plate, every corner is as far as the straight line says, or the taut string") {
  const Surface flat = plate(false);
  const SurfacePoint source = flat.closest({31, 47, 0});
  WindowSpread all(flat, source, WindowSpread::Keep::lengths);
  all.run();
  for (int v = 0; v < static_cast<int>(flat.vertices().size()); ++v)
    CHECK(all.vertex_mm(v) == Approx((flat.vertex(v) - Vector3d(31, 47, 0)).norm()).epsilon(1e-9));

  const Surface holed = plate(true);
  WindowSpread round(holed, holed.closest({31, 50, 0}), WindowSpread::Keep::lengths);
  round.run();
  // Over the hole's corners (40, 60) and (60, 60), as a string pulled taut.
  const auto far = static_cast<int>(21 * 10 + 16);  // (80, 50)
  CHECK(round.vertex_mm(far) == Approx(std::hypot(9, 10) + 20 + std::hypot(20, 10)).epsilon(1e-9));
}

TEST_CASE("a bound leaves the length as it is and makes a fraction of the windows") {
  const Surface egg = tests::sphere(1, 5, {76, 97, 88});
  std::mt19937 random(3);
  for (int i = 0; i < 5; ++i) {
    const SurfacePoint a = random_point(egg, random), b = random_point(egg, random);
    WindowSpread free(egg, a, WindowSpread::Keep::lengths), bound(egg, a, WindowSpread::Keep::lengths);
    free.add_target(b);
    bound.add_target(b, geometry::section_length(egg, a, b));
    free.run();
    bound.run();
    CHECK(bound.target_mm(0) == Approx(free.target_mm(0)).epsilon(1e-12));
    if (free.target_mm(0) > 60) CHECK(bound.windows_made() * 2 < free.windows_made());
  }
}

TEST_CASE("a bound that is the path itself does not rule the path out") {
  const Surface egg = tests::sphere(1, 4, {76, 97, 88});
  std::mt19937 random(21);
  for (int i = 0; i < 20; ++i) {
    const SurfacePoint a = random_point(egg, random), b = random_point(egg, random);
    WindowSpread free(egg, a, WindowSpread::Keep::lengths);
    free.add_target(b);
    free.run();
    WindowSpread tight(egg, a, WindowSpread::Keep::paths);
    tight.add_target(b, free.target_mm(0));
    tight.run();
    REQUIRE(tight.target_mm(0) == Approx(free.target_mm(0)).epsilon(1e-12));
    CHECK(length_of_line(tight.path_to(0)) == Approx(free.target_mm(0)).epsilon(1e-9));
  }
}

TEST_CASE("the views kept of an edge see the source as far away as it is, place by place") {
  const Surface flat = plate(false);
  const Vector3d source(31, 47, 0);
  WindowSpread spread(flat, flat.closest(source), WindowSpread::Keep::lengths);
  std::vector<std::array<geometry::EdgeView, geometry::edge_view_places>> views(3 * flat.triangles().size());
  spread.keep_views(views);
  spread.run();
  size_t seen = 0;
  for (int f = 0; f < static_cast<int>(flat.triangles().size()); ++f)
    for (int k = 0; k < 3; ++k)
      for (size_t i = 0; i < geometry::edge_view_places; ++i) {
        const auto& view = views[static_cast<size_t>(3 * f + k)][i];
        if (!std::isfinite(view.best_mm)) continue;  // no path enters this face here
        ++seen;
        const double t = (static_cast<double>(i) + 0.5) / geometry::edge_view_places;
        const Vector3d place = (1 - t) * flat.corner(f, k) + t * flat.corner(f, (k + 1) % 3);
        // Single floats: a millionth of the plate.
        REQUIRE(static_cast<double>(view.best_mm) == Approx((place - source).norm()).margin(1e-3));
        REQUIRE(view.y <= 0);
      }
  // Each of a face's edges is looked through from one side at most places; 600 faces at the least.
  CHECK(seen > flat.triangles().size() * geometry::edge_view_places);
}

TEST_CASE("a spread is given up as soon as its watch says so") {
  const Surface egg = tests::sphere(1, 6, {76, 97, 88});
  WindowSpread spread(egg, {5, {0.2, 0.3, 0.5}}, WindowSpread::Keep::lengths);
  int calls = 0;
  spread.set_watch([&] {
    if (++calls == 3) throw std::runtime_error("given up");
  });
  CHECK_THROWS_WITH(spread.run(), "given up");
  CHECK(calls == 3);
}

TEST_CASE("another piece of skin is never reached") {
  Surface one = tests::sphere(50, 2);
  auto v = one.vertices();
  auto t = one.triangles();
  const auto count = static_cast<int>(v.size());
  for (int i = 0; i < count; ++i) v.push_back(one.vertex(i) + Vector3d(200, 0, 0));
  for (const auto& [a, b, c] : one.triangles()) t.push_back({a + count, b + count, c + count});
  const Surface two(v, t);
  WindowSpread spread(two, {3, {0.2, 0.3, 0.5}}, WindowSpread::Keep::lengths);
  spread.run();
  for (int i = 0; i < count; ++i) {
    REQUIRE(std::isfinite(spread.vertex_mm(i)));
    REQUIRE(std::isinf(spread.vertex_mm(count + i)));
  }
}
