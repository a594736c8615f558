#pragma once

#include <Eigen/Core>
#include <array>
#include <cmath>
#include <map>
#include <utility>
#include <vector>

#include "geometry/surface/surface.h"

namespace scalpmark::tests {

/// A sphere of `level` subdivisions of an octahedron (8 * 4^level triangles), its vertices exactly on the
/// sphere; symmetric in x, y and z.
inline geometry::Surface sphere(double radius_mm, int level,
                                const Eigen::Vector3d& semi_axes = Eigen::Vector3d::Ones()) {
  std::vector<Eigen::Vector3d> v{{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}};
  std::vector<geometry::Triangle> t{{0, 2, 4}, {2, 1, 4}, {1, 3, 4}, {3, 0, 4},
                                    {2, 0, 5}, {1, 2, 5}, {3, 1, 5}, {0, 3, 5}};
  for (int i = 0; i < level; ++i) {
    std::map<std::pair<int, int>, int> middles;
    const auto middle = [&](int a, int b) {
      const auto key = std::minmax(a, b);
      const auto found = middles.find(key);
      if (found != middles.end()) return found->second;
      v.push_back((v[static_cast<size_t>(a)] + v[static_cast<size_t>(b)]).normalized());
      return middles[key] = static_cast<int>(v.size()) - 1;
    };
    std::vector<geometry::Triangle> finer;
    for (const auto& [a, b, c] : t) {
      const int ab = middle(a, b), bc = middle(b, c), ca = middle(c, a);
      finer.push_back({a, ab, ca});
      finer.push_back({b, bc, ab});
      finer.push_back({c, ca, bc});
      finer.push_back({ab, bc, ca});
    }
    t = std::move(finer);
  }
  for (auto& p : v) p = radius_mm * p.cwiseProduct(semi_axes);
  return {std::move(v), std::move(t)};
}

}  // namespace scalpmark::tests
