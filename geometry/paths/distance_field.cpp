#include "geometry/paths/distance_field.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "geometry/paths/unfold.h"
#include "geometry/paths/window_spread.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// How far from its place a view is used, in parts of the edge between places.
constexpr double reach = 1;

}  // namespace

DistanceField::DistanceField(const Surface& skin, const SurfacePoint& source,
                             const std::function<void()>& watch)
    : source_(source) {
  std::vector<std::array<EdgeView, edge_view_places>> found;
  WindowSpread spread(skin, source, WindowSpread::Keep::lengths);
  spread.keep_views(found);
  spread.set_watch(watch);
  spread.run();
  mm_.resize(skin.vertices().size());
  for (size_t v = 0; v < mm_.size(); ++v) mm_[v] = spread.vertex_mm(static_cast<int>(v));
  first_view_.reserve(skin.triangles().size() + 1);
  // Each view serves its own part of the edge and its neighbours' (with an edge's worth of slack at the
  // ends), so that the better of two fronts that meet on an edge is always among those tried.
  const double part = 1.0 / static_cast<double>(edge_view_places);
  for (size_t edge = 0; edge < found.size(); ++edge) {
    if (edge % 3 == 0) first_view_.push_back(static_cast<std::uint32_t>(views_.size()));
    const int f = static_cast<int>(edge / 3), k = static_cast<int>(edge % 3);
    const double length = (skin.corner(f, (k + 1) % 3) - skin.corner(f, k)).norm();
    const EdgeView* last = nullptr;
    for (size_t i = 0; i < edge_view_places; ++i) {
      const EdgeView& view = found[edge][i];
      if (!std::isfinite(view.best_mm)) continue;
      const double middle = static_cast<double>(i) + 0.5;
      const auto low = static_cast<float>((middle - reach) * part * length);
      const auto high = static_cast<float>((middle + reach) * part * length);
      if (last && last->x == view.x && last->y == view.y && last->before_mm == view.before_mm)
        views_.back().high = high;
      else
        views_.push_back({view.x, view.y, view.before_mm, low, high, k});
      last = &view;
    }
  }
  views_.shrink_to_fit();
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
  Vector2d q = Vector2d::Zero();
  for (std::uint32_t i = first_view_[face]; i < first_view_[face + 1]; ++i) {
    const View& view = views_[i];
    if (view.edge != laid) {
      laid = view.edge;
      const Flap flap = lay_flat(skin, p.face, laid);
      q = on_flap(flap, p, laid);
    }
    const double x = view.x, y = view.y, rise = q.y() - y;
    const double straight = rise > 0 ? x - (q.x() - x) * (y / rise) : q.x();
    if (straight >= view.low && straight <= view.high)
      best = std::min(best, view.before_mm + std::hypot(q.x() - x, q.y() - y));
  }
  return best;
}

}  // namespace scalpmark::geometry
