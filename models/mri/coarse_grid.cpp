#include "models/mri/coarse_grid.h"

#include <cmath>

namespace scalpmark::models {

Coarse::Coarse(const Volume& scan) {
  constexpr double about_mm = 2;
  std::array<int, 3> size{};
  const Eigen::Vector3d fine = scan.voxel_mm();
  for (std::size_t a = 0; a < 3; ++a) {
    block[a] = std::max(1, static_cast<int>(std::lround(about_mm / fine[static_cast<int>(a)])));
    size[a] = (scan.size[a] + block[a] - 1) / block[a];
    mm[static_cast<int>(a)] = fine[static_cast<int>(a)] * block[a];
  }
  grid = Grid(size);
}

}  // namespace scalpmark::models
