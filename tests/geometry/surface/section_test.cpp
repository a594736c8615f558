#include "geometry/surface/section.h"

#include <Eigen/Dense>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "geometry/base/error.h"
#include "geometry/paths/shortest_path.h"
#include "tests/support/plate.h"
#include "tests/support/random_point.h"
#include "tests/support/shapes.h"

using namespace scalpmark::geometry;
using Eigen::Vector3d;
using scalpmark::tests::plate;
using scalpmark::tests::random_point;
using scalpmark::tests::sphere;

namespace {

constexpr double cut_sphere_mm = 90;

SurfacePoint on_skin(const Surface& skin, const Vector3d& q) {
  return skin.closest(q);
}

/// How long the ellipse is in which a plane cuts an ellipsoid about the origin. Closed form: in the plane the
/// ellipsoid's quadratic form is one of two variables, whose eigenvalues give the semi-axes a >= b; an
/// ellipse is 4 a E(k) long, k2 = 1 - b2 / a2 (complete elliptic integral of the second kind, ISO C++17
/// std::comp_ellint_2).
double ellipse_mm(const Vector3d& semi_axes, const Plane& plane) {
  const Eigen::Matrix3d form = semi_axes.cwiseAbs2().cwiseInverse().asDiagonal();
  const Vector3d& n = plane.normal;
  const double spread = n.dot(form.inverse() * n), off = plane.point.dot(n);
  const double left = 1 - off * off / spread;
  Eigen::Matrix<double, 3, 2> flat;
  flat.col(0) = n.unitOrthogonal();
  flat.col(1) = n.cross(flat.col(0));
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d> axes(flat.transpose() * form * flat);
  const double a = std::sqrt(left / axes.eigenvalues()[0]), b = std::sqrt(left / axes.eigenvalues()[1]);
  return 4 * a * std::comp_ellint_2(std::sqrt(1 - b * b / (a * a)));
}

double length_of(const std::vector<SectionPoint>& line) {
  double mm = 0;
  for (size_t i = 1; i < line.size(); ++i) mm += (line[i].at - line[i - 1].at).norm();
  return mm;
}

/// Each point on the skin where it says, in the plane, and each stretch inside the face of its later end.
void check_line(const Surface& skin, const std::vector<SectionPoint>& line, const Plane& plane) {
  for (size_t i = 0; i < line.size(); ++i) {
    REQUIRE((skin.position(line[i].on_skin) - line[i].at).norm() < 1e-9);
    REQUIRE(std::abs(plane.height(line[i].at)) < 1e-9);
    if (i == 0) continue;
    const int face = line[i].on_skin.face;
    const Vector3d n = skin.face_normal(face);
    REQUIRE(std::abs(n.dot(line[i - 1].at - skin.corner(face, 0))) < 1e-9);
  }
}

/// A flat strip along x, 100 mm long, that lacks its part from x = 50 - gap / 2 to 50 + gap / 2 between
/// y = 10 and 20: a hole `gap` wide.
Surface strip_with_hole(double gap) {
  const std::vector<double> x{0, 50 - gap / 2, 50 + gap / 2, 100}, y{0, 10, 20, 30};
  std::vector<Vector3d> v;
  std::vector<Triangle> t;
  for (const double b : y)
    for (const double a : x) v.emplace_back(a, b, 0);
  for (int j = 0; j < 3; ++j)
    for (int i = 0; i < 3; ++i) {
      if (i == 1 && j == 1) continue;
      const int a = 4 * j + i;
      t.push_back({a, a + 1, a + 5});
      t.push_back({a, a + 5, a + 4});
    }
  return {v, t};
}

}  // namespace

