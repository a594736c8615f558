#include "geometry/paths/distance_field.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "geometry/paths/shortest_path.h"
#include "tests/support/shapes.h"

using namespace scalpmark;
using Eigen::Vector3d;
using geometry::SurfacePoint;

TEST_CASE("a distance field agrees with shortest paths on a bumpy head", "[slow]") {
  auto skin = tests::sphere(1, 6, {75, 98, 88});
  auto vertices = skin.vertices();
  for (auto& v : vertices)
    v *= 1 + 0.03 * std::sin(v.x() / 7) * std::sin(v.y() / 6 + 1) * std::sin(v.z() / 8 + 2);
  skin = skin.moved(std::move(vertices));
  const SurfacePoint source{12345, {0.2, 0.3, 0.5}};
  const geometry::DistanceField field(skin, source);
  std::mt19937 random(13);
  std::uniform_real_distribution<double> unit(0.01, 1);
  std::vector<SurfacePoint> to;
  for (int i = 0; i < 400; ++i) {
    const Vector3d w(unit(random), unit(random), unit(random));
    to.push_back({std::uniform_int_distribution<int>(0, 32767)(random), w / w.sum()});
  }
  const auto exact = geometry::shortest_distances(skin, source, to);
  double worst = 0;
  for (size_t i = 0; i < to.size(); ++i) worst = std::max(worst, std::abs(field.at(skin, to[i]) - exact[i]));
  // 2.6 mm triangles. The lookup's error, not the exact lengths', which tests/reference checks.
  CHECK(worst < 0.01);
  CHECK(worst > 0);
  CHECK(field.at(skin, source) == 0);
  // At a vertex the field is exact.
  for (const int face : {7, 900, 30000}) {
    const SurfacePoint corner{face, {0, 1, 0}};
    const double mm = field.at_vertices()[static_cast<size_t>(skin.triangle(face)[1])];
    CHECK(mm == Approx(geometry::shortest_distances(skin, source, {corner}).front()).epsilon(1e-9));
    CHECK(field.at(skin, corner) == Approx(mm).epsilon(1e-4));
  }
}
