// What the spreading windows are for: the points asked about, how far they can still be, and the ways back
// from them.
#include <algorithm>
#include <cmath>
#include <limits>

#include "geometry/base/index.h"
#include "geometry/paths/unfold.h"
#include "geometry/paths/window_spread.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

// --- Targets

void WindowSpread::add_target(const SurfacePoint& target, double bound_mm) {
  const size_t i = targets_.size();
  targets_.push_back({});
  targets_.back().point = target;
  targets_.back().at = skin_.position(target);
  // Rounding must not rule out the very path the bound was measured on.
  constexpr double rounding_mm = 1e-6;
  targets_.back().bound_mm = bound_mm + rounding_mm;
  if (std::isfinite(bound_mm))
    targets_.back().ball = ball_between(skin_, skin_.position(source_), targets_.back().at);
  targets_in_face_[target.face].push_back(i);
  for (const int v : skin_.triangle(target.face)) targets_at_vertex_[v].push_back(i);
  if (target.face == source_.face) {
    const Vector3d from = source_vertex_ >= 0 ? skin_.vertex(source_vertex_) : skin_.position(source_);
    targets_.back().best_mm = (skin_.position(target) - from).norm();
    targets_.back().way = Way::source;
    targets_.back().bound_mm = std::min(targets_.back().bound_mm, targets_.back().best_mm + rounding_mm);
  }
}

void WindowSpread::find_worst_target() {
  worst_target_mm_ = 0;
  for (const Target& target : targets_) worst_target_mm_ = std::max(worst_target_mm_, target.best_mm);
}

void WindowSpread::try_targets_at(int v) {
  const auto found = targets_at_vertex_.find(v);
  if (found == targets_at_vertex_.end()) return;
  for (const size_t i : found->second) {
    Target& target = targets_[i];
    const double total = vertices_[at(v)].mm + (skin_.position(target.point) - skin_.vertex(v)).norm();
    if (total < target.best_mm) {
      target.best_mm = total;
      target.way = Way::along_edge;
      target.from = static_cast<std::uint32_t>(v);
    }
  }
  find_worst_target();
}

// The way around a ball inside the head is shorter than any path over the skin, and on a head not by much.
double WindowSpread::latest_at(int v) {
  if (targets_.empty()) return std::numeric_limits<double>::infinity();
  Vertex& vertex = vertices_[at(v)];
  if (!vertex.latest_known) {
    vertex.latest_known = true;
    vertex.latest_mm = -std::numeric_limits<double>::infinity();
    for (const Target& target : targets_)
      vertex.latest_mm = std::max(vertex.latest_mm,
                                  target.bound_mm - length_around(target.ball, skin_.vertex(v), target.at));
  }
  return vertex.latest_mm;
}

// From one point to another, what is left of a path changes by no more than the way between them.
bool WindowSpread::leads_nowhere(double mm, const Window& w) {
  if (targets_.empty()) return false;
  const Face& ahead = face(w.edge / 3);
  const size_t k = at(w.edge % 3);
  const double from_start = latest_at(ahead.corner[k]);
  const double from_end = latest_at(ahead.corner[(k + 1) % 3]) + ahead.length[k];
  if (std::isinf(from_start)) return false;  // a target without a bound
  const double place = std::clamp(0.5 * (from_end - from_start), w.begin, w.end);
  return mm > std::min(from_start + place, from_end - place);
}

void WindowSpread::try_targets(const Window& w, std::uint32_t id) {
  const auto found = targets_in_face_.find(w.edge / 3);
  if (found == targets_in_face_.end()) return;
  const Face& f = face(w.edge / 3);
  const size_t k = at(w.edge % 3);
  for (const size_t i : found->second) {
    Target& target = targets_[i];
    const Vector2d p = on_flap({f.length[k], f.x[k], f.y[k]}, target.point, w.edge % 3);
    // Past the window's end the path goes by that end: a little too long, but a path; another window or a
    // corner has the shorter one.
    const double c = std::clamp(crossing_of(w.x, w.y, p.x(), p.y()), w.begin, w.end);
    const double total = w.before_mm + std::hypot(c - w.x, w.y) + std::hypot(p.x() - c, p.y());
    if (total < target.best_mm) {
      target.best_mm = total;
      target.way = Way::through_window;
      target.from = id;
      target.crossing = c;
    }
  }
  find_worst_target();
}