// A plane at distance x from a sphere's middle cuts a circle of radius sqrt(R2 - x2) (elementary geometry).
TEST_CASE("sections of a sphere are circles, and finer meshes come closer with second order") {
  double previous = 0;
  for (const int level : {4, 5, 6}) {
    const Surface ball = sphere(cut_sphere_mm, level);
    const double x = 37.3;
    const SurfacePoint start = on_skin(ball, {x, std::sqrt(cut_sphere_mm * cut_sphere_mm - x * x), 0});
    const Section s = follow_section(ball, start, Vector3d::UnitX(), Vector3d::UnitZ());
    REQUIRE(s.closed);
    CHECK_FALSE(s.reached_border);
    const double cut_at = s.points.front().at.x();  // the start was brought onto a facet
    const double off = 2 * M_PI * std::sqrt(cut_sphere_mm * cut_sphere_mm - cut_at * cut_at) - s.length_mm;
    CHECK(off > 0);  // chords are shorter than arcs
    if (previous > 0) CHECK(std::log2(previous / off) == Approx(2).margin(0.35));
    previous = off;
    check_line(ball, s.points, {s.points.front().at, Vector3d::UnitX()});
  }
  CHECK(previous < 0.1);
}

TEST_CASE("sections of an ellipsoid by any plane are as long as elliptic integrals say") {
  const Vector3d semi_axes(76, 97, 88);
  const Surface egg = sphere(1, 6, semi_axes);
  std::mt19937 random(5);
  for (int i = 0; i < 20; ++i) {
    const SurfacePoint start = random_point(egg, random);
    const Vector3d from = egg.position(start);
    // Planes that go deep under the skin, as a tape's do; each also off the middle.
    const Vector3d beside = from.cross(egg.position(random_point(egg, random))).normalized();
    const Vector3d normal = (beside + 0.3 * from.normalized()).normalized();
    const Vector3d ahead = normal.cross(from).normalized();
    const Section s = follow_section(egg, start, normal, ahead);
    CAPTURE(from.transpose(), normal.transpose());
    REQUIRE(s.closed);
    CHECK((s.points.back().at - from).norm() == 0);
    CHECK(s.length_mm == Approx(ellipse_mm(semi_axes, {from, normal})).margin(0.12));
    CHECK(s.length_mm == Approx(length_of(s.points)).epsilon(1e-12));
    check_line(egg, s.points, {from, normal});
  }
}

TEST_CASE("a section sets out to the side it is told to, and is the same line either way round") {
  const Surface egg = sphere(1, 5, {76, 97, 88});
  std::mt19937 random(8);
  for (int i = 0; i < 10; ++i) {
    const SurfacePoint start = random_point(egg, random);
    const Vector3d from = egg.position(start), normal = from.unitOrthogonal();
    const Vector3d ahead = normal.cross(from).normalized();
    const Section one = follow_section(egg, start, normal, ahead);
    const Section other = follow_section(egg, start, normal, -ahead);
    CHECK((one.points[1].at - from).dot(ahead) > 0);
    CHECK((other.points[1].at - from).dot(ahead) < 0);
    REQUIRE(one.points.size() == other.points.size());
    CHECK(one.length_mm == Approx(other.length_mm).epsilon(1e-12));
    for (size_t k = 0; k < one.points.size(); ++k)
      REQUIRE((one.points[k].at - other.points[one.points.size() - 1 - k].at).norm() < 1e-9);
  }
}

TEST_CASE("a section through corners and along edges closes like any other") {
  const Surface ball = sphere(cut_sphere_mm, 5);
  // The octahedron's subdivision has corners and whole edges in all three axis planes.
  for (const Vector3d& normal :
       {Vector3d(Vector3d::UnitX()), Vector3d(Vector3d::UnitY()), Vector3d(Vector3d::UnitZ())}) {
    const Vector3d ahead = normal.unitOrthogonal();
    const Section s = follow_section(ball, on_skin(ball, cut_sphere_mm * ahead), normal, normal.cross(ahead));
    CHECK(s.closed);
    CHECK(s.length_mm == Approx(2 * M_PI * cut_sphere_mm).epsilon(1e-3));
  }
}

