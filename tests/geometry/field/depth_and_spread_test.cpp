#include "geometry/field/depth_and_spread.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>

#include "tests/support/windings.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

namespace {

DepthAndSpread of(const Coil& coil) {
  const RoundHead head{{0, 0, 0}, 85, 0};
  CoilPose pose;
  pose.pulse = {0, 0, 85};
  return depth_and_spread(SphereField(head.centre, turns_of(coil, frame_of(pose, 0))), head, pose);
}

}  // namespace

// Deng, Lisanby and Peterchev 2013, Brain Stimul 6:1-13 (memory): in their head of 85 mm the 70 mm
// figure-of-eight has a half-value depth of 1.4 cm and a spread of about 14 to 15 cm2; 50 coils range from
// 0.9 to 3.4 cm and from 5 cm2. How high its wires lie over the skin is ours (8 mm).
TEST_CASE("a 70 mm figure-of-eight reaches as deep and as wide as was published", "[slow]") {
  const DepthAndSpread eight = of(figure_of_eight());
  CHECK(eight.half_depth_mm == Approx(14).margin(1));
  CHECK(eight.spread_cm2 == Approx(14.5).margin(1.5));
}

TEST_CASE("round coils reach deeper and wider than figures-of-eight, all within the published ranges",
          "[slow]") {
  for (const double radius : {25.0, 45.0, 60.0}) {
    const DepthAndSpread round = of(ring(radius));
    CAPTURE(radius);
    CHECK(round.half_depth_mm > 9);
    CHECK(round.half_depth_mm < 34);
    CHECK(round.spread_cm2 > of(figure_of_eight()).spread_cm2);
  }
  CHECK(of(ring(60)).half_depth_mm > of(ring(25)).half_depth_mm);
}
