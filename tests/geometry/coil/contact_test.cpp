#include "geometry/coil/contact.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/coil/underside.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"
#include "tests/support/sentence.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

std::vector<Vector2d> disc(double radius, const Vector2d& centre = {0, 0}) {
  std::vector<Vector2d> outline;
  for (int i = 0; i < 90; ++i)
    outline.push_back(centre + radius * Vector2d(std::cos(i * M_PI / 45), std::sin(i * M_PI / 45)));
  return outline;
}

CoilSetup with(Coil coil) {
  CoilSetup c;
  c.model = std::move(coil);
  return c;
}

Coil flat_disc() {
  Coil coil;
  coil.parts = {{"casing", disc(60), 0, 20}};
  return coil;
}

/// Two square wings, 80 mm each way, each bent toward the head.
Coil angled(double bend_deg) {
  Coil coil;
  coil.parts = {{"right wing", {{0, -40}, {80, -40}, {80, 40}, {0, 40}}, 0, 15, bend_deg},
                {"left wing", {{-80, -40}, {0, -40}, {0, 40}, {-80, 40}}, 0, 15, -bend_deg}};
  return coil;
}

/// On top of a head whose top is at z, upright.
LaidPose on_top(double z) {
  LaidPose p;
  p.pose.pulse = {0, 0, z};
  return p;
}

}  // namespace

// R - sqrt(R2 - r2): the height of a tangent plane over a sphere (elementary geometry).
TEST_CASE("a flat disc rests on a sphere by its centre, and the gap grows as the closed form says",
          "[slow]") {
  const Contact c = contact(fine_ball(), with(flat_disc()), on_top(ball_mm));
  CHECK(c.resting_lift_mm < 0.01);
  REQUIRE_FALSE(c.touches.empty());
  CHECK(c.touches.front().under.norm() < 3);
  CHECK(c.hits.empty());
  CHECK_FALSE(c.rests_on_wings);
  CHECK(c.map.size() > 600);
  for (const GapPoint& g : c.map) {
    REQUIRE(g.gap_mm);
    CHECK(*g.gap_mm == Approx(ball_mm - std::sqrt(ball_mm * ball_mm - g.at.squaredNorm())).margin(0.03));
  }
  CHECK(on_centre(c));
}

// c - c sqrt(1 - x2/a2 - y2/b2): the same over the top of an ellipsoid.
TEST_CASE("a flat disc on an ellipsoid: the gap under each wing as the closed form says", "[slow]") {
  const Head head(sphere(1, 7, {76, 97, 92}), {{0, 93, 24}, {0, -95, 10}, {-75, 0, -10}, {75, 0, -10}});
  LaidPose p = on_top(92);
  p.pose.front = Vector3d(1, 1, 0).normalized();
  const Contact c = contact(head, with(flat_disc()), p);
  CHECK(c.resting_lift_mm < 0.01);
  for (const GapPoint& g : c.map) {
    REQUIRE(g.gap_mm);
    const Vector3d at = g.at.x() * p.pose.right() + g.at.y() * p.pose.front;
    const double s = 1 - std::pow(at.x() / 76, 2) - std::pow(at.y() / 97, 2);
    CHECK(*g.gap_mm == Approx(92 - 92 * std::sqrt(s)).margin(0.05));
  }
  REQUIRE(c.wings.size() == 2);
  CHECK(c.wings[0].wing == Wing::left);
  CHECK(c.wings[0].mean_mm == Approx(c.wings[1].mean_mm).margin(0.05));
  CHECK(c.wings[0].least_mm < c.wings[0].mean_mm);
  CHECK(c.wings[0].mean_mm < c.wings[0].most_mm);
}

