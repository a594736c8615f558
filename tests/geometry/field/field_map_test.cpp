#include "geometry/field/field_map.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/field/coil_field.h"
#include "tests/support/brains.h"
#include "tests/support/heads.h"
#include "tests/support/sentence.h"
#include "tests/support/windings.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

const RoundHead head_of_85{{0, 0, 0}, 85, 0};

CoilPose field_pose_on_top() {
  CoilPose pose;
  pose.pulse = {0, 0, 85};
  return pose;
}

FieldMap map_of(const Coil& coil, double radius_mm = 65, double step_mm = 3) {
  const CoilPose pose = field_pose_on_top();
  const SphereField field({0, 0, 0}, turns_of(coil, frame_of(pose, 0)));
  return field_map(field, sheet_on_sphere(head_of_85, pose, radius_mm, step_mm, 90), pose);
}

}  // namespace

// A zone of a sphere of radius r from the polar angle a to b: 2 pi r2 (cos a - cos b).
TEST_CASE("a sheet of a sphere has that sphere's area as far as it goes, and faces outward") {
  const FieldSheet sheet = sheet_on_sphere(head_of_85, field_pose_on_top(), 65, 3, 75);
  double area = 0;
  for (const Triangle& t : sheet.triangles) {
    const auto at = [&](size_t k) { return sheet.at[static_cast<size_t>(t[k])]; };
    const Vector3d twice = (at(1) - at(0)).cross(at(2) - at(0));
    CHECK(twice.dot(at(0)) > 0);
    area += 0.5 * twice.norm();
  }
  CHECK(area == Approx(2 * pi * 65 * 65 * (1 - std::cos(75.0 / 65))).epsilon(0.05));  // its rim is ragged
  for (const Vector3d& p : sheet.at) CHECK(p.norm() == Approx(65));
}

// Under a ring the field hangs on the polar angle alone: where it has half of its most was looked for along
// one meridian, in steps of a thousandth of a degree.
TEST_CASE("the patches under a round coil are the zones that its field along a meridian says", "[slow]") {
  const Coil coil = ring(40);
  const SphereField field({0, 0, 0}, turns_of(coil, frame_of(field_pose_on_top(), 0)));
  const auto at = [&](double deg) {
    return field.at(65 * Vector3d(std::sin(radians(deg)), 0, std::cos(radians(deg)))).norm();
  };
  double most = 0, most_deg = 0;
  for (double deg = 0.5; deg < 75; deg += 0.001)
    if (at(deg) > most) {
      most = at(deg);
      most_deg = deg;
    }
  const auto zone_cm2 = [&](double share) {
    double from = most_deg, to = most_deg;
    while (at(from) > share * most) from -= 0.001;
    while (at(to) > share * most) to += 0.001;
    return 2 * pi * 6.5 * 6.5 * (std::cos(radians(from)) - std::cos(radians(to)));
  };
  const FieldMap map = map_of(coil);
  CHECK(map.strongest.strength() == Approx(most).epsilon(1e-6));
  CHECK(degrees(std::acos(map.strongest.point.z() / 65)) == Approx(most_deg).margin(0.05));
  CHECK(map.seven_tenths.area_cm2 == Approx(zone_cm2(0.71)).epsilon(0.01));
  CHECK(map.half.area_cm2 == Approx(zone_cm2(0.5)).epsilon(0.01));
  CHECK(map.from_pulse_mm > 30);
  CHECK(map.under_centre.front().field < 1e-9);
}

TEST_CASE(
    "a figure-of-eight is strongest under its centre, along its front axis, and its patch is long that way") {
  const FieldMap map = map_of(figure_of_eight());
  CHECK(map.from_axis_mm < 0.1);
  CHECK(map.from_pulse_mm == Approx(20).margin(0.01));
  CHECK(std::abs(map.from_front_deg) < 0.01);
  CHECK(map.seven_tenths.area_cm2 < map.half.area_cm2);
  double long_mm = 0, wide_mm = 0;
  for (const auto& piece : map.seven_tenths.outline) {
    long_mm = std::max(long_mm, std::abs(piece[0].y()));
    wide_mm = std::max(wide_mm, std::abs(piece[0].x()));
  }
  CHECK(long_mm > 1.3 * wide_mm);
}

