#include "models/mri/skin_intensity.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "geometry/base/index.h"

namespace scalpmark::models {

using geometry::at;

namespace {

// The skin's own intensity is read at this depth: past the blurred edge, in the 5 to 7 mm of the scalp
// (memory).
constexpr double skin_from_mm = 1.4, skin_to_mm = 5.1;
// Uneven illumination is followed over this distance (half width of the averaging).
constexpr double illumination_mm = 16;

/// Evens a field out over the coarse grid: three passes of a running mean, which is close to a Gaussian.
void even_out(const Coarse& coarse, std::vector<float>& field) {
  const Grid& g = coarse.grid;
  for (int pass = 0; pass < 3; ++pass)
    for (std::size_t a = 0; a < 3; ++a) {
      const int n = g.size[a];
      const int half =
          std::max(1, static_cast<int>(std::lround(illumination_mm / coarse.mm[static_cast<int>(a)])));
      const std::size_t b = (a + 1) % 3, c = (a + 2) % 3;
      std::vector<double> before(at(n) + 1);
      for (int j = 0; j < g.size[c]; ++j)
        for (int i = 0; i < g.size[b]; ++i) {
          float* start = field.data() + i * g.step[b] + j * g.step[c];
          for (int q = 0; q < n; ++q)
            before[at(q) + 1] = before[at(q)] + static_cast<double>(start[q * g.step[a]]);
          for (int q = 0; q < n; ++q)
            start[q * g.step[a]] = static_cast<float>(
                (before[at(std::min(n, q + half + 1))] - before[at(std::max(0, q - half))]) / (2 * half + 1));
        }
    }
}

}  // namespace

CoarseField skin_intensity(const Coarse& coarse, const Volume& scan, const Mask& outside,
                           const Mask& tissue) {
  const Grid grid(scan.size);
  const Eigen::Vector3d mm = scan.voxel_mm();
  std::vector<float> sum(coarse.grid.count(), 0), count(coarse.grid.count(), 0);
  Mask depth(grid.count(), 0);  // layers of voxels under the outside air
  std::vector<std::size_t> front, next;
  for (std::size_t v = 0; v < outside.size(); ++v) {
    if (outside[v]) continue;
    grid.for_neighbours(v, [&](std::size_t w, std::size_t) {
      if (outside[w]) depth[v] = 1;
    });
    if (depth[v]) front.push_back(v);
  }
  const double layer_mm = mm.mean();
  const int first = std::max(1, static_cast<int>(std::lround(skin_from_mm / layer_mm)) + 1);
  const int last = std::max(first, static_cast<int>(std::lround(skin_to_mm / layer_mm)));
  double total = 0, totals = 0;
  for (int layer = 1; layer <= last && !front.empty(); ++layer) {
    next.clear();
    for (const std::size_t v : front) {
      if (layer >= first && tissue[v]) {
        const std::size_t c = coarse.over(grid.place(v));
        sum[c] += scan.value[v];
        count[c] += 1;
        total += static_cast<double>(scan.value[v]);
        totals += 1;
      }
      grid.for_neighbours(v, [&](std::size_t w, std::size_t) {
        if (outside[w] || depth[w]) return;
        depth[w] = 1;
        next.push_back(w);
      });
    }
    front.swap(next);
  }
  for (std::vector<float>* field : {&sum, &count}) even_out(coarse, *field);
  const float everywhere = totals > 0 ? static_cast<float>(total / totals) : 0;
  CoarseField skin{coarse, std::move(sum)};
  for (std::size_t c = 0; c < skin.value.size(); ++c)
    skin.value[c] = count[c] > 1e-6F ? skin.value[c] / count[c] : everywhere;
  return skin;
}

}  // namespace scalpmark::models