// Planes bent by b from a fold at height R + h over a sphere's middle touch it when (R + h) cos b = R, at R
// sin b beside the fold (elementary geometry).
TEST_CASE("an angled coil rests on its wings, its centre clear, as the closed form on a sphere says",
          "[slow]") {
  for (const double bend : {5.0, 15.0, 22.0}) {
    const double b = bend * M_PI / 180;
    const Contact c = contact(fine_ball(), with(angled(bend)), on_top(ball_mm));
    CHECK(c.lift_mm == Approx(ball_mm / std::cos(b) - ball_mm).margin(0.02));
    CHECK(c.rests_on_wings == (ball_mm / std::cos(b) - ball_mm > 0.5 && ball_mm * std::sin(b) > 8));
    REQUIRE(c.touches.size() >= 2);
    for (const Touch& t : c.touches) {
      CHECK(std::abs(t.under.x()) == Approx(ball_mm * std::sin(b)).margin(2));
      CHECK(std::abs(t.skin.norm() - ball_mm) < 0.02);
    }
    for (const GapPoint& g : c.map) {
      REQUIRE(g.gap_mm);
      const double underside = ball_mm / std::cos(b) - std::tan(b) * std::abs(g.at.x());
      CHECK(*g.gap_mm == Approx(underside - std::sqrt(ball_mm * ball_mm - g.at.squaredNorm())).margin(0.04));
    }
    if (!c.rests_on_wings) continue;
    CHECK_FALSE(on_centre(c));
    CHECK(on_wings(c));
    REQUIRE(c.rock_deg);
    CHECK(std::abs(*c.rock_deg) < 0.1);
  }
}

TEST_CASE("an angled coil laid askew rests on one wing, rocked back it would rest on both") {
  const LaidPose flat = on_top(ball_mm);
  const CoilPose askew = tilted(flat.pose, {4, 0});
  LaidPose p = flat;
  p.pose.normal = askew.normal;
  const Contact c = contact(fine_ball(), with(angled(15)), p);
  CHECK_FALSE(c.rests_on_wings);
  CHECK_FALSE(on_wings(c));
  for (const Touch& t : c.touches) CHECK(t.part == "right wing");
  REQUIRE(c.rock_deg);
  CHECK(*c.rock_deg == Approx(-4).margin(0.1));
}

TEST_CASE("a leaning wall of a bent wing is no way into the head either") {
  // A spike beside the right wing's outer edge, below the wall's overhang: it is in the way of the wall.
  const Surface smooth = sphere(ball_mm, 7);
  const double b = 20 * M_PI / 180;
  const Vector3d beside(80 * std::cos(b) + 10 * std::sin(b), 0, 0);
  std::vector<Vector3d> moved = smooth.vertices();
  int raised = -1;
  double nearest = 1e9;
  for (size_t i = 0; i < moved.size(); ++i) {
    if (moved[i].z() < 0) continue;
    const double away = std::hypot(moved[i].x() - beside.x(), moved[i].y());
    if (away < nearest) {
      nearest = away;
      raised = static_cast<int>(i);
    }
  }
  moved[static_cast<size_t>(raised)].z() += 60;
  const Surface skin = smooth.moved(moved);
  const Vector3d spike = moved[static_cast<size_t>(raised)];
  CoilPose pose;
  pose.pulse = {0, 0, ball_mm};
  const double lift = clearing_lift(skin, angled(20), pose);
  // The spike's tip in the wing's own frame, the coil lifted: not between its faces.
  const Vector3d d = spike - pose.pulse - Vector3d(0, 0, lift);
  const double x = std::cos(b) * d.x() - std::sin(b) * d.z(), z = std::sin(b) * d.x() + std::cos(b) * d.z();
  CHECK((x > 80 - 1e-6 || z < 1e-6));
  CHECK((std::abs(x - 80) < 1e-6 || std::abs(z) < 1e-6));  // and it touches
}

