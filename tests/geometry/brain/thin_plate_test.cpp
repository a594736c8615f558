#include "geometry/brain/thin_plate.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <random>

#include "geometry/base/error.h"

using namespace scalpmark::geometry;
using Eigen::Vector3d;

namespace {

std::vector<Vector3d> scattered(size_t count) {
  std::mt19937 dice(7);
  std::uniform_real_distribution<double> mm(-90, 90);
  std::vector<Vector3d> points;
  for (size_t i = 0; i < count; ++i) points.emplace_back(mm(dice), mm(dice), mm(dice));
  return points;
}

}  // namespace

TEST_CASE("a thin-plate map of points moved by an affine map is that affine map, everywhere") {
  const auto from = scattered(40);
  Eigen::Affine3d truth = Eigen::Affine3d::Identity();
  truth.linear() << 0.9, 0.1, 0, -0.05, 1.1, 0.2, 0.03, -0.1, 1.05;
  truth.translation() = Vector3d(5, -8, 20);
  std::vector<Vector3d> to;
  for (const auto& p : from) to.push_back(truth * p);
  for (const double slack : {0.0, 5.0}) {
    const ThinPlate map = ThinPlate::fit(from, to, slack);
    CHECK(map.worst_mm() < 1e-8);
    for (const Vector3d& p : {Vector3d(0, 0, 0), Vector3d(200, -300, 50)})
      CHECK((map(p) - truth * p).norm() < 1e-7);
  }
}

TEST_CASE("a thin-plate map goes through its points, and with slack near them") {
  const auto from = scattered(40);
  std::vector<Vector3d> to = from;
  for (auto& p : to)
    p += Vector3d(6 * std::sin(p.y() / 40), 4 * std::cos(p.z() / 50), 5 * std::sin(p.x() / 60));
  CHECK(ThinPlate::fit(from, to).worst_mm() < 1e-7);
  const double slack_worst = ThinPlate::fit(from, to, 5).worst_mm();
  CHECK(slack_worst > 0.01);
  CHECK(slack_worst < ThinPlate::fit(from, to, 500).worst_mm());
  // A bend of this length is followed between the points too.
  const ThinPlate map = ThinPlate::fit(from, to);
  const Vector3d p(3, -12, 8);
  const Vector3d truth =
      p + Vector3d(6 * std::sin(p.y() / 40), 4 * std::cos(p.z() / 50), 5 * std::sin(p.x() / 60));
  CHECK((map(p) - truth).norm() < 1.5);
}

TEST_CASE("points that make no map are refused") {
  auto from = scattered(10), to = from;
  CHECK_THROWS_AS(ThinPlate::fit(from, scattered(9)), GeometryError);
  CHECK_THROWS_AS(ThinPlate::fit(scattered(5), scattered(5)), GeometryError);
  auto flat = from;
  for (auto& p : flat) p.z() = 3;
  CHECK_THROWS_AS(ThinPlate::fit(flat, to), GeometryError);
  to[4].y() = std::numeric_limits<double>::quiet_NaN();
  CHECK_THROWS_AS(ThinPlate::fit(from, to), GeometryError);
  auto twice = from;
  twice[1] = twice[0];
  CHECK_THROWS_AS(ThinPlate::fit(twice, from), GeometryError);
}
