#include "models/mri/distance_map.h"

#include <algorithm>
#include <limits>

#include "geometry/base/index.h"

namespace scalpmark::models {

using geometry::at;

std::vector<float> squared_distance(const Grid& grid, const Eigen::Vector3d& mm, const Mask& marked) {
  constexpr float far = 1e12F;
  std::vector<float> d(grid.count());
  for (std::size_t v = 0; v < d.size(); ++v) d[v] = marked[v] ? 0.0F : far;
  for (std::size_t a = 0; a < 3; ++a) {
    const int n = grid.size[a];
    const double h = mm[static_cast<int>(a)], h2 = h * h;
    std::vector<double> f(at(n)), from(at(n) + 1);
    std::vector<int> parabola(at(n));
    const std::size_t b = (a + 1) % 3, c = (a + 2) % 3;
    for (int j = 0; j < grid.size[c]; ++j)
      for (int i = 0; i < grid.size[b]; ++i) {
        float* line = d.data() + i * grid.step[b] + j * grid.step[c];
        for (int q = 0; q < n; ++q) f[at(q)] = static_cast<double>(line[q * grid.step[a]]);
        int k = 0;
        parabola[0] = 0;
        from[0] = -std::numeric_limits<double>::infinity();
        for (int q = 1; q < n; ++q) {
          const auto meet = [&](int p) { return (f[at(q)] - f[at(p)]) / (2 * h2 * (q - p)) + 0.5 * (q + p); };
          double s = meet(parabola[at(k)]);
          while (k > 0 && s <= from[at(k)]) s = meet(parabola[at(--k)]);
          if (s > from[at(k)]) ++k;
          parabola[at(k)] = q;
          from[at(k)] = s;
        }
        const int last = k;
        k = 0;
        for (int q = 0; q < n; ++q) {
          while (k < last && from[at(k) + 1] < q) ++k;
          const double gap = h * (q - parabola[at(k)]);
          line[q * grid.step[a]] = static_cast<float>(std::min(1e12, gap * gap + f[at(parabola[at(k)])]));
        }
      }
  }
  return d;
}

}  // namespace scalpmark::models
