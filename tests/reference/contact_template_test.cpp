// No part of a coil inside a real head: against a sampler that knows nothing of the contact's own method.
#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "geometry/coil/contact.h"
#include "geometry/coil/underside.h"
#include "geometry/head/landmarks.h"
#include "geometry/plan/placement.h"
#include "models/coils/coil_library.h"
#include "tests/support/template_head.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// Points all over the skin near a place: corners and, in each triangle, some within.
std::vector<Vector3d> skin_points(const Surface& skin, const Vector3d& near, double reach_mm) {
  std::mt19937 random(8);
  std::uniform_real_distribution<double> u(0, 1);
  std::vector<Vector3d> points;
  for (int f = 0; f < static_cast<int>(skin.triangles().size()); ++f) {
    if ((skin.corner(f, 0) - near).norm() > reach_mm) continue;
    for (int k = 0; k < 3; ++k) points.push_back(skin.corner(f, k));
    for (int i = 0; i < 6; ++i) {
      double a = u(random), b = u(random);
      if (a + b > 1) {
        a = 1 - a;
        b = 1 - b;
      }
      points.push_back((1 - a - b) * skin.corner(f, 0) + a * skin.corner(f, 1) + b * skin.corner(f, 2));
    }
  }
  return points;
}

/// How deep the deepest of the points lies inside the coil's solid (as drawn flat, then bent), mm: the way
/// out through the underside. Negative: the nearest lies so far below an underside.
double deepest(const Coil& coil, const Contact& c, const std::vector<Vector3d>& points) {
  const Vector3d right = c.pose.right(), origin = c.pose.pulse + c.lift_mm * c.pose.normal;
  double most = -1e9;
  for (const Vector3d& q : points) {
    const Vector3d d = q - origin;
    const Vector3d in_coil(d.dot(right), d.dot(c.pose.front), d.dot(c.pose.normal));
    for (const CoilPart& part : coil.parts) {
      const Vector3d flat = bent(in_coil, -part.bend_deg);
      if (flat.z() > part.top_mm || !within(part.outline, flat.head<2>())) continue;
      most = std::max(most, flat.z() - part.bottom_mm);
    }
  }
  return most;
}

}  // namespace

TEST_CASE("no part of any coil is inside the template head, and every coil touches it") {
  const Head& head = tests::template_head();
  for (const Coil& coil : models::coils())
    for (const char* site : {"C3", "F3", "Fz", "P4", "T7", "FT8", "AF7"}) {
      INFO(coil.model << " on " << site);
      Case c;
      c.coil.model = coil;
      c.coil.centre_to_edge_mm = coil.centre_to_edge_mm;
      const auto at = landmark(head, site);
      REQUIRE(at);
      const Side side = at->at.dot(head.axes().right) < 0 ? Side::left : Side::right;
      const Placement p = place_coil(head, c.coil, side, at->on_skin, TapeDistances::left_out);
      const Contact found = contact(head, c.coil, p.pose());
      CHECK(found.lift_mm == Approx(p.lift_mm).margin(1e-6));
      const double depth = deepest(coil, found, skin_points(head.skin(), p.pulse, 260));
      CHECK(depth < 0.05);
      CHECK(depth > -0.3);  // as near as points a few tenths of a millimetre apart tell
      CHECK_FALSE(found.touches.empty());
      for (const Touch& t : found.touches)
        CHECK((head.skin().position(head.skin().closest(t.skin)) - t.skin).norm() < 0.01);
    }
}
