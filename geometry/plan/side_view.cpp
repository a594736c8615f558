#include "geometry/plan/side_view.h"

#include <Eigen/Geometry>
#include <algorithm>

#include "geometry/surface/section.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

SideView side_view(const Head& head, const Coil& coil, const Placement& placement, double reach_mm) {
  const Surface& skin = head.skin();
  const Vector3d right = placement.front.cross(placement.normal);
  const auto flat = [&](const Vector3d& q) -> Vector2d {
    const Vector3d from = q - placement.pulse;
    return {from.dot(placement.front), from.dot(placement.normal)};
  };
  const SurfacePoint pulse = skin.closest(placement.pulse);
  SideView view;
  for (const Vector3d& heading : {Vector3d(-placement.front), placement.front}) {
    const Section part = follow_section(skin, pulse, right, heading, {.reach_mm = reach_mm});
    std::vector<Vector2d> line;
    line.reserve(part.points.size());
    for (const SectionPoint& point : part.points) line.push_back(flat(point.at));
    if (view.skin.empty())
      view.skin.assign(line.rbegin(), line.rend());
    else
      view.skin.insert(view.skin.end(), line.begin() + 1, line.end());
  }
  view.edge = flat(placement.edge);
  view.face_mm = placement.lift_mm;
  for (const auto& part : coil.parts)
    for (const auto& corner : part.outline) view.back_mm = std::min(view.back_mm, corner.y());
  const auto mark = [&](const std::optional<Vector3d>& at) -> std::optional<Vector2d> {
    if (!at) return {};
    return flat(*at);
  };
  view.tape = mark(placement.edge_mark.tape);
  view.drop = mark(placement.edge_mark.drop);
  view.nearest = mark(placement.edge_mark.nearest);
  return view;
}

}  // namespace scalpmark::geometry
