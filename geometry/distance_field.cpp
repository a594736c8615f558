#include "geometry/distance_field.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "geometry/unfold.h"
#include "geometry/windows.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

DistanceField::DistanceField(const Surface& skin, const SurfacePoint& source) : source_(source) {
  std::vector<std::array<EdgeView, edge_view_places.size()>> found;
  WindowSpread spread(skin, source, WindowSpread::Keep::lengths);
  spread.keep_views(found);
  spread.run();
  mm_.resize(skin.vertices().size());
  for (size_t v = 0; v < mm_.size(); ++v) mm_[v] = spread.vertex_mm(static_cast<int>(v));
  const auto seen = [](const EdgeView& v) { return std::isfinite(v.best_mm); };
  const auto same = [](const EdgeView& a, const EdgeView& b) {
    return a.x == b.x && a.y == b.y && a.begin == b.begin && a.end == b.end;
  };
  const auto each_kept = [&](size_t edge, const auto& use) {
    const auto& of_edge = found[edge];
    for (size_t i = 0; i < of_edge.size(); ++i)
      if (seen(of_edge[i]) && (i == 0 || !same(of_edge[i], of_edge[i - 1]))) use(of_edge[i]);
  };
  size_t count = 0;
  for (size_t edge = 0; edge < found.size(); ++edge) each_kept(edge, [&](const EdgeView&) { ++count; });
  views_.reserve(count);
  first_view_.reserve(skin.triangles().size() + 1);
  for (size_t edge = 0; edge < found.size(); ++edge) {
    if (edge % 3 == 0) first_view_.push_back(static_cast<std::uint32_t>(views_.size()));
    each_kept(edge, [&](const EdgeView& v) {
      views_.push_back({v.x, v.y, v.before_mm, v.begin, v.end, static_cast<std::int32_t>(edge % 3)});
    });
  }
  first_view_.push_back(static_cast<std::uint32_t>(views_.size()));
}

double DistanceField::at(const Surface& skin, const SurfacePoint& p) const {
  const Vector3d here = skin.position(p);
  // Inside the source's own face nothing is shorter than the straight line.
  if (p.face == source_.face) return (here - skin.position(source_)).norm();
  double best = std::numeric_limits<double>::infinity();
  for (const int v : skin.triangle(p.face))
    best = std::min(best, mm_[static_cast<size_t>(v)] + (here - skin.vertex(v)).norm());
  const auto face = static_cast<size_t>(p.face);
  int laid = -1;
  double length = 0;
  Vector2d q = Vector2d::Zero();
  for (std::uint32_t i = first_view_[face]; i < first_view_[face + 1]; ++i) {
    const View& view = views_[i];
    if (view.edge != laid) {
      laid = view.edge;
      const Flap flap = lay_flat(skin, p.face, laid);
      length = flap.length;
      q = on_flap(flap, p, laid);
    }
    const double x = view.x, y = view.y, rise = q.y() - y;
    const double straight = rise > 0 ? x - (q.x() - x) * (y / rise) : q.x();
    if (straight >= -1e-6 && straight <= length + 1e-6)
      best = std::min(best, view.before_mm + std::hypot(q.x() - x, q.y() - y));
  }
  return best;
}

}  // namespace scalpmark::geometry
