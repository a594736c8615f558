#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/head/head.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// Where today's two marks would have to go to be those of the plan: lines over the skin, the shortest ones,
/// from the old mark to the new. Empty where a mark is as near as a pencil line is wide, or the plan has
/// none.
struct MarkMoves {
  std::vector<Eigen::Vector3d> site, edge;
};
[[nodiscard]] MarkMoves mark_moves(const Head& head, const Plan& plan, const SurfacePoint& site_mark_today,
                                   const SurfacePoint& edge_mark_today);

}  // namespace scalpmark::geometry
