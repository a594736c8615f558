#include "models/mri/distance_map.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <random>

using namespace scalpmark::models;

TEST_CASE("the distance map agrees with trying every marked voxel") {
  const Grid grid({7, 9, 8});
  const Eigen::Vector3d mm{0.8, 1.3, 2.1};
  std::mt19937 random(11);
  Mask marked(grid.count(), 0);
  for (auto& m : marked) m = random() % 40 == 0;
  const auto squared = squared_distance(grid, mm, marked);
  for (std::size_t v = 0; v < marked.size(); ++v) {
    double best = 1e12;
    for (std::size_t w = 0; w < marked.size(); ++w) {
      if (!marked[w]) continue;
      const auto p = grid.place(v), q = grid.place(w);
      const Eigen::Vector3d gap(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
      best = std::min(best, gap.cwiseProduct(mm).squaredNorm());
    }
    CHECK(static_cast<double>(squared[v]) == Approx(best).epsilon(1e-5));
  }
}

TEST_CASE("nothing marked is far from everything") {
  const Grid grid({4, 3, 5});
  for (const float d : squared_distance(grid, {1, 1, 1}, Mask(grid.count(), 0))) CHECK(d > 1e11F);
}
