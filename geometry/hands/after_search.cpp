#include "geometry/hands/after_search.h"

#include <limits>

namespace scalpmark::geometry {

AfterSearch after_search(const Plan& plan, const Placement& start) {
  const Eigen::Vector3d carried = start.pulse - plan.start.pulse;
  AfterSearch best;
  best.left_mm = std::numeric_limits<double>::infinity();
  for (const GridSpot& spot : plan.grid) {
    const double left = (spot.placement.pulse + carried - plan.hotspot.pulse).norm();
    if (left < best.left_mm) best = {spot.row, spot.column, left};
  }
  return best;
}

}  // namespace scalpmark::geometry
