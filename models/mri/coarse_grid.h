#pragma once

#include <Eigen/Core>
#include <algorithm>
#include <array>
#include <cstddef>
#include <vector>

#include "models/mri/volume.h"
#include "models/mri/voxel_grid.h"

namespace scalpmark::models {

/// A grid of voxels of about 2 mm over a scan: blocks of the scan's own. Where the flooding ball rolls, and
/// on which illumination is followed.
struct Coarse {
  std::array<int, 3> block{};  // fine voxels along each side of a coarse one
  Grid grid{std::array<int, 3>{}};
  Eigen::Vector3d mm;

  explicit Coarse(const Volume& scan);

  /// The coarse voxel that holds a voxel of the scan.
  [[nodiscard]] std::size_t over(const std::array<int, 3>& p) const {
    return static_cast<std::size_t>(p[0] / block[0] + p[1] / block[1] * grid.step[1] +
                                    p[2] / block[2] * grid.step[2]);
  }
};

/// A field on the coarse grid, read between its centres.
struct CoarseField {
  const Coarse& coarse;
  std::vector<float> value;

  /// Calls visit(fine index, field value) for every voxel of the scan.
  template <class Visit>
  void for_each(const std::array<int, 3>& size, Visit visit) const {
    struct Between {
      std::size_t low = 0, high = 0;
      float f = 0;
    };
    std::array<std::vector<Between>, 3> place;
    for (std::size_t a = 0; a < 3; ++a)
      for (int i = 0; i < size[a]; ++i) {
        const double x = std::clamp((i + 0.5) / coarse.block[a] - 0.5, 0.0, coarse.grid.size[a] - 1.0);
        const int low = std::min(static_cast<int>(x), std::max(0, coarse.grid.size[a] - 2));
        place[a].push_back({static_cast<std::size_t>(low),
                            static_cast<std::size_t>(std::min(low + 1, coarse.grid.size[a] - 1)),
                            static_cast<float>(x - low)});
      }
    const std::size_t nx = static_cast<std::size_t>(coarse.grid.size[0]),
                      ny = static_cast<std::size_t>(coarse.grid.size[1]);
    std::vector<float> row(nx);
    std::size_t v = 0;
    for (const Between& z : place[2])
      for (const Between& y : place[1]) {
        const float* r00 = &value[nx * (y.low + ny * z.low)];
        const float* r10 = &value[nx * (y.high + ny * z.low)];
        const float* r01 = &value[nx * (y.low + ny * z.high)];
        const float* r11 = &value[nx * (y.high + ny * z.high)];
        for (std::size_t i = 0; i < nx; ++i)
          row[i] =
              (1 - z.f) * ((1 - y.f) * r00[i] + y.f * r10[i]) + z.f * ((1 - y.f) * r01[i] + y.f * r11[i]);
        for (const Between& x : place[0]) visit(v++, (1 - x.f) * row[x.low] + x.f * row[x.high]);
      }
  }
};

}  // namespace scalpmark::models
