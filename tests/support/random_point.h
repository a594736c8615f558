#pragma once

#include <Eigen/Core>
#include <random>

#include "geometry/surface/surface.h"

namespace scalpmark::tests {

/// A skin point inside some triangle, well off its sides.
inline geometry::SurfacePoint random_point(const geometry::Surface& skin, std::mt19937& random) {
  std::uniform_real_distribution<double> unit(0.01, 1);
  const Eigen::Vector3d w(unit(random), unit(random), unit(random));
  return {std::uniform_int_distribution<int>(0, static_cast<int>(skin.triangles().size()) - 1)(random),
          w / w.sum()};
}

}  // namespace scalpmark::tests
