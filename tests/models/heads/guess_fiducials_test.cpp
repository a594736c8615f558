#include "geometry/head/guess_fiducials.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "models/generic/generic_head.h"
#include "tests/support/shapes.h"

using namespace scalpmark;
using Eigen::Vector3d;
using geometry::Fiducials;

namespace {

struct Bent {
  geometry::Surface skin;
  Fiducials at;
};

/// The generic head bent out of shape, its points carried along.
template <class Bend>
Bent bent(Bend bend) {
  const geometry::Head& generic = models::generic_head();
  std::vector<Vector3d> moved = generic.skin().vertices();
  for (Vector3d& p : moved) p = bend(p);
  const Fiducials& f = generic.fiducials().at;
  return {generic.skin().moved(std::move(moved)),
          {bend(f.nasion), bend(f.inion), bend(f.left_tragus), bend(f.right_tragus)}};
}

double farthest_mm(const Fiducials& a, const Fiducials& b) {
  return std::max({(a.nasion - b.nasion).norm(), (a.inion - b.inion).norm(),
                   (a.left_tragus - b.left_tragus).norm(), (a.right_tragus - b.right_tragus).norm()});
}

Eigen::Affine3d turned(double deg, const Vector3d& about, const Vector3d& moved = Vector3d::Zero()) {
  return Eigen::Translation3d(moved) * Eigen::AngleAxisd(deg * M_PI / 180, about.normalized());
}

}  // namespace

// 15 mm: near enough that whoever confirms the points sees at once which one is meant.
TEST_CASE("on three lopsided heads, tilted and lying, the guess lands within 15 mm of every point",
          "[slow]") {
  // Sheared sideways, as a head that was lain on; one side of the back flattened and the top raised; twisted.
  const Eigen::Affine3d tilt = turned(20, {1, 0, 1}), lying = turned(-90, {1, 0, 0}, {300, 20, 1000});
  const auto sheared = bent(
      [](const Vector3d& p) { return Vector3d(1.05 * p.x() + 0.07 * p.y(), 0.94 * p.y(), 1.03 * p.z()); });
  const auto flattened = bent([&](const Vector3d& p) {
    const double near = std::exp(-(p - Vector3d(-60, -50, 70)).squaredNorm() / 5000);
    return Vector3d(tilt *
                    Vector3d(0.93 * p.x() - 12 * near, 1.06 * p.y() - 6 * near, 0.97 * p.z() + 5 * near));
  });
  const auto twisted = bent([&](const Vector3d& p) {
    return Vector3d(lying * Vector3d(1.08 * (p.x() + 6 * std::sin(p.z() / 70)),
                                     1.08 * (1.08 * p.y() + 5 * std::sin(p.x() / 50)),
                                     1.08 * (p.z() + 4 * std::cos(p.y() / 60))));
  });
  for (const Bent* head : {&sheared, &flattened, &twisted}) {
    const auto guess = geometry::guess_fiducials(models::generic_head(), head->skin);
    CHECK(farthest_mm(guess.at, head->at) < 15);
    CHECK(guess.misfit_mm < 3);
  }
}

TEST_CASE("a ball is no head, its points are not guessed", "[slow]") {
  CHECK_THROWS_AS(geometry::guess_fiducials(models::generic_head(), tests::sphere(400, 4)),
                  geometry::GeometryError);
}
