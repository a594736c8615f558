#include "geometry/plan/placement.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "geometry/base/error.h"
#include "geometry/surface/patch_normal.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

Case case_of_ball() {
  Case c;
  c.coil.model = flat_coil();
  use_one_rule(c, MarkRule::tape);
  return c;
}

/// Where tape distances are not the question, they need not be worked out.
Placement lay(const Head& head, const Case& c, Side side, const SurfacePoint& pulse) {
  return place_coil(head, c.coil, side, pulse, TapeDistances::left_out);
}

SurfacePoint at(const Head& head, double x, double y, double z) {
  return head.skin().closest(90 * Vector3d(x, y, z).normalized());
}

}  // namespace

// Closed forms for a flat coil tangent to a sphere of radius R with its edge d from its centre: the tape mark
// lies an arc d away, the drop mark R asin(d / R), the nearest mark R atan(d / R); the edge hovers R -
// sqrt(R2 - d2) over the drop mark and sqrt(R2 + d2) - R over the nearest (elementary geometry). R = 90, d =
// 60: 60.0, 65.7, 52.9 mm; gaps 22.9 and 18.2 mm.
TEST_CASE("the three marks on a sphere lie where the closed forms say") {
  const double R = 90, d = 60;
  for (const double angle : {45.0, 0.0, -30.0, 135.0})
    for (const auto& where : {at(ball(), -0.5, 0.1, 0.8), at(ball(), 0.45, 0.5, 0.7)}) {
      Case c = case_of_ball();
      c.coil.angle_deg = angle;
      c.coil.centre_to_edge_mm = d;
      const Placement p = lay(ball(), c, Side::left, where);
      REQUIRE(p.edge_mark.tape);
      REQUIRE(p.edge_mark.drop);
      REQUIRE(p.edge_mark.nearest);
      CHECK(arc_mm(p.pulse, *p.edge_mark.tape) == Approx(d).margin(0.03));
      CHECK(arc_mm(p.pulse, *p.edge_mark.drop) == Approx(R * std::asin(d / R)).margin(0.05));
      // The nearest point slides over facets of 1.3 mm as the normal turns: within a tenth of a facet.
      CHECK(arc_mm(p.pulse, *p.edge_mark.nearest) == Approx(R * std::atan(d / R)).margin(0.15));
      CHECK(*p.drop_gap_mm == Approx(R - std::sqrt(R * R - d * d)).margin(0.05));
      CHECK(*p.nearest_gap_mm == Approx(std::sqrt(R * R + d * d) - R).margin(0.05));
      CHECK(p.normal.dot(p.pulse.normalized()) > std::cos(0.05 * M_PI / 180));
      CHECK(p.lift_mm < 0.02);  // only the mesh's facets stand between the coil and the ball
      // All three marks lie in the plane of the normal and the front axis.
      const Vector3d across = p.normal.cross(p.front);
      for (const auto& m : {p.edge_mark.tape, p.edge_mark.drop, p.edge_mark.nearest})
        CHECK(std::abs((*m - p.pulse).dot(across)) < 0.1);
    }
}

TEST_CASE("the coil's angle is measured from forward, positive toward the midline, on both sides") {
  Case c = case_of_ball();
  c.coil.angle_deg = 45;
  const Placement left = lay(ball(), c, Side::left, at(ball(), -0.5, 0.1, 0.85));
  const Placement right = lay(ball(), c, Side::right, at(ball(), 0.5, 0.1, 0.85));
  CHECK(left.front.y() > 0.5);  // front edge forward
  CHECK(left.front.x() > 0.3);  // and toward the midline
  CHECK(right.front.y() > 0.5);
  CHECK(right.front.x() < -0.3);
  CHECK(std::acos(left.front.dot(left.forward)) * 180 / M_PI == Approx(45).margin(1e-9));
  CHECK(std::acos(left.front.dot(left.inward)) * 180 / M_PI == Approx(45).margin(1e-9));
  CHECK(std::abs(left.forward.dot(ball().axes().right)) < 1e-9);  // parasagittal
  // The right side mirrors the left.
  CHECK((Vector3d(-right.edge.x(), right.edge.y(), right.edge.z()) - left.edge).norm() < 0.02);
  CHECK((Vector3d(-right.edge_mark.tape->x(), right.edge_mark.tape->y(), right.edge_mark.tape->z()) -
         *left.edge_mark.tape)
            .norm() < 0.05);
}

TEST_CASE("tape distances on a sphere are great-circle arcs", "[slow]") {
  Case c = case_of_ball();
  const Placement p = place_coil(ball(), c.coil, Side::left, at(ball(), -0.4, 0.4, 0.8));
  const auto& f = ball().fiducials().at;
  const Vector3d top(0, 0, 90);
  CHECK(p.pulse_tape->vertex_mm == Approx(arc_mm(p.pulse, top)).margin(0.03));
  CHECK(p.pulse_tape->nasion_mm == Approx(arc_mm(p.pulse, f.nasion)).margin(0.03));
  CHECK(p.pulse_tape->left_tragus_mm == Approx(arc_mm(p.pulse, f.left_tragus)).margin(0.03));
  CHECK(p.pulse_tape->right_tragus_mm == Approx(arc_mm(p.pulse, f.right_tragus)).margin(0.05));
  REQUIRE(p.edge_mark_tape);
  CHECK(p.edge_mark_tape->vertex_mm == Approx(arc_mm(*p.edge_mark.tape, top)).margin(0.03));
}

