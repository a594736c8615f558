#include "geometry/brain/cortex.h"

#include <catch2/catch.hpp>

#include "geometry/base/error.h"
#include "geometry/plan/solve.h"
#include "tests/support/brains.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

TEST_CASE(
    "under a round head a round brain lies as deep as their radii differ, on the side of the skin point") {
  const Head head = sphere_head(90, 6);
  const Cortex cortex(round_brain(75), head);
  CHECK(cortex.pushed_mm() == 0);
  for (const Vector3d& way : {Vector3d(-0.6, 0, 0.8), Vector3d(0.6, 0, 0.8), Vector3d(0, 0.6, 0.8)}) {
    const auto hit = cortex.under(90 * way, -way);
    REQUIRE(hit);
    CHECK(hit->depth_mm == Approx(15).margin(0.15));
    CHECK(hit->nearest_mm == Approx(15).margin(0.15));
    // Beside the axis both spheres fall away: sqrt(90^2 - r^2) - sqrt(75^2 - r^2), 15.1 at half of the
    // patch's area, r = 7.1.
    CHECK(hit->median_mm == Approx(15.06).margin(0.1));
    CHECK((hit->point - 75 * way).norm() < 0.2);
    REQUIRE_FALSE(hit->areas.empty());
    if (way.x() != 0) CHECK(hit->areas.front().name == (way.x() < 0 ? "area left" : "area right"));
    if (way.x() != 0) CHECK(hit->gyri.front().share == Approx(1));
  }
  CHECK_FALSE(cortex.under({0, 0, 90}, Vector3d::UnitZ()));
  // Along the skin, the brain is missed.
  CHECK_FALSE(cortex.under({0, 0, 90}, Vector3d::UnitX()));
}

TEST_CASE("a fissure under the axis moves neither the nearest cortex nor the median", "[slow]") {
  // A brain with a cut 4 mm wide and 20 mm deep along its midline.
  const Head head = sphere_head(90, 6);
  auto brain = std::make_shared<TemplateBrain>(*round_brain(75, 6));
  std::vector<Vector3d> cut = brain->surface.vertices();
  for (Vector3d& v : cut)
    if (std::abs(v.x()) < 2 && v.z() > 0) v *= 55.0 / 75;
  brain->surface = brain->surface.moved(std::move(cut));
  const Cortex cortex(brain, head);
  const Vector3d way(0, 0.6, 0.8);
  const auto hit = cortex.under(90 * way, -way);
  REQUIRE(hit);
  CHECK(hit->depth_mm > 25);
  CHECK(hit->nearest_mm < 16.5);
  CHECK(hit->median_mm < 16.5);
  // Moved 3 mm aside, out of the cut, the ray's depth jumps and the two others stay.
  const Vector3d beside = Vector3d(5.0 / 90, 0.6, 0.8).normalized();
  const auto there = cortex.under(90 * beside, -beside);
  REQUIRE(there);
  CHECK(there->depth_mm < 16.5);
  CHECK(std::abs(there->nearest_mm - hit->nearest_mm) < 1);
  CHECK(std::abs(there->median_mm - hit->median_mm) < 1);
}

TEST_CASE("the brain follows a head that is scaled, turned and moved, and keeps its regions", "[slow]") {
  const Head head = sphere_head(90, 6);
  Eigen::Affine3d motion = Eigen::Affine3d::Identity();
  motion.translate(Vector3d(30, -10, 55))
      .rotate(Eigen::AngleAxisd(0.7, Vector3d(1, 2, 3).normalized()))
      .scale(1.12);
  const Head moved = moved_head(head, motion);
  const auto brain = round_brain(75);
  const Cortex here(brain, head), there(brain, moved);
  for (size_t i = 0; i < here.surface().vertices().size(); i += 97)
    CHECK((there.surface().vertices()[i] - motion * here.surface().vertices()[i]).norm() < 0.2);
  const Vector3d way = Vector3d(-0.6, 0, 0.8), inward = -(motion.linear() * way).normalized();
  const auto hit = there.under(motion * (90 * way), inward);
  REQUIRE(hit);
  CHECK(hit->depth_mm == Approx(1.12 * 15).margin(0.2));
  CHECK(hit->areas.front().name == "area left");
}

TEST_CASE(
    "under a lopsided head the brain stays inside, and as far from the skin as its own head had it, "
    "roughly",
    "[slow]") {
  const Head head = lopsided_head(6);
  const Cortex cortex(round_brain(75), head);
  double least = 1e9, most = 0;
  for (const auto& v : cortex.surface().vertices()) {
    const SurfacePoint nearest = head.skin().closest(v);
    const Vector3d away = v - head.skin().position(nearest);
    CHECK(away.dot(head.skin().smooth_normal(nearest)) < 0);
    // The 10-10 positions reach down to the tragi; below them the map is only carried on.
    if (away.norm() < least) least = away.norm();
    if (v.z() > 0) most = std::max(most, away.norm());
  }
  CHECK(least >= Cortex::nearest_to_skin_mm);
  CHECK(most < 30);
}

TEST_CASE("a brain too large for its head is pushed to 6 mm under the skin, and that is said", "[slow]") {
  const Head head = sphere_head(90, 6);
  const Cortex cortex(round_brain(88), head);
  CHECK(cortex.pushed_mm() == Approx(4).margin(0.3));
  CHECK(cortex.pushed_share() == Approx(1));
  for (const auto& v : cortex.surface().vertices())
    CHECK((head.skin().position(head.skin().closest(v)) - v).norm() >= Cortex::nearest_to_skin_mm);
  const Cortex outside(round_brain(97), head);
  CHECK(outside.pushed_mm() == Approx(13).margin(0.5));
  for (const auto& v : outside.surface().vertices()) CHECK(v.norm() < 84.2);
}

TEST_CASE("a template that shares too few positions with a head is refused") {
  TemplateBrain poor = *round_brain(75, 3);
  poor.landmarks.resize(12);
  CHECK_THROWS_AS(Cortex(std::make_shared<const TemplateBrain>(poor), sphere_head(90, 5)), GeometryError);
}