// A plane tilted by t about a point over the top clears the sphere when that point is R / cos t from the
// middle; its axis then runs R tan t past the middle, and leaves a sphere of radius r at asin(R tan t / r) -
// t from the top (elementary geometry).
TEST_CASE("a tilted coil's axis meets the skin where the closed form on a sphere says") {
  const CoilPose pose{{0, 0, ball_mm}, Vector3d::UnitZ(), Vector3d::UnitY()};
  for (const Tilt tilt : {Tilt{8, 0}, Tilt{0, -8}, Tilt{-15, 0}, Tilt{0, 15}}) {
    const double t = std::hypot(tilt.roll_deg, tilt.pitch_deg) * M_PI / 180;
    const TiltedCoil c = tilt_coil(fine_ball().skin(), flat_disc(), pose, tilt);
    CHECK(c.centre.norm() == Approx(ball_mm / std::cos(t)).margin(0.02));
    REQUIRE(c.meets);
    const double arc = std::asin(std::tan(t)) - t;
    CHECK(c.moved_mm == Approx(2 * ball_mm * std::sin(arc / 2)).margin(0.03));
    // 20 mm deeper: on a smaller sphere, as a brain would be.
    const double r = ball_mm - 20, deep = std::asin(ball_mm * std::tan(t) / r) - t;
    const Surface inner = sphere(r, 6);
    const auto hit = inner.ray_hit(c.centre, c.axis, 100);
    REQUIRE(hit);
    CHECK((inner.position(hit->point) - Vector3d(0, 0, r)).norm() ==
          Approx(2 * r * std::sin(deep / 2)).margin(0.05));
  }
  const TiltedCoil rolled = tilt_coil(fine_ball().skin(), flat_disc(), pose, {10, 0});
  CHECK(rolled.pose.right().z() < 0);  // positive roll lowers the right side
  const TiltedCoil pitched = tilt_coil(fine_ball().skin(), flat_disc(), pose, {0, 10});
  CHECK(pitched.pose.front.z() > 0);  // positive pitch raises the front
}

// The same closed form: the plane's height over a sphere, and the axis' way past its middle.
TEST_CASE("a coil held askew: its axis, its gaps and its touch as the closed form on a sphere says") {
  LaidPose p = on_top(ball_mm);
  p.forward = Vector3d::UnitY();
  p.inward = -Vector3d::UnitX();
  ContactOptions options;
  options.tilt = {8, 0};
  const Contact c = contact(fine_ball(), with(flat_disc()), p, options);
  const double t = 8 * M_PI / 180, arc = std::asin(std::tan(t)) - t;
  REQUIRE(c.askew);
  CHECK(c.askew->skin_moved_mm == Approx(2 * ball_mm * std::sin(arc / 2)).margin(0.03));
  // The tilted plane touches the sphere R tan t from the centre of the face, on the side that is lowered.
  REQUIRE(c.touches.size() == 1);
  CHECK(c.touches.front().under.x() == Approx(ball_mm * std::tan(t)).margin(1));
  CHECK(c.lift_mm == Approx(ball_mm - ball_mm * std::sqrt(1 - std::tan(t) * std::tan(t))).margin(0.03));
  for (const GapPoint& g : c.map) {
    const Vector2d from_touch = g.at - Vector2d(ball_mm * std::tan(t), 0);
    if (from_touch.norm() >= ball_mm - 1) continue;  // past the ball's side
    REQUIRE(g.gap_mm);
    CHECK(*g.gap_mm ==
          Approx(ball_mm - std::sqrt(ball_mm * ball_mm - from_touch.squaredNorm())).margin(0.06));
  }
  // Rolled to the right the axis runs to the coil's left: here toward the midline.
  CHECK(c.askew->skin_way.outward == (c.askew->skin.x() < 0 ? -1 : 1));
  CHECK(c.askew->skin.x() != 0);
}

