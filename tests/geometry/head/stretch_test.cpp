#include "geometry/head/stretch.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>

#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Matrix3d;
using Eigen::Vector3d;

namespace {

/// Breadth, length and height: some within 15 % of what they were, some at the limit of what is accepted (one
/// half as much again as another).
std::vector<Vector3d> some_factors() {
  const double more = std::sqrt(1.5), less = 1 / more;
  return {{0.85, 1, 1.15}, {1.15, 0.85, 1},    {1, 1.15, 0.85},   {1.1, 1.1, 0.9},
          {more, less, 1}, {less, more, more}, {less, less, more}};
}

/// Where a place goes when everything is scaled with the cranium.
Vector3d with_cranium(const Head& head, const Vector3d& p, const Vector3d& factors) {
  const HeadAxes& axes = head.axes();
  const Vector3d off = p - axes.origin;
  return axes.origin + factors.x() * off.dot(axes.right) * axes.right +
         factors.y() * off.dot(axes.front) * axes.front + factors.z() * off.dot(axes.up) * axes.up;
}

/// Places all about a head.
template <class Visit>
void for_places(double apart_mm, const Visit& visit) {
  for (double x = -120; x <= 120; x += apart_mm)
    for (double y = -140; y <= 150; y += apart_mm)
      for (double z = -150; z <= 150; z += apart_mm) visit(Vector3d(x, y, z));
}

}  // namespace

TEST_CASE("equal factors scale every place alike, and factors of one leave it where it is") {
  const Head head = lopsided_head(4);
  const Stretch stretch(head);
  for (const double k : {0.8, 1.0, 1.3})
    for_places(31, [&](const Vector3d& p) {
      const Vector3d wanted = head.axes().origin + k * (p - head.axes().origin);
      REQUIRE((stretch.moved(p, {k, k, k}) - wanted).norm() < 1e-9);
    });
}

TEST_CASE("the four points and the top and back of the head move as the cranium does") {
  const Head head = lopsided_head(5);
  const Stretch stretch(head);
  const Fiducials& at = head.fiducials().at;
  const auto& axes = head.axes();
  for (const Vector3d& factors : some_factors()) {
    CAPTURE(factors.transpose());
    for (const Vector3d& p : {at.nasion, at.inion, at.left_tragus, at.right_tragus})
      CHECK((stretch.moved(p, factors) - with_cranium(head, p, factors)).norm() < 1e-9);
    for (const Vector3d& off : {Vector3d(0, -20, 100), Vector3d(40, -40, 95), Vector3d(0, -98, 40)}) {
      const Vector3d p = axes.origin + off.x() * axes.right + off.y() * axes.front + off.z() * axes.up;
      CHECK((stretch.moved(p, factors) - with_cranium(head, p, factors)).norm() < 1e-9);
    }
    const Head stretched = stretch.stretched(factors, head.vertex());
    CHECK((stretched.fiducials().at.nasion - with_cranium(head, at.nasion, factors)).norm() < 1e-9);
    for (const Vector3d& p : {stretched.fiducials().at.nasion, stretched.fiducials().at.right_tragus})
      CHECK((stretched.skin().position(stretched.skin().closest(p)) - p).norm() < 1e-9);
    CHECK((stretched.fiducials().at.left_tragus - with_cranium(head, at.left_tragus, factors)).norm() < 1e-9);
  }
}

TEST_CASE(
    "face and ears keep their shape: about nasion and tragi all directions scale by the factors' mean") {
  const Head head = sphere_head(96, 4);  // nasion to inion as long as on the head the parts were measured on
  const Stretch stretch(head);
  const Fiducials& at = head.fiducials().at;
  for (const Vector3d& factors : some_factors()) {
    CAPTURE(factors.transpose());
    const double mean = std::cbrt(factors.prod());
    const auto alike = [&](const Vector3d& part, const Vector3d& off) {
      const Vector3d moved = stretch.moved(part + off, factors) - stretch.moved(part, factors);
      return (moved - mean * off).norm() < 1e-9;
    };
    // The eyes' outer corners, the tip of the nose and the chin; an ear's rim, top and lobe (mm).
    for (const Vector3d& off : {Vector3d(33, -20, 0), Vector3d(-33, -20, 0), Vector3d(0, 25, -35),
                                Vector3d(0, 0, -110), Vector3d(0, -20, 5)})
      CHECK(alike(at.nasion, off));
    for (const double side : {-1.0, 1.0})
      for (const Vector3d& off : {Vector3d(side * 15, -35, 0), Vector3d(side * 10, -10, 36),
                                  Vector3d(side * 5, 5, -33), Vector3d(-side * 25, -20, 0)})
        CHECK(alike(side < 0 ? at.left_tragus : at.right_tragus, off));
  }
}

