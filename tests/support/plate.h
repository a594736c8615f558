#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/surface/surface.h"

namespace scalpmark::tests {

/// A flat plate, 100 x 100 mm, of 5 mm squares cut in two; with a square hole from 40 to 60 mm if asked.
inline geometry::Surface plate(bool hole) {
  std::vector<Eigen::Vector3d> v;
  std::vector<geometry::Triangle> t;
  for (int j = 0; j <= 20; ++j)
    for (int i = 0; i <= 20; ++i) v.emplace_back(5 * i, 5 * j, 0);
  for (int j = 0; j < 20; ++j)
    for (int i = 0; i < 20; ++i) {
      if (hole && i >= 8 && i < 12 && j >= 8 && j < 12) continue;
      const int a = 21 * j + i;
      t.push_back({a, a + 1, a + 22});
      t.push_back({a, a + 22, a + 21});
    }
  return {v, t};
}

}  // namespace scalpmark::tests
