#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry>
#include <array>
#include <cstdint>
#include <string>
#include <vector>

namespace scalpmark::geometry {

/// A region and how much of a place belongs to it, 0 to 1.
struct RegionShare {
  std::string name;
  double share = 0;
};

/// A block of region numbers, one byte a voxel, the first index fastest; 0 is no region.
struct Atlas {
  std::array<int, 3> size{};
  Eigen::Affine3d to_voxel = Eigen::Affine3d::Identity();  ///< mm to voxel index
  std::vector<std::uint8_t> label;
  std::vector<std::string> names;  ///< by region number

  /// The regions within `radius_mm` of a point, largest share first. Shares are of the voxels that belong to
  /// any region; regions of one name are one. Empty where there is none.
  [[nodiscard]] std::vector<RegionShare> around(const Eigen::Vector3d& centre, double radius_mm) const;
};

}  // namespace scalpmark::geometry