// The outline has the field of its level all along: a check of the places, not of the area.
TEST_CASE("along a patch's outline the field has the share that the patch is for") {
  const CoilPose pose = field_pose_on_top();
  const SphereField field({0, 0, 0}, turns_of(figure_of_eight(), frame_of(pose, 0)));
  const FieldMap map = field_map(field, sheet_on_sphere(head_of_85, pose, 65), pose);
  REQUIRE(map.half.outline.size() > 50);
  for (const auto* patch : {&map.half, &map.seven_tenths})
    for (const auto& piece : patch->outline)
      CHECK(field.at(piece[0]).norm() == Approx(patch->strength).epsilon(0.01));
}

TEST_CASE(
    "the field's line is told from the front axis, positive to the right, whichever way the current runs",
    "[slow]") {
  for (const double turned : {-60.0, -20.0, 35.0, 80.0})
    for (const bool other_way : {false, true}) {
      Coil coil = figure_of_eight();
      for (Winding& w : coil.windings) {
        // Both wings turned about the centre, as seen from above, to the right.
        w.centre = Eigen::Rotation2Dd(-radians(turned)) * w.centre;
        w.clockwise = w.clockwise != other_way;
      }
      CHECK(map_of(coil).from_front_deg == Approx(turned).margin(0.05));
    }
}

// "Half of the field gone in about 14 mm", and the half-value depth of 1.4 cm of a 70 mm figure-of-eight
// under a brain that begins 15 mm under the skin: Deng et al. 2013 (memory).
TEST_CASE("under the centre half of the field at the brain's surface is gone in about 14 mm") {
  const FieldMap map = map_of(figure_of_eight());
  const auto at = [&](double depth) {
    for (const FieldAtDepth& f : map.under_centre)
      if (f.depth_mm == depth) return f.field;
    return 0.0;
  };
  for (size_t i = 1; i < map.under_centre.size(); ++i)
    CHECK(map.under_centre[i].field < map.under_centre[i - 1].field);
  CHECK(at(34) / at(20) == Approx(0.5).margin(0.03));
}

TEST_CASE("on a head with a brain the field is looked at on the brain, else 20 mm under the round skin",
          "[slow]") {
  const Head ball = sphere_head(90, 6);
  const Cortex cortex(round_brain(72), ball);
  Placement placement;
  placement.pulse = {-54, 0, 72};
  placement.normal = placement.pulse.normalized();
  placement.front = Vector3d::UnitY();
  const Coil coil = figure_of_eight();
  const CoilField bare = coil_field(ball.skin(), nullptr, coil, placement);
  CHECK_FALSE(bare.sheet.of_brain);
  CHECK((bare.map.strongest.point - bare.round.centre).norm() ==
        Approx(bare.round.radius_mm - 20).margin(0.01));
  const CoilField brain = coil_field(ball.skin(), &cortex, coil, placement);
  CHECK(brain.sheet.of_brain);
  CHECK(brain.map.strongest.point.norm() == Approx(72).margin(0.5));
  CHECK(brain.map.from_axis_mm < 2);
  // Two millimetres nearer to the coil, so stronger, and by the curve's own measure.
  CHECK(brain.map.strongest.strength() > bare.map.strongest.strength());
  CHECK(brain.map.strongest.strength() < 1.15 * bare.map.strongest.strength());
}

TEST_CASE("a lift weakens the field under the coil as much as the curve's gap says", "[slow]") {
  const Head ball = sphere_head(90, 6);
  Placement placement;
  placement.pulse = {0, 0, 90};
  const Coil coil = figure_of_eight();
  const CoilField flat = coil_field(ball.skin(), nullptr, coil, placement);
  placement.lift_mm = 5;
  const CoilField lifted = coil_field(ball.skin(), nullptr, coil, placement);
  const CoilField thicker = [&] {
    placement.lift_mm = 0;
    return coil_field(ball.skin(), nullptr, figure_of_eight(13), placement);
  }();
  CHECK(lifted.map.strongest.strength() < 0.9 * flat.map.strongest.strength());
  CHECK(lifted.map.strongest.strength() == Approx(thicker.map.strongest.strength()).epsilon(1e-9));
}

TEST_CASE("a sheet out of the field's reach is refused in a sentence") {
  const SphereField field({0, 0, 0}, turns_of(figure_of_eight(), frame_of(field_pose_on_top(), 0)));
  FieldSheet far;
  far.at = {{0, 0, 150}, {1, 0, 150}, {0, 1, 150}};
  far.triangles = {{0, 1, 2}};
  CHECK(is_sentence(sentence_of<GeometryError>([&] { (void)field_map(field, far, field_pose_on_top()); })));
  CHECK(is_sentence(
      sentence_of<GeometryError>([&] { (void)field_map(field, FieldSheet{}, field_pose_on_top()); })));
}
