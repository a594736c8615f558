#pragma once

#include <Eigen/Core>
#include <array>
#include <cstddef>
#include <vector>

namespace scalpmark::models {

/// A block of intensities; the first index runs fastest. `world` takes a voxel index (i, j, k, 1) to mm.
struct Volume {
  std::array<int, 3> size{};
  Eigen::Matrix4d world = Eigen::Matrix4d::Identity();
  std::vector<float> value;

  [[nodiscard]] std::size_t index(int i, int j, int k) const {
    return static_cast<std::size_t>(i) +
           static_cast<std::size_t>(size[0]) *
               (static_cast<std::size_t>(j) +
                static_cast<std::size_t>(size[1]) * static_cast<std::size_t>(k));
  }
  /// Edge lengths of a voxel, mm.
  [[nodiscard]] Eigen::Vector3d voxel_mm() const {
    return world.topLeftCorner<3, 3>().colwise().norm().transpose();
  }
};

}  // namespace scalpmark::models
