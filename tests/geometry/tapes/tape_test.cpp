#include "geometry/tapes/tape.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/surface/section.h"
#include "tests/support/shapes.h"

using namespace scalpmark::geometry;
using Eigen::Vector3d;
using scalpmark::tests::sphere;

namespace {

constexpr double radius = 90;

SurfacePoint on(const Surface& s, const Vector3d& q) {
  return s.closest(q);
}

}  // namespace

TEST_CASE("a tape over a sphere is a great circle's arc, and its fractions are equal arcs") {
  const Surface ball = sphere(radius, 6);
  const Tape tape =
      Tape::over(ball, on(ball, {0, radius, 0}), on(ball, {0, 0, radius}), on(ball, {0, -radius, 0}));
  CHECK(tape.length_mm() == Approx(M_PI * radius).epsilon(2e-4));
  for (const double f : {0.0, 0.1, 0.25, 0.5, 0.77, 1.0}) {
    const SectionPoint p = tape.at(f);
    const double angle = std::atan2(p.at.z(), p.at.y());
    CHECK(angle == Approx(f * M_PI).margin(1e-4));
    CHECK(tape.fraction_of(p.at) == Approx(f).margin(1e-9));
    CHECK((ball.position(p.on_skin) - p.at).norm() < 1e-9);
  }
}

TEST_CASE("a tape runs on the side of its third point, whichever way round") {
  const Surface ball = sphere(radius, 5);
  const auto front = on(ball, {0, radius, 0}), back = on(ball, {1, -radius, 0});
  const Tape left = Tape::over(ball, front, on(ball, {-radius, 5, 0}), back);
  const Tape right = Tape::over(ball, front, on(ball, {radius, 5, 0}), back);
  CHECK(left.at(0.5).at.x() < -80);
  CHECK(right.at(0.5).at.x() > 80);
  const Tape back_to_front = Tape::over(ball, back, on(ball, {-radius, 5, 0}), front);
  CHECK(back_to_front.length_mm() == Approx(left.length_mm()).epsilon(1e-9));
}

// Closed form: an ellipse's quarter arc is a E(k), k2 = 1 - b2 / a2 (complete elliptic integral of the second
// kind, ISO C++17 std::comp_ellint_2).
TEST_CASE("tapes over an ellipsoid are elliptic integrals") {
  const double a = 97, c = 88;
  const Surface egg = sphere(1, 7, {76, a, c});
  const Tape tape = Tape::over(egg, on(egg, {0, a, 0}), on(egg, {0, 0, c}), on(egg, {0, -a, 0}));
  CHECK(tape.length_mm() == Approx(2 * a * std::comp_ellint_2(std::sqrt(1 - c * c / (a * a)))).margin(0.05));
  // Incomplete: from the front (0, a) through parameter t the arc is a (E(pi/2) - E(pi/2 - t, k)).
  const double k = std::sqrt(1 - c * c / (a * a));
  const double t = 0.9;
  const double arc = a * (std::comp_ellint_2(k) - std::ellint_2(k, M_PI / 2 - t));
  const SectionPoint p = tape.at_mm(arc);
  CHECK(p.at.y() == Approx(a * std::cos(t)).margin(0.05));
  CHECK(p.at.z() == Approx(c * std::sin(t)).margin(0.05));
}

TEST_CASE("a taut tape bridges a hollow: its length is the convex hull's, its points stay on the skin") {
  // A ball with a dent at the top: pushed in by up to 12 mm within 35 mm of the pole.
  const Surface ball = sphere(radius, 6);
  std::vector<Vector3d> dented = ball.vertices();
  for (auto& v : dented) {
    const double r = std::hypot(v.x(), v.y());
    if (v.z() > 0 && r < 35) v.z() -= 12 * std::pow(std::cos(M_PI / 2 * r / 35), 2);
  }
  const Surface skin = ball.moved(dented);
  const Tape tape =
      Tape::over(skin, on(skin, {0, radius, 0}), on(skin, {0, 0, radius - 12}), on(skin, {0, -radius, 0}));
  const Section under = follow_section(skin, on(skin, {0, radius, 0}), Vector3d::UnitX(), Vector3d::UnitZ());
  // The hull by brute force: the profile's highest support, point by point.
  std::vector<Vector3d> line = tape.line();
  for (size_t i = 2; i < line.size(); ++i) {
    const Vector3d u = line[i - 1] - line[i - 2], w = line[i] - line[i - 1];
    CHECK(u.cross(w).x() >= -1e-9);  // never turns up
  }
  for (const auto& p : under.points)
    if (p.at.z() > 0)
      for (size_t i = 1; i < line.size(); ++i) {
        const Vector3d edge = line[i] - line[i - 1];
        CHECK((p.at - line[i - 1]).cross(edge).x() <= 1e-6 * edge.norm());  // no skin above the tape
      }
  CHECK(tape.length_mm() < 0.5 * under.length_mm - 1);
  const SectionPoint middle = tape.at(0.5);
  CHECK(middle.at.z() == Approx(radius - 12).margin(0.1));
  CHECK((skin.position(middle.on_skin) - middle.at).norm() < 1e-9);
}

TEST_CASE("a length along the parasagittal line of a sphere is an arc of the small circle", "[slow]") {
  const Surface ball = sphere(radius, 7);
  const double x = -48;
  const double r = std::sqrt(radius * radius - x * x);
  for (const double mm : {10.0, 50.0, 60.0, 100.0}) {
    const Tape tape = Tape::along(ball, on(ball, {x, 0, r}), Vector3d::UnitX(), Vector3d::UnitY(), mm);
    const Vector3d end = tape.at(1).at;
    CHECK(tape.length_mm() == Approx(mm).margin(1e-6));
    CHECK(end.x() == Approx(x).margin(1e-6));
    CHECK(std::atan2(end.y(), end.z()) * r == Approx(mm).margin(0.03));
  }
  CHECK(Tape::along(ball, on(ball, {x, 0, r}), Vector3d::UnitX(), Vector3d::UnitY(), 0).length_mm() == 0);
}

TEST_CASE("a tape crosses a small hole in the skin and is refused where the skin is missing") {
  const Surface ball = sphere(radius, 6);
  const auto without = [&](const auto& gone) {
    std::vector<Triangle> kept;
    for (const auto& t : ball.triangles()) {
      const Vector3d m = (ball.vertex(t[0]) + ball.vertex(t[1]) + ball.vertex(t[2])) / 3;
      if (m.z() < 0 || !gone(m)) kept.push_back(t);
    }
    return Surface(ball.vertices(), kept);
  };
  const Surface holed = without([](const Vector3d& m) { return std::hypot(m.x(), m.y() - 30) < 8; });
  REQUIRE(holed.borders().size() == 1);
  const Tape tape =
      Tape::over(holed, on(holed, {0, radius, 0}), on(holed, {0, 0, radius}), on(holed, {0, -radius, 0}));
  CHECK(tape.length_mm() == Approx(M_PI * radius).margin(0.6));
  const Surface open =
      without([](const Vector3d& m) { return std::abs(m.y()) < 45; });  // no bridge over the top
  CHECK_THROWS_AS(
      Tape::over(open, on(open, {0, radius, 0}), on(open, {0, 0, radius}), on(open, {0, -radius, 0})),
      GeometryError);
  CHECK_THROWS_WITH(
      Tape::over(ball, on(ball, {0, radius, 0}), on(ball, {0, radius, 0}), on(ball, {0, -radius, 0})),
      Catch::Contains("one line"));
}
