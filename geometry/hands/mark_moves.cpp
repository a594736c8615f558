#include "geometry/hands/mark_moves.h"

#include "geometry/paths/shortest_path.h"

namespace scalpmark::geometry {

namespace {

constexpr double no_move_mm = 0.5;  // as wide as a pencil line

}  // namespace

MarkMoves mark_moves(const Head& head, const Plan& plan, const SurfacePoint& site_mark_today,
                     const SurfacePoint& edge_mark_today) {
  const Surface& skin = head.skin();
  const auto way = [&](const SurfacePoint& from, const Eigen::Vector3d& to) -> std::vector<Eigen::Vector3d> {
    if ((skin.position(from) - to).norm() < no_move_mm) return {};
    return shortest_path(skin, from, skin.closest(to)).line;
  };
  MarkMoves moves;
  moves.site = way(site_mark_today, plan.treatment.wanted);
  if (plan.treatment.mark) moves.edge = way(edge_mark_today, *plan.treatment.mark);
  return moves;
}

}  // namespace scalpmark::geometry
