#include "geometry/head/fiducials.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <limits>

#include "geometry/base/error.h"
#include "tests/support/shapes.h"

using namespace scalpmark::geometry;
using Eigen::Vector3d;
using scalpmark::tests::sphere;

namespace {
const Fiducials good{{0, 95, -10}, {0, -95, -10}, {-75, 0, -25}, {75, 0, -25}};
const Surface& egg_skin() {
  static const Surface skin = sphere(1, 5, {76, 97, 90});
  return skin;
}
}  // namespace

TEST_CASE("the axes of a head are right, front, up, whatever its pose") {
  const HeadAxes axes = head_axes(good);
  CHECK((axes.right - Vector3d::UnitX()).norm() < 1e-12);
  CHECK((axes.front - Vector3d::UnitY()).norm() < 1e-12);
  CHECK((axes.up - Vector3d::UnitZ()).norm() < 1e-12);
  const Eigen::AngleAxisd turn(2.5, Vector3d(1, 1, -1).normalized());
  const HeadAxes turned =
      head_axes({turn * good.nasion, turn * good.inion, turn * good.left_tragus, turn * good.right_tragus});
  CHECK((turned.up - turn * axes.up).norm() < 1e-12);
  CHECK((turned.origin - turn * axes.origin).norm() < 1e-12);
}

TEST_CASE("fiducials are brought onto the skin") {
  const SkinFiducials placed = place_fiducials(egg_skin(), good);
  CHECK((egg_skin().position(placed.nasion) - placed.at.nasion).norm() < 1e-9);
  CHECK((placed.at.nasion - good.nasion).norm() < 15);
}

TEST_CASE("four points that do not make a head are refused by name") {
  auto bad = good;
  bad.nasion.z() = std::numeric_limits<double>::infinity();
  CHECK_THROWS_WITH(head_axes(bad), Catch::Contains("nasion") && Catch::Contains("not a number"));
  bad = good;
  bad.inion = good.left_tragus + Vector3d(1, 0, 0);
  CHECK_THROWS_WITH(head_axes(bad), Catch::Contains("inion") && Catch::Contains("left tragus"));
  bad = good;
  std::swap(bad.left_tragus, bad.right_tragus);
  CHECK_THROWS_WITH(head_axes(bad), Catch::Contains("swapped"));
  bad = good;
  std::swap(bad.nasion, bad.inion);
  CHECK_THROWS_WITH(head_axes(bad), Catch::Contains("swapped"));
  bad = good;
  bad.nasion.y() = -20;
  CHECK_THROWS_WITH(head_axes(bad), Catch::Contains("nasion to inion"));
  bad = good;
  bad.right_tragus = {-60, -100, -25};
  CHECK_THROWS_AS(head_axes(bad), GeometryError);
  bad = good;
  bad.nasion = {0, 130, -10};
  CHECK_THROWS_WITH(place_fiducials(egg_skin(), bad),
                    Catch::Contains("nasion") && Catch::Contains("away from the skin"));
  for (const double k : {0.1, 10.0})
    CHECK_THROWS_WITH(
        head_axes({k * good.nasion, k * good.inion, k * good.left_tragus, k * good.right_tragus}),
        Catch::Contains("mm"));
}