TEST_CASE("the inverse returns: mark to pulse to mark, for each rule, within 0.05 mm") {
  const Head lop = lopsided_head(6);
  std::mt19937 random(11);
  std::uniform_real_distribution<double> u(0, 1);
  for (const MarkRule rule : {MarkRule::tape, MarkRule::drop, MarkRule::nearest})
    for (int i = 0; i < 12; ++i) {
      Case c = case_of_ball();
      use_one_rule(c, rule);
      c.coil.angle_deg = -90 + 180 * u(random);
      c.coil.centre_to_edge_mm = 30 + 35 * u(random);
      const Side side = i % 2 ? Side::left : Side::right;
      const double x = (side == Side::left ? -1 : 1) * (0.1 + 0.5 * u(random));
      const SurfacePoint mark = lop.skin().closest(lopsided(Vector3d(x, -0.4 + 0.9 * u(random), 0.8)));
      const Placement p = place_by_mark(lop, c.coil, side, mark, TapeDistances::left_out);
      REQUIRE(p.edge_mark.by(rule));
      INFO("rule " << static_cast<int>(rule) << ", angle " << c.coil.angle_deg << ", d "
                   << c.coil.centre_to_edge_mm);
      CHECK((*p.edge_mark.by(rule) - lop.skin().position(mark)).norm() < 0.05);
    }
}

TEST_CASE("lift for cap and hair raises the face and nothing else of the tape mark") {
  Case c = case_of_ball();
  const auto where = at(ball(), -0.5, 0.1, 0.85);
  const Placement bare = lay(ball(), c, Side::left, where);
  c.coil.lift_mm = 6;
  const Placement capped = lay(ball(), c, Side::left, where);
  CHECK(capped.lift_mm == Approx(bare.lift_mm + 6));
  CHECK((*capped.edge_mark.tape - *bare.edge_mark.tape).norm() < 1e-9);
  CHECK((*capped.edge_mark.drop - *bare.edge_mark.drop).norm() < 1e-6);
  CHECK(*capped.drop_gap_mm == Approx(*bare.drop_gap_mm + 6));
  // Nearest: from R + 6 up, the edge's skin point moves in to R atan(d / (R + 6)).
  CHECK(arc_mm(capped.pulse, *capped.edge_mark.nearest) == Approx(90 * std::atan(60.0 / 96)).margin(0.15));
}

TEST_CASE("no part of the coil is inside the head: a bump lifts it by exactly what is in the way") {
  // A ball with a bump 9 mm high, 40 mm from where the coil is centred.
  const Surface smooth = sphere(90, 7);
  std::vector<Vector3d> moved = smooth.vertices();
  const Vector3d bump = 90 * Vector3d(std::sin(40.0 / 90), 0, std::cos(40.0 / 90));
  for (auto& v : moved) v += v.normalized() * 24 * std::exp(-(v - bump).squaredNorm() / (2 * 7 * 7));
  const Surface skin = smooth.moved(moved);
  const Coil coil = flat_coil();
  CoilPose pose;
  pose.pulse = {0, 0, 90};
  const double lift = clearing_lift(skin, coil, pose);
  // Against every vertex under the outline, one by one: the lift clears them all and touches one.
  double highest = 0;
  for (const auto& v : skin.vertices()) {
    if (v.z() < 0 || std::abs(v.x()) > 85 || std::abs(v.y()) > 60) continue;
    highest = std::max(highest, v.z() - 90);
  }
  CHECK(highest > 3);
  CHECK(lift >= highest - 1e-9);
  CHECK(lift < highest + 0.05);
  // Out of the outline's reach the bump does not matter.
  pose.front = Vector3d::UnitX();
  Coil narrow = coil;
  narrow.parts[0].outline = {{-20, -20}, {20, -20}, {20, 20}, {-20, 20}};
  CHECK(clearing_lift(skin, narrow, pose) < 0.01);
}

TEST_CASE("a contact patch follows the head, not its smallest bumps") {
  const Surface smooth = sphere(90, 7);
  std::mt19937 random(3);
  std::normal_distribution<double> noise(0, 0.15);
  std::vector<Vector3d> rough = smooth.vertices();
  for (auto& v : rough) v += v.normalized() * noise(random);
  const Surface skin = smooth.moved(rough);
  double worst_face = 0, worst_patch = 0;
  for (int i = 0; i < 40; ++i) {
    const Vector3d q(std::cos(i), std::sin(i), 1.2);
    const SurfacePoint p = skin.closest(90 * q.normalized());
    const auto off_deg = [&](const Vector3d& n) {
      return std::acos(std::min(1.0, n.dot(q.normalized()))) * 180 / M_PI;
    };
    worst_face = std::max(worst_face, off_deg(skin.face_normal(p.face)));
    worst_patch = std::max(worst_patch, off_deg(patch_normal(skin, p, 15)));
  }
  CHECK(worst_face > 5);
  CHECK(worst_patch < 1);
}

TEST_CASE("a mark over the face or past the skin's end is left empty, never invented") {
  Case c = case_of_ball();
  c.coil.angle_deg = 0;
  const Head head(sphere(1, 6, {76, 97, 92}), {{0, 93, 24}, {0, -95, 10}, {-75, 0, -10}, {75, 0, -10}});
  const Placement p = lay(head, c, Side::left, head.skin().closest({-20, 90, 45}));
  CHECK_FALSE(p.edge_mark.tape);
  CHECK_FALSE(p.edge_mark.drop);
  CHECK_FALSE(p.edge_mark_tape);
  CHECK_THROWS_AS(place_by_mark(head, c.coil, Side::left, head.skin().closest({0, 80, -60})), GeometryError);
}
