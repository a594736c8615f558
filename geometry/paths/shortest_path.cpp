#include "geometry/paths/shortest_path.h"

#include <cmath>

#include "geometry/base/error.h"
#include "geometry/paths/window_spread.h"
#include "geometry/surface/section.h"

namespace scalpmark::geometry {

ShortestPath shortest_path(const Surface& skin, const SurfacePoint& a, const SurfacePoint& b) {
  WindowSpread spread(skin, a, WindowSpread::Keep::paths);
  spread.add_target(b, section_length(skin, a, b));
  spread.run();
  if (!std::isfinite(spread.target_mm(0)))
    throw GeometryError(Message::of(
        "The two points lie on separate pieces of the skin, so no path joins them; check the head's mesh."));
  return {spread.target_mm(0), spread.path_to(0)};
}

// A plane's line between both points is a path nearly as short as the shortest, so it bounds the search to a
// strip.
std::vector<double> shortest_distances(const Surface& skin, const SurfacePoint& from,
                                       const std::vector<SurfacePoint>& to) {
  if (to.empty()) return {};
  WindowSpread spread(skin, from, WindowSpread::Keep::lengths);
  for (const auto& target : to) spread.add_target(target, section_length(skin, from, target));
  spread.run();
  std::vector<double> lengths(to.size());
  for (size_t i = 0; i < to.size(); ++i) lengths[i] = spread.target_mm(i);
  return lengths;
}

}  // namespace scalpmark::geometry
