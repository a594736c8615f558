#include "geometry/brain/atlas.h"

#include <algorithm>
#include <cmath>

namespace scalpmark::geometry {

using Eigen::Vector3d;

std::vector<RegionShare> Atlas::around(const Vector3d& centre, double radius_mm) const {
  const Eigen::Affine3d to_mm = to_voxel.inverse();
  const Vector3d middle = to_voxel * centre;
  // A ball's shadow along an index is the radius times the length of that index's gradient.
  const Vector3d reach = radius_mm * to_voxel.linear().rowwise().norm();
  std::array<int, 3> low{}, high{};
  for (int k = 0; k < 3; ++k) {
    const auto a = static_cast<size_t>(k);
    if (!(std::abs(middle[k]) < 1e6)) return {};
    low[a] = std::max(0, static_cast<int>(std::ceil(middle[k] - reach[k])));
    high[a] = std::min(size[a] - 1, static_cast<int>(std::floor(middle[k] + reach[k])));
  }
  std::array<int, 256> count{};
  int all = 0;
  const Vector3d step = to_mm.linear().col(0);
  for (int z = low[2]; z <= high[2]; ++z)
    for (int y = low[1]; y <= high[1]; ++y) {
      Vector3d off = to_mm * Vector3d(low[0], y, z) - centre;
      for (int x = low[0]; x <= high[0]; ++x, off += step) {
        if (off.squaredNorm() > radius_mm * radius_mm) continue;
        const auto i = static_cast<size_t>(x) +
                       static_cast<size_t>(size[0]) *
                           (static_cast<size_t>(y) + static_cast<size_t>(size[1]) * static_cast<size_t>(z));
        if (label[i] == 0) continue;
        ++count[label[i]];
        ++all;
      }
    }
  std::vector<RegionShare> shares;
  for (size_t l = 1; l < count.size(); ++l) {
    if (count[l] == 0 || l >= names.size()) continue;
    const double share = static_cast<double>(count[l]) / all;
    const auto same =
        std::find_if(shares.begin(), shares.end(), [&](const RegionShare& s) { return s.name == names[l]; });
    if (same == shares.end())
      shares.push_back({names[l], share});
    else
      same->share += share;
  }
  std::stable_sort(shares.begin(), shares.end(),
                   [](const RegionShare& a, const RegionShare& b) { return a.share > b.share; });
  return shares;
}

}  // namespace scalpmark::geometry
