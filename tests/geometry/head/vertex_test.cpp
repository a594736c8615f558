#include "geometry/head/vertex.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

/// The ellipsoid with the four points at the ends of its axes in the plane of the tragi.
Head egg(const Vector3d& semi_axes, int level) {
  const double a = semi_axes.x(), b = semi_axes.y();
  return {sphere(1, level, semi_axes), {{0, b, 0}, {0, -b, 0}, {-a, 0, 0}, {a, 0, 0}}};
}

}  // namespace

// Klem et al. 1999: the vertex is half way on both tapes at once.
TEST_CASE("the vertex halves both tapes on a lopsided head") {
  const Head head = lopsided_head();
  const VertexTapes& tapes = head.vertex_tapes();
  const Vector3d vertex = head.skin().position(head.vertex());
  CHECK(tapes.midline.fraction_of(vertex) == Approx(0.5).margin(1e-6));
  CHECK(tapes.coronal.fraction_of(vertex) == Approx(0.5).margin(1e-6));
  CHECK(std::abs(vertex.x()) > 0.5);  // it really is lopsided
}

TEST_CASE("wherever the search for the vertex begins, it ends at the same place") {
  const Head head = lopsided_head();
  const Vector3d vertex = head.skin().position(head.vertex());
  for (const Vector3d& from : {Vector3d(0, 60, 90), Vector3d(-50, -30, 80), Vector3d(60, 10, 60)}) {
    const auto found = find_vertex(head.skin(), head.fiducials(), head.skin().closest(from));
    CHECK((head.skin().position(found.vertex) - vertex).norm() < 1e-3);
  }
}

TEST_CASE("a search told to settle within less ends nearer") {
  const Head head = lopsided_head();
  const auto off = [&](double settled_mm) {
    const auto found =
        find_vertex(head.skin(), head.fiducials(), head.skin().closest({-50, -30, 80}), settled_mm);
    return std::abs(found.midline.fraction_of(head.skin().position(found.vertex)) - 0.5) *
           found.midline.length_mm();
  };
  CHECK(off(2) < 2);
  CHECK(off(1e-5) < 1e-4);
  CHECK(off(2) > 100 * off(1e-5));
}

// Closed form: half an ellipse is 2 a E(k), k2 = 1 - b2 / a2 (ISO C++17 std::comp_ellint_2); the vertex of a
// symmetric head is its top.
TEST_CASE("on an ellipsoid the vertex is the top, and the tapes are half ellipses") {
  const Vector3d s(76, 97, 88);
  const Head head = egg(s, 6);
  const auto half_mm = [](double a, double b) {
    return 2 * std::max(a, b) *
           std::comp_ellint_2(std::sqrt(1 - std::pow(std::min(a, b) / std::max(a, b), 2)));
  };
  CHECK((head.skin().position(head.vertex()) - Vector3d(0, 0, s.z())).norm() < 0.01);
  const TapeMeasures tapes = measure(head.skin(), head.vertex_tapes());
  CHECK(tapes.nasion_inion_mm == Approx(half_mm(s.y(), s.z())).margin(0.1));
  CHECK(tapes.tragus_tragus_mm == Approx(half_mm(s.x(), s.z())).margin(0.1));
}

// Klem et al. 1999: Fpz, T7, Oz and T8 lie at 10 % of the tapes, on a sphere 18 degrees over the four points,
// so the circumference is taken round a circle of radius R cos 18.
TEST_CASE("on the sphere the side tapes are the halves of the circle 18 degrees up") {
  const double R = 90, up = 18 * M_PI / 180;
  const Head head = sphere_head(R, 6);
  for (const bool left : {true, false}) {
    const Tape side = side_tape(head.skin(), head.vertex_tapes(), left);
    CHECK(side.length_mm() == Approx(M_PI * R * std::cos(up)).epsilon(5e-4));
    const Vector3d from = side.at(0).at, middle = side.at(0.5).at, to = side.at(1).at;
    CHECK((from - R * Vector3d(0, std::cos(up), std::sin(up))).norm() < 0.1);
    CHECK((middle - R * Vector3d((left ? -1 : 1) * std::cos(up), 0, std::sin(up))).norm() < 0.1);
    CHECK((to - R * Vector3d(0, -std::cos(up), std::sin(up))).norm() < 0.1);
  }
  const TapeMeasures tapes = measure(head.skin(), head.vertex_tapes());
  CHECK(tapes.circumference_mm == Approx(2 * M_PI * R * std::cos(up)).epsilon(5e-4));
  CHECK(tapes.nasion_inion_mm == Approx(M_PI * R).epsilon(5e-4));
  CHECK(tapes.tragus_tragus_mm == Approx(M_PI * R).epsilon(5e-4));
}

TEST_CASE("the vertex goes with the head through any rigid motion, and the tapes grow with it") {
  const Head head = lopsided_head(5);
  Eigen::Affine3d motion = Eigen::Affine3d::Identity();
  motion.translate(Vector3d(12, -40, 300))
      .rotate(Eigen::AngleAxisd(1.1, Vector3d(1, 2, -1).normalized()))
      .scale(1.07);
  const Head moved = moved_head(head, motion);
  CHECK((moved.skin().position(moved.vertex()) - motion * head.skin().position(head.vertex())).norm() < 1e-3);
  CHECK(moved.tapes().nasion_inion_mm == Approx(1.07 * head.tapes().nasion_inion_mm).margin(1e-3));
  CHECK(moved.tapes().tragus_tragus_mm == Approx(1.07 * head.tapes().tragus_tragus_mm).margin(1e-3));
  CHECK(moved.tapes().circumference_mm == Approx(1.07 * head.tapes().circumference_mm).margin(1e-3));
}

TEST_CASE("a skin that ends before the top has no vertex") {
  const Surface ball = sphere(90, 5);
  std::vector<Triangle> below;
  for (const Triangle& t : ball.triangles())
    if (ball.vertex(t[0]).z() < 40 && ball.vertex(t[1]).z() < 40 && ball.vertex(t[2]).z() < 40)
      below.push_back(t);
  const Surface bowl(ball.vertices(), below);
  const Fiducials at{{0, 90, 0}, {0, -90, 0}, {-90, 0, 0}, {90, 0, 0}};
  CHECK_THROWS_AS(find_vertex(bowl, place_fiducials(bowl, at), bowl.closest({0, 0, 90})), GeometryError);
}
