#pragma once

#include <Eigen/Core>
#include <vector>

#include "models/mri/voxel_grid.h"

namespace scalpmark::models {

/// Squared distance (mm2) from every voxel's centre to that of the nearest marked one, exact; 1e12 when none
/// is marked (Felzenszwalb and Huttenlocher 2012, Theory Comput 8:415-428). `mm` is the size of a voxel.
[[nodiscard]] std::vector<float> squared_distance(const Grid& grid, const Eigen::Vector3d& mm,
                                                  const Mask& marked);

}  // namespace scalpmark::models
