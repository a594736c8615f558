#include "geometry/coil/gap_map.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"
#include "tests/support/sentence.h"
#include "tests/support/shapes.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

std::vector<Vector2d> outline_of_disc(double radius) {
  std::vector<Vector2d> outline;
  for (int i = 0; i < 90; ++i)
    outline.emplace_back(radius * std::cos(i * M_PI / 45), radius * std::sin(i * M_PI / 45));
  return outline;
}

CoilSetup with_disc(double radius) {
  CoilSetup c;
  c.model.parts = {{"casing", outline_of_disc(radius), 0, 20}};
  return c;
}

LaidPose on_top() {
  LaidPose p;
  p.pose.pulse = {0, 0, ball_mm};
  return p;
}

double area(const GapMap& map) {
  double all = 0;
  for (const auto& t : map.triangles) {
    const Vector2d a = map.corners[static_cast<size_t>(t[0])].at,
                   b = map.corners[static_cast<size_t>(t[1])].at,
                   c = map.corners[static_cast<size_t>(t[2])].at;
    all += 0.5 * ((b - a).x() * (c - a).y() - (b - a).y() * (c - a).x());
  }
  return all;
}

}  // namespace

// R - sqrt(R2 - r2): the height of a tangent plane over a sphere (elementary geometry).
TEST_CASE("the gap map under a disc on a sphere: every corner on the skin, its gap as the closed form says") {
  const CoilSetup c = with_disc(60);
  const Contact rests = contact(fine_ball(), c, on_top());
  const GapMap map = gap_map(fine_ball().skin(), c.model, rests);
  CHECK(map.corners.size() > 2500);
  for (const auto& corner : map.corners) {
    CHECK(std::abs(corner.skin.norm() - ball_mm) < 0.02);
    CHECK(corner.gap_mm ==
          Approx(ball_mm - std::sqrt(ball_mm * ball_mm - corner.at.squaredNorm())).margin(0.03));
    CHECK(corner.at.norm() < 60 + 1e-6);
  }
  // The whole disc is covered, once: a polygon of 90 corners has 45 r2 sin 4 degrees.
  CHECK(area(map) == Approx(45 * 60 * 60 * std::sin(4 * M_PI / 180)).epsilon(0.01));
}

TEST_CASE("past the head there is no map, and none hangs from its side", "[slow]") {
  const CoilSetup c = with_disc(120);
  const Contact rests = contact(fine_ball(), c, on_top());
  const GapMap map = gap_map(fine_ball().skin(), c.model, rests);
  for (const auto& corner : map.corners)
    CHECK(corner.at.norm() < ball_mm + 1e-6);  // a corner of the ball may be grazed
  for (const auto& t : map.triangles)
    for (size_t k = 0; k < 3; ++k)
      CHECK((map.corners[static_cast<size_t>(t[k])].skin -
             map.corners[static_cast<size_t>(t[(k + 1) % 3])].skin)
                .norm() < 18.001);
}

TEST_CASE("where a part hangs lower than another, the gap is to the lower one, added lift widens all",
          "[slow]") {
  CoilSetup c = with_disc(50);
  c.model.parts.push_back({"handle", {{-15, -120}, {15, -120}, {15, -20}, {-15, -20}}, 12, 40});
  const Contact rests = contact(fine_ball(), c, on_top());
  for (const auto& corner : gap_map(fine_ball().skin(), c.model, rests).corners) {
    const double under = corner.at.norm() < 49 ? 0 : 12;
    if (std::abs(corner.at.norm() - 50) < 3) continue;  // the casing's own rim
    CHECK(corner.gap_mm ==
          Approx(under + ball_mm - std::sqrt(ball_mm * ball_mm - corner.at.squaredNorm())).margin(0.03));
  }
  c.lift_mm = 5;
  const Contact lifted = contact(fine_ball(), c, on_top());
  const GapMap map = gap_map(fine_ball().skin(), c.model, lifted);
  for (const auto& corner : map.corners) CHECK(corner.gap_mm > 4.97);
}

TEST_CASE("a gap map of steps that make no sense is refused in a sentence") {
  const CoilSetup c = with_disc(60);
  const Contact rests = contact(fine_ball(), c, on_top());
  CHECK(
      is_sentence(sentence_of<GeometryError>([&] { (void)gap_map(fine_ball().skin(), c.model, rests, 0); })));
}