void WindowSpread::try_views(const Window& w) {
  auto& views = (*views_)[at(w.edge)];
  const double length = face(w.edge / 3).length[at(w.edge % 3)];
  for (size_t i = 0; i < edge_view_places; ++i) {
    const double place = (static_cast<double>(i) + 0.5) / edge_view_places * length;
    const double c = std::clamp(place, w.begin, w.end);
    const auto mm =
        static_cast<float>(w.before_mm + std::sqrt((c - w.x) * (c - w.x) + w.y * w.y) + std::abs(place - c));
    if (mm < views[i].best_mm)
      views[i] = {static_cast<float>(w.x), static_cast<float>(w.y), static_cast<float>(w.before_mm), mm};
  }
}

// --- Paths

// Goes back from `towards` (on the flap of the window's edge) to where the path last bent, adding a point per
// edge crossed.
void WindowSpread::trace(std::uint32_t window, Vector2d towards, std::vector<Vector3d>& line,
                         int& bend) const {
  while (window != none) {
    const Window& w = windows_[window];
    const int f = w.edge / 3, k = w.edge % 3;
    const Face& ahead = known_face(f);
    const double length = ahead.length[at(k)];
    const double c = std::clamp(crossing_of(w.x, w.y, towards.x(), towards.y()), w.begin, w.end);
    line.emplace_back(skin_.corner(f, k) + c / length * (skin_.corner(f, (k + 1) % 3) - skin_.corner(f, k)));
    bend = w.root;
    if (w.parent != none) {
      const size_t edge = at(windows_[w.parent].edge % 3);
      const Face& behind = known_face(ahead.across[at(k)] / 3);
      const Vector2d tip(behind.x[edge], behind.y[edge]);
      towards = w.came == Came::past_start
                    ? Vector2d(c / length * tip)
                    : Vector2d(tip + c / length * (Vector2d(behind.length[edge], 0) - tip));
    }
    window = w.parent;
  }
}

std::vector<Vector3d> WindowSpread::path_to(size_t i) const {
  const Target& target = targets_[i];
  std::vector<Vector3d> line{skin_.position(target.point)};
  int bend = -1;
  if (target.way == Way::along_edge) {
    bend = static_cast<int>(target.from);
  } else if (target.way == Way::through_window) {
    trace(target.from, {target.crossing, 0}, line, bend);
  }
  while (bend >= 0) {
    line.push_back(skin_.vertex(bend));
    const Vertex& vertex = vertices_[at(bend)];
    if (vertex.way == Way::along_edge) {
      bend = static_cast<int>(vertex.from);
    } else if (vertex.way == Way::through_window) {
      const Window& w = windows_[vertex.from];
      const Face& f = known_face(w.edge / 3);
      const size_t k = at(w.edge % 3);
      trace(vertex.from, {f.x[k], f.y[k]}, line, bend);
    } else {
      bend = -1;
    }
  }
  line.push_back(source_vertex_ >= 0 ? skin_.vertex(source_vertex_) : skin_.position(source_));
  std::reverse(line.begin(), line.end());
  // Corners that coincide (a path over a vertex crosses several edges there) are one corner.
  constexpr double same_place_mm = 1e-9;
  std::vector<Vector3d> corners;
  for (const Vector3d& p : line)
    if (corners.empty() || (p - corners.back()).norm() > same_place_mm) corners.push_back(p);
  if (corners.size() == 1) corners.push_back(line.back());
  return corners;
}

}  // namespace scalpmark::geometry
