#include "geometry/field/round_head.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>

#include "geometry/base/error.h"
#include "tests/support/heads.h"
#include "tests/support/sentence.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

/// A ball of 90 mm with what is like an ear on it, 22 mm out, 35 mm from where the coil is.
Surface ball_with_ear(double out_mm) {
  const Surface ball = sphere(90, 6);
  const Vector3d ear = 90 * Vector3d(std::sin(0.39), 0, std::cos(0.39));
  std::vector<Vector3d> moved = ball.vertices();
  for (auto& v : moved)
    if (const double away = (v - ear).norm(); away < 14) v *= 1 + out_mm / 90 * (1 - away / 14);
  return ball.moved(std::move(moved));
}

}  // namespace

TEST_CASE("the round head of a ball is that ball, and nothing misses it") {
  const Surface ball = sphere(90, 7);
  for (const Vector3d& at : {Vector3d(0, 0, 90), Vector3d(-54, 0, 72), Vector3d(0, -90, 0)}) {
    const RoundHead round = round_head(ball, at);
    CHECK(round.centre.norm() < 0.02);
    CHECK(round.radius_mm == Approx(90).margin(0.02));
    CHECK(round.misfit_mm < 0.01);
  }
}

TEST_CASE("an ear beside the coil does not bend the round head") {
  const RoundHead round = round_head(ball_with_ear(22), {0, 0, 90});
  CHECK(round.centre.norm() < 0.2);
  CHECK(round.radius_mm == Approx(90).margin(0.2));
}

TEST_CASE("on a head that is no ball the misfit says so, and turning the head changes nothing") {
  const Surface skin = lopsided_head().skin();
  const Vector3d at = lopsided(Vector3d(-0.5, 0.3, 0.8));
  const RoundHead round = round_head(skin, at);
  CHECK(round.misfit_mm > 0.3);
  CHECK(round.misfit_mm < 5);
  CHECK((at - round.centre).norm() == Approx(round.radius_mm).margin(4));
  // Root mean square of what it misses by: no more than the most there is.
  double most = 0;
  for (const Vector3d& v : skin.vertices())
    if ((v - at).norm() < fitted_mm)
      most = std::max(most, std::abs((v - round.centre).norm() - round.radius_mm));
  CHECK(round.misfit_mm < most);

  Eigen::Affine3d motion(Eigen::AngleAxisd(0.8, Vector3d(1, 2, -1).normalized()));
  motion.translation() = Vector3d(50, 3, -70);
  std::vector<Vector3d> moved = skin.vertices();
  for (auto& v : moved) v = motion * v;
  const RoundHead other = round_head(skin.moved(std::move(moved)), motion * at);
  CHECK((other.centre - motion * round.centre).norm() < 1e-3);
  CHECK(other.radius_mm == Approx(round.radius_mm).margin(1e-3));
}

TEST_CASE("no round head is made of a plate, of a hollow, or of nothing") {
  std::vector<Vector3d> corners;
  std::vector<Triangle> triangles;
  for (int j = 0; j <= 20; ++j)
    for (int i = 0; i <= 20; ++i) corners.emplace_back(10 * (i - 10), 10 * (j - 10), 0);
  for (int j = 0; j < 20; ++j)
    for (int i = 0; i < 20; ++i) {
      const int a = 21 * j + i;
      triangles.push_back({a, a + 1, a + 22});
      triangles.push_back({a, a + 22, a + 21});
    }
  const auto refused = [&](const Surface& skin, const Vector3d& at) {
    return is_sentence(sentence_of<GeometryError>([&] { (void)round_head(skin, at); }));
  };
  CHECK(refused(Surface(corners, triangles), {0, 0, 0}));
  for (auto& c : corners) c.z() = 0.005 * c.head<2>().squaredNorm();  // a bowl, seen from its inside
  CHECK(refused(Surface(corners, triangles), {0, 0, 0}));
  CHECK(refused(sphere(90, 3), {0, 0, 400}));
}