TEST_CASE("what is symmetric stays symmetric, and left and right change places with the mirror") {
  const Head head = sphere_head(90, 4);
  const Stretch stretch(head);
  const auto mirrored = [](const Vector3d& p) { return Vector3d(-p.x(), p.y(), p.z()); };
  for (const Vector3d& factors : some_factors())
    for_places(23, [&](const Vector3d& p) {
      REQUIRE((stretch.moved(mirrored(p), factors) - mirrored(stretch.moved(p, factors))).norm() < 1e-9);
    });
}

TEST_CASE("a head turned, shifted or grown is stretched as the same head") {
  const Head head = lopsided_head(4);
  Eigen::Affine3d motion = Eigen::Affine3d::Identity();
  motion.translate(Vector3d(-30, 400, 12))
      .rotate(Eigen::AngleAxisd(2.1, Vector3d(2, -1, 1).normalized()))
      .scale(1.21);
  const Stretch stretch(head), other(moved_head(head, motion));
  for (const Vector3d& factors : some_factors())
    for_places(37, [&](const Vector3d& p) {
      REQUIRE((other.moved(motion * p, factors) - motion * stretch.moved(p, factors)).norm() < 1e-6);
    });
}

TEST_CASE("every corner of a stretched skin lies where its place goes") {
  const Head head = lopsided_head(4);
  const Stretch stretch(head);
  for (const Vector3d& factors : some_factors()) {
    const Head stretched = stretch.stretched(factors, head.vertex());
    REQUIRE(stretched.skin().triangles() == head.skin().triangles());
    for (size_t v = 0; v < head.skin().vertices().size(); ++v)
      REQUIRE((stretched.skin().vertices()[v] - stretch.moved(head.skin().vertices()[v], factors)).norm() <
              1e-9);
  }
}

TEST_CASE("the passage between face and cranium has no jump in slope", "[slow]") {
  // Where slopes jump by s, second differences over a step h are s h; where they change smoothly, of the
  // order of h2. The passages are half a hundred millimetres long and shift by some tens, so a smooth one
  // stays far below.
  const Head head = sphere_head(96, 4);
  const Stretch stretch(head);
  constexpr double step_mm = 0.02;
  for (const Vector3d& factors : some_factors()) {
    CAPTURE(factors.transpose());
    double worst = 0;
    for (const Vector3d& way : {Vector3d(1, 0, 0), Vector3d(0, 1, 0), Vector3d(0, 0, 1)})
      for (const Vector3d& through : {Vector3d(20, 70, 5), Vector3d(60, 30, -20), Vector3d(80, -10, 10)})
        for (double t = -150; t <= 150; t += step_mm) {
          const Vector3d p = through + t * way, d = step_mm * way;
          const Vector3d bend =
              stretch.moved(p + d, factors) - 2 * stretch.moved(p, factors) + stretch.moved(p - d, factors);
          worst = std::max(worst, bend.norm() / step_mm);
        }
    CHECK(worst < 0.01);
  }
}

TEST_CASE("stretching moves every place of space to one of its own: nothing folds, up to the limit accepted",
          "[slow]") {
  // A smooth map that tends to infinity with its argument is one to one if its determinant is positive
  // everywhere (Hadamard's global inverse function theorem). Ours is affine but for the head's surroundings.
  const Head head = lopsided_head(4);
  const Stretch stretch(head);
  constexpr double step_mm = 1e-3;
  for (const Vector3d& factors : some_factors()) {
    CAPTURE(factors.transpose());
    double least = 1e9;
    for_places(11, [&](const Vector3d& p) {
      Matrix3d slope;
      for (int k = 0; k < 3; ++k) {
        const Vector3d d = step_mm * Vector3d::Unit(k);
        slope.col(k) = (stretch.moved(p + d, factors) - stretch.moved(p - d, factors)) / (2 * step_mm);
      }
      least = std::min(least, slope.determinant() / factors.prod());
    });
    CHECK(least > 0.25);
  }
}
