#include "viewer/stage/scene/gaps_shown.h"

#include <algorithm>
#include <cmath>

#include "viewer/stage/scene/gap_colours.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

constexpr double level_mm = 10;

std::vector<std::array<Vector3d, 2>> level_lines(const geometry::GapMap& map) {
  std::vector<std::array<Vector3d, 2>> lines;
  for (const auto& triangle : map.triangles) {
    std::array<const geometry::GapMap::Corner*, 3> corners{};
    for (size_t k = 0; k < 3; ++k) corners[k] = &map.corners[static_cast<size_t>(triangle[k])];
    const auto [least, most] = std::minmax({corners[0]->gap_mm, corners[1]->gap_mm, corners[2]->gap_mm});
    for (double level = level_mm * std::ceil(least / level_mm); level < std::min(most, gap_scale_top_mm);
         level += level_mm) {
      if (level <= 0) continue;
      std::vector<Vector3d> ends;
      for (size_t k = 0; k < 3; ++k) {
        const auto &a = *corners[k], &b = *corners[(k + 1) % 3];
        if ((a.gap_mm < level) == (b.gap_mm < level)) continue;
        ends.push_back(a.skin + (level - a.gap_mm) / (b.gap_mm - a.gap_mm) * (b.skin - a.skin));
      }
      if (ends.size() == 2) lines.push_back({ends[0], ends[1]});
    }
  }
  return lines;
}

}  // namespace

std::shared_ptr<const GapsShown> gaps_under(const geometry::Head& head, const geometry::Case& the_case,
                                            const geometry::Placement& placement) {
  auto gaps = std::make_shared<GapsShown>();
  gaps->contact = geometry::contact(head, the_case.coil, placement.pose());
  gaps->map = geometry::gap_map(head.skin(), the_case.coil.model, gaps->contact);
  gaps->level_lines = level_lines(gaps->map);
  return gaps;
}

}  // namespace scalpmark::viewer
