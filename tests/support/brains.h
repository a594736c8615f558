#pragma once

#include <memory>
#include <string>

#include "geometry/brain/cortex.h"
#include "geometry/head/head.h"
#include "geometry/head/landmarks.h"
#include "tests/support/heads.h"
#include "tests/support/shapes.h"

namespace scalpmark::tests {

/// Regions 1 and 2 of a cube around the origin, 1 mm voxels: 1 where x < 0, 2 elsewhere.
inline geometry::Atlas halves(const std::string& low, const std::string& high, int half_mm = 100) {
  geometry::Atlas atlas;
  const int n = 2 * half_mm;
  atlas.size = {n, n, n};
  atlas.to_voxel.translation() = Eigen::Vector3d::Constant(half_mm - 0.5);
  atlas.label.resize(static_cast<size_t>(n) * static_cast<size_t>(n) * static_cast<size_t>(n));
  for (size_t i = 0; i < atlas.label.size(); ++i)
    atlas.label[i] = i % static_cast<size_t>(n) < static_cast<size_t>(half_mm) ? 1 : 2;
  atlas.names = {"", low, high};
  return atlas;
}

/// A round brain in a round head of 90 mm.
inline std::shared_ptr<const geometry::TemplateBrain> round_brain(double radius_mm, int level = 5) {
  std::vector<geometry::TemplateBrain::Position> positions;
  for (const auto& l : geometry::landmarks(sphere_head(90, 6), geometry::LandmarkSystem::ten_ten))
    positions.push_back({l.name, l.at});
  return std::make_shared<const geometry::TemplateBrain>(
      geometry::TemplateBrain{sphere(radius_mm, level), std::move(positions),
                              halves("area left", "area right"), halves("left gyrus", "right gyrus")});
}

}  // namespace scalpmark::tests
