#include "geometry/exercise/feel.h"

#include <catch2/catch.hpp>

#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

TEST_CASE("the inion is felt as a bump, the nasion as a hollow, and elsewhere nothing") {
  const Head head = lopsided_head(5);
  const Fiducials& f = head.fiducials().at;
  CHECK(feel(head, f.inion).height_mm == Approx(bump_mm));
  CHECK(feel(head, f.inion).share == Approx(1));
  CHECK(feel(head, f.nasion).height_mm == Approx(hollow_mm));
  CHECK(feel(head, f.nasion).height_mm < 0);
  CHECK(feel(head, f.left_tragus).height_mm == Approx(0));
  CHECK(feel(head, head.skin().position(head.vertex())).share == Approx(0));
}

TEST_CASE("a finger finds the inion within some millimetres and no closer") {
  const Head head = lopsided_head(5);
  const Vector3d inion = head.fiducials().at.inion, up = head.axes().up;
  // Flat as far as hands are off, so that the tint gives nothing away within it; then ever less.
  CHECK(feel(head, inion + 3.9 * up).share == Approx(1));
  double before = 1;
  for (double mm = 5; mm <= 15; mm += 1) {
    const double share = feel(head, inion + mm * up).share;
    CHECK(share < before + 1e-12);
    before = share;
  }
  CHECK(before == Approx(0));
  CHECK(feel(head, inion + 9 * up).share == Approx(0.5));
}
