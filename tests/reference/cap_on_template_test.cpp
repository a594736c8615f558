#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <optional>
#include <vector>

#include "geometry/hands/cap.h"
#include "geometry/hands/cap_slip.h"
#include "geometry/head/vertex.h"
#include "tests/support/template_head.h"

// On a real head there is no closed form; what stands in for it is a copy of the brim's curve, moved corner
// by corner with a rotation and a ray of the test's own, and measured where it crosses the tapes.

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

constexpr double degree = M_PI / 180;

/// The rotation as three turns, one after another, in many small steps: no formula of the program's.
Vector3d turned(const HeadAxes& axes, const CapSlip& s, const Vector3d& arm) {
  constexpr int steps = 2000;
  Vector3d v = arm;
  for (int i = 0; i < steps; ++i) {
    v = Eigen::AngleAxisd(-s.forward_deg * degree / steps, axes.right) * v;
    v = Eigen::AngleAxisd(s.side_deg * degree / steps, axes.front) * v;
    v = Eigen::AngleAxisd(-s.turn_deg * degree / steps, axes.up) * v;
  }
  return v;
}

/// The brim's corners, turned and then met by a ray that comes from far outside.
std::vector<Vector3d> moved_brim(const Head& head, const Cap& cap, const CapSlip& slip) {
  std::vector<Vector3d> moved;
  for (const Vector3d& p : brim_line(head, cap)) {
    const Vector3d out = turned(head.axes(), slip, p - cap.sphere.centre).normalized();
    const auto hit = head.skin().ray_hit(cap.sphere.centre + 200 * out, -out);
    REQUIRE(hit);
    moved.push_back(head.skin().position(hit->point));
  }
  return moved;
}

/// Where the moved curve crosses a tape's plane on the wanted side of the head, as a length on the tape.
double crossing_mm(const std::vector<Vector3d>& curve, const Tape& tape, const Vector3d& across,
                   const Vector3d& on_plane, const Vector3d& side) {
  std::optional<double> mm;
  for (size_t i = 1; i < curve.size(); ++i) {
    const double a = (curve[i - 1] - on_plane).dot(across), b = (curve[i] - on_plane).dot(across);
    if ((a > 0) == (b > 0)) continue;
    const Vector3d at = curve[i - 1] + a / (a - b) * (curve[i] - curve[i - 1]);
    if ((at - on_plane).dot(side) > 0) mm = tape.fraction_of(at) * tape.length_mm();
  }
  REQUIRE(mm);
  return *mm;
}

BrimHeights measured(const Head& head, const std::vector<Vector3d>& curve) {
  const Fiducials& f = head.fiducials().at;
  const Vector3d top = head.skin().position(head.vertex());
  const VertexTapes& tapes = head.vertex_tapes();
  const Vector3d midplane = (f.nasion - top).cross(f.inion - top).normalized();
  const Vector3d earplane = (f.left_tragus - top).cross(f.right_tragus - top).normalized();
  const HeadAxes& x = head.axes();
  return {crossing_mm(curve, tapes.midline, midplane, top, x.front),
          crossing_mm(curve, tapes.coronal, earplane, top, -x.right),
          tapes.coronal.length_mm() - crossing_mm(curve, tapes.coronal, earplane, top, x.right),
          tapes.midline.length_mm() - crossing_mm(curve, tapes.midline, midplane, top, -x.front)};
}

}  // namespace

TEST_CASE("a moved copy of the brim lies as high over the four points as the slip says, and gives it back") {
  const Head& head = template_head();
  for (const double brim : {20.0, 25.0}) {
    const Cap cap = cap_on(head, brim);
    for (const CapSlip& slip : {CapSlip{}, CapSlip{3.5, 0, 0}, CapSlip{-4, 0, 0}, CapSlip{0, 5, 0},
                                CapSlip{0, -5, 0}, CapSlip{0, 0, 6}, CapSlip{3, -4, 5}, CapSlip{-5, 3, -8}}) {
      CAPTURE(brim, slip.forward_deg, slip.side_deg, slip.turn_deg);
      BrimReadings read;
      read.heights = measured(head, moved_brim(head, cap, slip));
      const BrimHeights said = brim_heights(head, cap, slip);
      CHECK(*said.nasion_mm == Approx(*read.heights.nasion_mm).margin(0.2));
      CHECK(*said.inion_mm == Approx(*read.heights.inion_mm).margin(0.2));
      CHECK(*said.left_tragus_mm == Approx(*read.heights.left_tragus_mm).margin(0.2));
      CHECK(*said.right_tragus_mm == Approx(*read.heights.right_tragus_mm).margin(0.2));

      // The arrow as a straight line between its moved ends.
      const Vector3d c = cap.sphere.centre, n = head.fiducials().at.nasion, up = head.axes().up;
      const Vector3d from = c + turned(head.axes(), slip, cap.front_at - c),
                     to = c + turned(head.axes(), slip, n - c);
      const double share = (from - n).dot(up) / (from - to).dot(up);
      read.arrow_mm = (from + share * (to - from) - n).dot(head.axes().right);
      const FoundSlip found = find_slip(head, cap, read);
      CHECK(std::abs(found.slip.forward_deg - slip.forward_deg) < 0.2);
      CHECK(std::abs(found.slip.side_deg - slip.side_deg) < 0.2);
      CHECK(std::abs(found.slip.turn_deg - slip.turn_deg) < 0.2);
      const double mm = cap.sphere.radius_mm * degree;
      CHECK(mm * std::abs(found.slip.forward_deg - slip.forward_deg) < 0.2);
      CHECK(mm * std::abs(found.slip.side_deg - slip.side_deg) < 0.2);
      CHECK(found.worst_mm < 0.3);
    }
  }
}

TEST_CASE(
    "the sphere under the cap of the template head is a skull's, and the brim lies above its ears' canals") {
  const Head& head = template_head();
  const Cap cap = cap_on(head, 20);
  // Half of the surveys' mean breadth and length, men and women, and of the vault's height: between 70 and
  // 105 mm for any adult (large anthropometric surveys, memory).
  CHECK(cap.sphere.radius_mm > 70);
  CHECK(cap.sphere.radius_mm < 105);
  const BrimHeights h = brim_heights(head, cap);
  INFO("radius " << cap.sphere.radius_mm << ", over left tragus " << *h.left_tragus_mm << ", right "
                 << *h.right_tragus_mm << ", inion " << *h.inion_mm);
  CHECK(*h.left_tragus_mm > 20);
  CHECK(*h.right_tragus_mm > 20);
}