TEST_CASE("the gap under the middle of each wing as the closed form on a sphere says") {
  Coil coil = flat_disc();
  coil.windings = {{{-30, 0}, 20, 50, 9, 0}, {{30, 10}, 20, 50, 9, 0}};
  const Contact c = contact(fine_ball(), with(coil), on_top(ball_mm));
  REQUIRE(c.wings.size() == 2);
  REQUIRE(c.wings[0].centre_mm);
  REQUIRE(c.wings[1].centre_mm);
  CHECK(*c.wings[0].centre_mm == Approx(ball_mm - std::sqrt(ball_mm * ball_mm - 900)).margin(0.03));
  CHECK(*c.wings[1].centre_mm == Approx(ball_mm - std::sqrt(ball_mm * ball_mm - 1000)).margin(0.03));
}

TEST_CASE("a cap that has no room is said to be pressed, a lift makes room", "[slow]") {
  CoilSetup c = with(flat_disc());
  ContactOptions options;
  options.cap_mm = 4;
  CHECK(contact(fine_ball(), c, on_top(ball_mm), options).presses_cap_mm == Approx(4).margin(0.02));
  c.lift_mm = 3;
  CHECK(contact(fine_ball(), c, on_top(ball_mm), options).presses_cap_mm == Approx(1).margin(0.02));
  c.lift_mm = 5;
  const Contact lifted = contact(fine_ball(), c, on_top(ball_mm), options);
  CHECK(lifted.presses_cap_mm == 0);
  CHECK(lifted.lift_mm == Approx(lifted.resting_lift_mm + 5));
}

TEST_CASE("something that stands out beside the ear canal or over the nose is named when the coil hits it",
          "[slow]") {
  // A ball with a flap at the left ear and a ridge on the brow.
  const Surface smooth = sphere(ball_mm, 7);
  std::vector<Vector3d> moved = smooth.vertices();
  const Vector3d ear = ball_mm * Vector3d(-1, -0.2, 0.1).normalized(),
                 brow = ball_mm * Vector3d(0, 1, 0.1).normalized();
  for (auto& v : moved)
    v += v.normalized() * (15 * std::exp(-(v - ear).squaredNorm() / (2 * 8 * 8)) +
                           12 * std::exp(-(v - brow).squaredNorm() / (2 * 8 * 8)));
  const Head head(smooth.moved(moved),
                  {{0, ball_mm, 0}, {0, -ball_mm, 0}, {-ball_mm, 0, 0}, {ball_mm, 0, 0}});
  const auto laid = [&](const Vector3d& toward) {
    LaidPose p;
    p.pose.normal = toward.normalized();
    p.pose.pulse = head.skin().position(head.skin().closest(ball_mm * p.pose.normal));
    p.pose.front = p.pose.normal.unitOrthogonal();
    return contact(head, with(flat_disc()), p);
  };
  const Contact on_ear = laid({-1, -0.1, 0.6});
  REQUIRE(on_ear.hits.size() == 1);
  CHECK(on_ear.hits.front().region == Region::left_ear);
  CHECK(on_ear.hits.front().raises_mm > 1);
  const Contact on_brow = laid({0, 1, 0.45});
  REQUIRE(on_brow.hits.size() == 1);
  CHECK(on_brow.hits.front().region == Region::face);
  CHECK(laid({0, -0.2, 1}).hits.empty());
}

TEST_CASE("a coil without a casing and options that make no sense are refused in a sentence") {
  const auto said = [&](const CoilSetup& c, const ContactOptions& o) {
    return sentence_of<GeometryError>([&] { (void)contact(fine_ball(), c, on_top(ball_mm), o); });
  };
  CHECK(is_sentence(said(with({}), {})));
  CHECK_THAT(said(with(flat_disc()), {-1, 4}), Catch::Contains("0 to 30 mm"));
  CHECK_THAT(said(with(flat_disc()), {0, 0}), Catch::Contains("1 to 20 mm"));
  CHECK_THAT(said(with(flat_disc()), {0, 4, {31, 0}}), Catch::Contains("-30 to 30 degrees"));
}