TEST_CASE("a section stops with the first corner past the length asked for, and at the place asked for") {
  const Surface ball = sphere(cut_sphere_mm, 6);
  const SurfacePoint start = on_skin(ball, {1, cut_sphere_mm, 2});
  const Section whole = follow_section(ball, start, Vector3d::UnitX(), Vector3d::UnitZ());
  for (const double reach : {0.1, 25.0, 200.0}) {
    const Section s = follow_section(ball, start, Vector3d::UnitX(), Vector3d::UnitZ(), {.reach_mm = reach});
    CHECK_FALSE(s.closed);
    CHECK(s.length_mm >= reach);
    const Vector3d last = s.points.back().at - s.points[s.points.size() - 2].at;
    CHECK(s.length_mm - last.norm() < reach);
  }
  for (const size_t corner : {20U, 55U}) {
    const Vector3d place = 0.3 * whole.points[corner].at + 0.7 * whole.points[corner + 1].at;
    const Section s = follow_section(ball, start, Vector3d::UnitX(), Vector3d::UnitZ(), {.until = place});
    CHECK(s.points.size() == corner + 2);
  }
}

TEST_CASE("a section goes straight on over a hole no wider than it may bridge, and else ends at the rim") {
  const Surface skin = strip_with_hole(12);
  const SurfacePoint start = on_skin(skin, {5, 14, 0});
  const auto along = [&](double bridge_mm) {
    return follow_section(skin, start, Vector3d::UnitY(), Vector3d::UnitX(), {.bridge_mm = bridge_mm});
  };
  // The strip is flat, so the way from x = 5 to the strip's end at 100 is 95 mm, and to the hole 39.
  const Section over = along(12.5);
  CHECK(over.reached_border);
  CHECK(over.length_mm == Approx(95).epsilon(1e-12));
  CHECK(over.points.back().at.x() == Approx(100));
  CHECK((over.points.back().at - Vector3d(100, 14, 0)).norm() < 1e-9);
  for (const double bridge_mm : {11.5, 0.0}) {
    const Section to_rim = along(bridge_mm);
    CHECK(to_rim.reached_border);
    CHECK_FALSE(to_rim.closed);
    CHECK(to_rim.length_mm == Approx(39).epsilon(1e-12));
  }
}

TEST_CASE("a plane that lies in a flat skin has no line to follow, and says so") {
  const Surface skin = plate(false);
  // Zero counts as above, so the plate's own plane crosses none of its faces.
  CHECK_THROWS_AS(follow_section(skin, on_skin(skin, {42, 31, 0}), Vector3d::UnitZ(), Vector3d::UnitX()),
                  GeometryError);
}

TEST_CASE("a section is cut off at a skin point on it, and at none that lies beside it") {
  const Surface ball = sphere(cut_sphere_mm, 6);
  const Vector3d pole(0, 0, cut_sphere_mm);
  const SurfacePoint start = on_skin(ball, {0, cut_sphere_mm, 0});
  const Section s = follow_section(ball, start, Vector3d::UnitX(), Vector3d::UnitZ());
  for (const double deg : {1.0, 30.0, 77.3, 170.0}) {
    const double t = deg * M_PI / 180;
    const SurfacePoint end = on_skin(ball, cut_sphere_mm * Vector3d(0, std::cos(t), std::sin(t)));
    const auto cut = cut_section(ball, s, end);
    REQUIRE_FALSE(cut.empty());
    CHECK((cut.front().at - s.points.front().at).norm() == 0);
    CHECK((cut.back().at - ball.position(end)).norm() == 0);
    CHECK((ball.position(cut.back().on_skin) - cut.back().at).norm() < 1e-6);
    CHECK(length_of(cut) == Approx(cut_sphere_mm * t).epsilon(1e-3));  // an arc of the great circle
  }
  CHECK_FALSE(cut_section(ball, s, on_skin(ball, {0.04, 0, cut_sphere_mm})).empty());
  CHECK(cut_section(ball, s, on_skin(ball, {0.06, 0, cut_sphere_mm})).empty());
}

TEST_CASE(
    "the length of a skin line in a plane is the straight way on a plate, the great circle's on a sphere") {
  const Surface flat = plate(false);
  const SurfacePoint a = on_skin(flat, {7, 11, 0}), b = on_skin(flat, {83, 64, 0});
  CHECK(section_length(flat, a, b) == Approx(std::hypot(76, 53)).epsilon(1e-9));
  const Surface ball = sphere(cut_sphere_mm, 6);
  std::mt19937 random(4);
  for (int i = 0; i < 10; ++i) {
    const SurfacePoint p = random_point(ball, random), q = random_point(ball, random);
    const Vector3d u = ball.position(p), w = ball.position(q);
    const double arc = cut_sphere_mm * std::atan2(u.cross(w).norm(), u.dot(w));
    CHECK(section_length(ball, p, q) == Approx(arc).epsilon(1e-3));
    CHECK(section_length(ball, q, p) == Approx(arc).epsilon(1e-3));
  }
}

