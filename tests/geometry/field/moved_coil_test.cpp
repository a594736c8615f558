#include "geometry/field/moved_coil.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/coil/contact.h"
#include "tests/support/heads.h"
#include "tests/support/windings.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

const Surface& skin() {
  static const Surface ball = sphere(90, 7);
  return ball;
}

CoilField on_top(const Coil& coil, double lift_mm = 0) {
  Placement placement;
  placement.pulse = {0, 0, 90};
  placement.lift_mm = lift_mm;
  return coil_field(skin(), nullptr, coil, placement);
}

double ratio(const std::vector<MovedRatio>& all, CoilMoved moved, double by) {
  for (const MovedRatio& r : all)
    if (r.moved == moved && r.by == by) return r.ratio;
  return 0;
}

}  // namespace

// Stokes et al. 2005 (J Neurophysiol 94:4520-4527): output grows by about 3 % of the device's output for each
// mm; at the thresholds that they measured, about 40 to 65 % of output, that is 4.5 to 7.5 % of the output in
// use (the range is from memory, and so wide).
TEST_CASE("each millimetre of gap asks for 4 to 8 % more of the output in use, and gaps add up", "[slow]") {
  const Coil coil = figure_of_eight();
  const auto all = moved_ratios(skin(), coil, on_top(coil));
  const double one = ratio(all, CoilMoved::gap, 1);
  CHECK(1 / one - 1 > 0.04);
  CHECK(1 / one - 1 < 0.08);
  CHECK(ratio(all, CoilMoved::gap, 2) < one);
  CHECK(ratio(all, CoilMoved::gap, 5) < ratio(all, CoilMoved::gap, 2));
  // A coil meant with a lift of 5 mm has what a lifted one has left.
  const double ten = on_top(coil, 10).map.strongest.strength() / on_top(coil).map.strongest.strength();
  CHECK(ratio(all, CoilMoved::gap, 10) == Approx(ten).epsilon(1e-6));
}

TEST_CASE("a turned figure-of-eight leaves the cosine of its turn at the place under its centre") {
  const Coil coil = figure_of_eight();
  const auto all = moved_ratios(skin(), coil, on_top(coil));
  for (const double deg : {10.0, 20.0, 45.0})
    CHECK(ratio(all, CoilMoved::turn, deg) == Approx(std::cos(radians(deg))).margin(2e-3));
}

// Slid over a ball, a coil leaves at the old place what it had beside its centre, turned with it.
TEST_CASE("a slip leaves what the field had beside its strongest place, the more where the patch is longer") {
  const Coil coil = figure_of_eight();
  const CoilField meant = on_top(coil);
  const auto all = moved_ratios(skin(), coil, meant);
  for (const double mm : {5.0, 10.0}) {
    const double round = (Vector3d(0, 0, 90) - meant.round.centre).norm();
    const Eigen::AngleAxisd back(mm / round, Vector3d::UnitX());  // the place, as the slid coil sees it
    const Vector3d there = meant.round.centre + back * (meant.map.strongest.point - meant.round.centre);
    const double expected =
        meant.field.at(there).dot(back * meant.map.strongest.field) / meant.map.strongest.field.squaredNorm();
    CHECK(ratio(all, CoilMoved::ahead, mm) == Approx(expected).epsilon(1e-6));
  }
  CHECK(ratio(all, CoilMoved::ahead, 10) > ratio(all, CoilMoved::aside, 10));
  CHECK(ratio(all, CoilMoved::aside, 10) < ratio(all, CoilMoved::aside, 5));
}

// Of one wing alone, which is not the same on both sides: slid to its right, and along its front, the coil
// and its field are turned about the middle of the ball, and the old place sees what lay as far to the left,
// or behind.
TEST_CASE("a slip goes to the coil's right and along its front, which a coil of one wing tells apart") {
  Coil coil = figure_of_eight();
  coil.windings.erase(coil.windings.begin());
  coil.windings.front().centre.y() = 20;
  const CoilField meant = on_top(coil);
  const auto all = moved_ratios(skin(), coil, meant);
  const Vector3d& centre = meant.round.centre;
  const double round = (Vector3d(0, 0, 90) - centre).norm();
  for (const auto& [moved, axis] :
       {std::pair(CoilMoved::aside, Vector3d(0, 1, 0)), {CoilMoved::ahead, {-1, 0, 0}}}) {
    const Eigen::AngleAxisd turn(10 / round, axis);
    const FieldThere& there = meant.map.strongest;
    const Vector3d now = turn * meant.field.at(centre + turn.inverse() * (there.point - centre));
    CHECK(ratio(all, moved, 10) == Approx(now.dot(there.field) / there.field.squaredNorm()).epsilon(1e-6));
  }
}

// The coil's axis is a line through its centre; lowering the right side turns its lower end to the left. The
// wires of that side come nearer, and the field follows the wires.
TEST_CASE("under tilt the strongest place moves toward the lowered side, while the axis goes to the other",
          "[slow]") {
  const Coil coil = figure_of_eight();
  const CoilField meant = on_top(coil);
  for (const double roll : {-15.0, -8.0, 8.0, 15.0}) {
    const FieldAskew askew = field_askew(skin(), coil, meant, {roll, 0});
    const Vector3d to = askew.strongest.point - meant.map.strongest.point;
    CAPTURE(roll);
    CHECK(to.x() * roll > 0);  // positive: right side down
    CHECK(askew.moved_mm == Approx(to.norm()));
    const TiltedCoil tilted = tilt_coil(skin(), coil, meant.laid.pose, {roll, 0});
    REQUIRE(tilted.meets);
    const Vector3d axis_at_depth = skin().position(*tilted.meets) + 20 * tilted.axis;
    CHECK(axis_at_depth.x() * roll < 0);
    CHECK(askew.left < 1);
  }
  for (const double pitch : {-12.0, 12.0}) {  // positive: front edge up
    const FieldAskew askew = field_askew(skin(), coil, meant, {0, pitch});
    CHECK((askew.strongest.point - meant.map.strongest.point).y() * pitch < 0);
  }
}