TEST_CASE("no plane's line leads over missing skin, nor from a point to itself") {
  const Surface holed = plate(true);
  CHECK(std::isinf(section_length(holed, on_skin(holed, {20, 50, 0}), on_skin(holed, {80, 50, 0}))));
  const SurfacePoint a = on_skin(holed, {20, 50, 0});
  CHECK(std::isinf(section_length(holed, a, a)));
}

TEST_CASE("a plane's line is a path, and nearly the shortest") {
  const Surface smooth = sphere(100, 5, {0.75, 0.95, 0.85});
  std::vector<Vector3d> bumpy = smooth.vertices();
  // Hollows and knobs of a few millimetres, as ears and brows have.
  for (Vector3d& v : bumpy)
    v *= 1 + 0.03 * std::sin(v.x() / 7) * std::sin(v.y() / 9 + 1) * std::sin(v.z() / 8 + 2);
  for (const Surface& skin : {sphere(100, 4, {0.75, 0.95, 0.85}), smooth.moved(bumpy)}) {
    CAPTURE(skin.triangles().size());
    std::mt19937 random(6);
    double longer = 0, over = 0;
    for (int i = 0; i < 20; ++i) {
      const SurfacePoint a = random_point(skin, random), b = random_point(skin, random);
      const double line = section_length(skin, a, b);
      if (!std::isfinite(line)) continue;
      const double shortest = shortest_path(skin, a, b).length_mm;
      CHECK(line >= shortest * (1 - 1e-12));
      longer += line - shortest;
      over += shortest;
    }
    CAPTURE(longer / over);
    CHECK(over > 1000);
    CHECK(longer < 0.02 * over);
  }
}

TEST_CASE("the nearest place on a line is inside a stretch or at an end, whichever is nearer") {
  const std::vector<Vector3d> line{{0, 0, 0}, {10, 0, 0}, {10, 10, 0}, {10, 10, 0}, {0, 10, 0}};
  const auto point = [&](size_t i) { return line[i]; };
  const OnLine beside = nearest_on_line(0, 4, point, {4, -3, 0});
  CHECK(beside.segment == 0);
  CHECK(beside.t == Approx(0.4));
  CHECK(beside.distance == Approx(3));
  const OnLine corner = nearest_on_line(0, 4, point, {13, -4, 0});
  CHECK(corner.distance == Approx(5));
  const OnLine top = nearest_on_line(0, 4, point, {2.5, 12, 0});
  CHECK(top.segment == 3);
  CHECK(top.t == Approx(0.75));
  // Only the stretches asked for count.
  CHECK(nearest_on_line(0, 1, point, {10, 10, 0}).distance == Approx(10));
}

TEST_CASE("a place between two corners of a section lies in the face that both are in") {
  const Surface egg = sphere(1, 4, {76, 97, 88});
  const SurfacePoint start{100, {0.2, 0.3, 0.5}};
  const Vector3d from = egg.position(start), normal = from.unitOrthogonal();
  const Section s = follow_section(egg, start, normal, normal.cross(from));
  for (size_t i = 0; i + 1 < s.points.size(); ++i) {
    const SectionPoint p = between(egg, s.points, i, 0.3);
    REQUIRE((p.at - 0.7 * s.points[i].at - 0.3 * s.points[i + 1].at).norm() < 1e-12);
    REQUIRE((egg.position(p.on_skin) - p.at).norm() < 1e-9);
    REQUIRE(p.on_skin.face == s.points[i + 1].on_skin.face);
  }
  CHECK((between(egg, s.points, 3, -0.5).at - s.points[3].at).norm() == 0);
  CHECK((between(egg, s.points, 3, 1.5).at - s.points[4].at).norm() == 0);
}
