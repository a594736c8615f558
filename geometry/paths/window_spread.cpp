#include "geometry/paths/window_spread.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/base/angles.h"
#include "geometry/base/index.h"
#include "geometry/paths/unfold.h"
#include "geometry/surface/triangle_math.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr std::uint32_t vertex_bit = 0x80000000U;

/// A source this close to a corner (in weights) is that corner: a millionth of a triangle's side.
constexpr double corner_weight = 1e-6;
/// Two path lengths closer than this (relative) are the same but for rounding.
constexpr double same_length = 1 + 1e-11;
/// A saddle flatter than this (radians) cannot bend a path by as much as rounding does.
constexpr double flat_angle = 1e-10;
/// Windows from a bend reach this much (radians) past the shadow it fills, so that rounding opens no gaps.
constexpr double shadow_slack = 1e-9;
/// A corner this little outside a cone of lines (radians) counts as seen, so that rounding opens no gaps.
constexpr double sight_slack = 1e-11;
/// A window narrower than this part of its edge is dropped.
constexpr double narrow = 1e-12;

/// About the length of an edge, by two hundred of them.
double usual_edge_mm(const Surface& skin) {
  constexpr size_t looked_at = 200;
  const size_t count = skin.triangles().size(), apart = std::max<size_t>(1, count / looked_at);
  double sum = 0, edges = 0;
  for (size_t f = 0; f < count; f += apart, ++edges)
    sum += (skin.corner(static_cast<int>(f), 0) - skin.corner(static_cast<int>(f), 1)).norm();
  return sum > 0 ? sum / edges : 1;
}

/// How finely what waits is ordered: parts of a usual edge. From 2 to 16 times are equal within a few
/// percent.
constexpr double steps_an_edge = 4;

double cross(double ax, double ay, double bx, double by) {
  return ax * by - ay * bx;
}

}  // namespace

WindowSpread::WindowSpread(const Surface& skin, const SurfacePoint& source, Keep keep)
    : skin_(skin),
      source_(source),
      keep_(keep),
      face_place_(skin.triangles().size()),
      vertices_(skin.vertices().size()),
      waiting_(usual_edge_mm(skin) / steps_an_edge) {
  for (int k = 0; k < 3; ++k)
    if (source.weights[k] >= 1 - corner_weight) source_vertex_ = skin.triangle(source.face)[at(k)];
}

// --- Faces and vertices on first touch

void WindowSpread::fill(Face& into, int f) const {
  into.corner = skin_.triangle(f);
  std::array<double, 3> length{};
  for (size_t k = 0; k < 3; ++k)
    length[k] = (skin_.vertex(into.corner[(k + 1) % 3]) - skin_.vertex(into.corner[k])).norm();
  for (size_t k = 0; k < 3; ++k) {
    const Flap flap = lay_flat(length[k], length[(k + 2) % 3], length[(k + 1) % 3]);
    into.length[k] = flap.length;
    into.x[k] = flap.x;
    into.y[k] = flap.y;
    const Neighbour n = skin_.neighbour(f, static_cast<int>(k));
    into.across[k] = n.face < 0 ? -1 : 3 * n.face + n.edge;
    into.angle_taken[k] = false;
  }
}

const WindowSpread::Face& WindowSpread::known_face(int f) const {
  const std::uint32_t i = face_place_[at(f)] - 1;
  return faces_[i / faces_in_batch][i % faces_in_batch];
}

WindowSpread::Face& WindowSpread::face(int f) {
  std::uint32_t& place = face_place_[at(f)];
  if (place == 0) {
    if (face_count_ % faces_in_batch == 0) faces_.emplace_back(new Face[faces_in_batch]);
    place = ++face_count_;
    fill(faces_.back()[(place - 1) % faces_in_batch], f);
  }
  return faces_[(place - 1) / faces_in_batch][(place - 1) % faces_in_batch];
}

bool WindowSpread::bends_at(int v) {
  Vertex& vertex = vertices_[at(v)];
  if (vertex.bends == 0) {
    double angle = 0;
    bool bends = skin_.is_border_vertex(v);
    const int first = skin_.face_at(v);
    for (int f = first; !bends && f >= 0;) {
      const auto& t = skin_.triangle(f);
      const int k = t[0] == v ? 0 : t[1] == v ? 1 : 2;
      angle += corner_angle(skin_.corner(f, k), skin_.corner(f, (k + 1) % 3), skin_.corner(f, (k + 2) % 3));
      f = skin_.neighbour(f, (k + 2) % 3).face;
      if (f == first) break;
    }
    vertex.bends = bends || angle > 2 * pi + flat_angle ? 2 : 1;
  }
  return vertex.bends == 2;
}

double WindowSpread::vertex_mm(int v) const {
  const Vertex& vertex = vertices_[at(v)];
  return vertex.way == Way::unknown ? infinity : vertex.mm;
}

void WindowSpread::reach_vertex(int v, double mm, Way way, std::uint32_t from, int back_face,
                                double back_angle) {
  Vertex& vertex = vertices_[at(v)];
  if (vertex.way != Way::unknown && mm >= vertex.mm) return;
  const bool gains = vertex.way == Way::unknown || mm * same_length < vertex.mm;
  vertex.mm = mm;
  vertex.way = way;
  vertex.from = from;
  vertex.back_face = back_face;
  vertex.back_angle = back_angle;
  try_targets_at(v);
  if (gains && mm <= latest_at(v) && bends_at(v))
    waiting_.put(mm, static_cast<std::uint32_t>(v) | vertex_bit);
}

// --- Windows

std::uint32_t WindowSpread::store(const Window& w) {
  ++made_;
  if (!spare_.empty()) {
    const std::uint32_t id = spare_.back();
    spare_.pop_back();
    windows_[id] = w;
    return id;
  }
  windows_.push_back(w);
  return static_cast<std::uint32_t>(windows_.size() - 1);
}

// Xin and Wang 2009, theorem 3.2: every path through the window is beaten by one that comes over a corner of
// the edge, or over the corner of the face behind that the window's paths have to go around.
bool WindowSpread::useless(const Window& w) {
  const Face& ahead = face(w.edge / 3);
  const size_t k = at(w.edge % 3);
  const double length = ahead.length[k];
  const double to_begin = w.before_mm + std::sqrt((w.begin - w.x) * (w.begin - w.x) + w.y * w.y);
  const double to_end = w.before_mm + std::sqrt((w.end - w.x) * (w.end - w.x) + w.y * w.y);
  if (to_end > (vertex_mm(ahead.corner[k]) + w.end) * same_length) return true;
  if (to_begin > (vertex_mm(ahead.corner[(k + 1) % 3]) + length - w.begin) * same_length) return true;
  const int back = ahead.across[k];
  if (w.came == Came::from_root) return false;
  const Face& behind = face(back / 3);
  const size_t b = at(back % 3);
  const double corner_mm = vertex_mm(behind.corner[(b + 2) % 3]);
  const double x = length - behind.x[b], y = behind.y[b];
  const double place = w.came == Came::past_start ? w.begin : w.end;
  const double to_place = w.came == Came::past_start ? to_begin : to_end;
  return to_place > (corner_mm + std::sqrt((place - x) * (place - x) + y * y)) * same_length;
}

void WindowSpread::add_window(const Window& w) {
  std::uint32_t id = none;
  const bool near_target = !targets_.empty() && targets_in_face_.contains(w.edge / 3);
  if (near_target) {
    id = store(w);
    try_targets(w, id);
  }
  if (useless(w)) {
    // A target may hold on to it when paths are kept; otherwise its place is free again.
    if (id != none && keep_ == Keep::lengths) spare_.push_back(id);
    return;
  }
  const double nearest = std::clamp(w.x, w.begin, w.end) - w.x;
  const double mm = w.before_mm + std::sqrt(nearest * nearest + w.y * w.y);
  if (leads_nowhere(mm, w)) {
    if (id != none && keep_ == Keep::lengths) spare_.push_back(id);
    return;
  }
  if (id == none) id = store(w);
  if (views_) try_views(w);
  waiting_.put(mm, id);
}

// A path bends at a vertex only into the part of the skin that has half a turn or more between it and the way
// back, on both sides (the "shadow"); everything else is reached without the vertex. At a path's start all
// is.
void WindowSpread::spread_from_vertex(int v) {
  const Vertex& vertex = vertices_[at(v)];
  const double mm = vertex.mm;
  ring_.clear();
  double turn = 0, back = 0;
  const int first = skin_.face_at(v);
  for (int f = first; f >= 0;) {
    const Face& here = face(f);
    const size_t k = here.corner[0] == v ? 0 : here.corner[1] == v ? 1 : 2;
    const double angle = std::atan2(here.y[k], here.x[k]);
    if (f == vertex.back_face) back = turn + vertex.back_angle;
    ring_.push_back({f, k, turn, angle});
    turn += angle;
    const int next = here.across[(k + 2) % 3];
    f = next < 0 ? -1 : next / 3;
    if (f == first) break;
  }
  const bool all = vertex.way == Way::source && v == source_vertex_;
  const bool open = skin_.is_border_vertex(v);
  for (const Corner& c : ring_) {
    const Face& here = face(c.face);
    const size_t k = c.k, opposite = (k + 1) % 3, last = (k + 2) % 3;
    const int a = here.corner[opposite], b = here.corner[last];
    const auto from = static_cast<std::uint32_t>(v);
    reach_vertex(a, mm + here.length[k], Way::along_edge, from, c.face,
                 std::atan2(here.y[opposite], here.x[opposite]));
    reach_vertex(b, mm + here.length[last], Way::along_edge, from, c.face, 0);
    if (here.across[opposite] < 0) continue;
    const auto emit = [&](double low, double high) {
      if (!(low < high)) return;
      const double length = here.length[opposite];
      // Where the ray at an angle from the face's edge that starts here meets the opposite edge.
      const auto meets = [&](double angle) {
        const double x = std::cos(angle), y = std::sin(angle);
        const double to_a = cross(x, y, here.length[k], 0), to_b = cross(x, y, here.x[k], here.y[k]);
        return to_b > to_a ? length * std::clamp(-to_a / (to_b - to_a), 0.0, 1.0) : 0.0;
      };
      const double begin = high >= c.angle ? 0 : length - meets(high);
      const double end = low <= 0 ? length : length - meets(low);
      if (end - begin > narrow * length)
        add_window({length - here.x[opposite], -here.y[opposite], mm, begin, end, here.across[opposite], v,
                    none, Came::from_root});
    };
    if (all) {
      emit(0, c.angle);
    } else if (open) {
      emit(std::max(0.0, back + pi - shadow_slack - c.from), c.angle);
      emit(0, std::min(c.angle, back - pi + shadow_slack - c.from));
    } else {
      double start = c.from - back;
      while (start < 0) start += turn;
      emit(std::max(0.0, pi - shadow_slack - start), std::min(c.angle, turn - pi + shadow_slack - start));
    }
  }
}

void WindowSpread::cross_face(const Window& w, std::uint32_t id) {
  const int f = w.edge / 3;
  Face& here = face(f);
  const size_t k = at(w.edge % 3), right = (k + 1) % 3, left = (k + 2) % 3;
  const double x3 = here.x[k], y3 = here.y[k];
  const double to_x = x3 - w.x, to_y = y3 - w.y;
  const double begin_x = w.begin - w.x, end_x = w.end - w.x;
  const double size = std::abs(to_x) + to_y;
  const double left_of_begin = cross(begin_x, -w.y, to_x, to_y);
  const double left_of_end = cross(end_x, -w.y, to_x, to_y);
  bool go_left = left_of_begin <= sight_slack * size * (std::abs(begin_x) - w.y);
  bool go_right = left_of_end >= -sight_slack * size * (std::abs(end_x) - w.y);
  if (go_left && go_right) {
    const double mm = w.before_mm + std::sqrt(to_x * to_x + to_y * to_y);
    const double enters = crossing_of(w.x, w.y, x3, y3);
    if (!here.angle_taken[k] || mm < here.angle_mm[k] * same_length) {
      if (!here.angle_taken[k] || mm < here.angle_mm[k]) {
        here.angle_taken[k] = true;
        here.angle_mm[k] = mm;
        here.angle_from[k] = enters;
      }
    } else if (enters < here.angle_from[k]) {
      go_right = false;
    } else {
      go_left = false;
    }
    reach_vertex(here.corner[left], mm, Way::through_window, id, f,
                 std::max(0.0, std::atan2(cross(-x3, -y3, -to_x, -to_y), x3 * to_x + y3 * to_y)));
  }
  // The left edge, seen from the face beyond, runs from this edge's start to the tip; the right edge from the
  // tip to this edge's end.
  if (go_left && here.across[left] >= 0 && here.length[left] > 0) {
    const double ll = here.length[left], ux = x3 / ll, uy = y3 / ll;
    const auto meets = [&](double px) {
      const double slope = cross(px, -w.y, ux, uy);
      return slope < 0 ? std::clamp(cross(px, -w.y, w.x, w.y) / slope, 0.0, ll) : ll;
    };
    const double begin = begin_x + w.x <= 0 ? 0.0 : meets(begin_x);
    const double end = left_of_end >= 0 ? ll : meets(end_x);
    if (end - begin > narrow * ll)
      add_window({w.x * ux + w.y * uy, std::min(0.0, w.y * ux - w.x * uy), w.before_mm, begin, end,
                  here.across[left], w.root, keep_ == Keep::paths ? id : none, Came::past_start});
  }
  if (go_right && here.across[right] >= 0 && here.length[right] > 0) {
    const double lr = here.length[right], ux = (here.length[k] - x3) / lr, uy = -y3 / lr;
    const auto meets = [&](double px) {
      const double slope = cross(px, -w.y, ux, uy);
      return slope < 0 ? std::clamp(-cross(px, -w.y, to_x, to_y) / slope, 0.0, lr) : 0.0;
    };
    const double begin = left_of_begin <= 0 ? 0.0 : meets(begin_x);
    const double end = end_x + w.x >= here.length[k] ? lr : meets(end_x);
    if (end - begin > narrow * lr)
      add_window({-to_x * ux - to_y * uy, std::min(0.0, -to_y * ux + to_x * uy), w.before_mm, begin, end,
                  here.across[right], w.root, keep_ == Keep::paths ? id : none, Came::past_end});
  }
}

void WindowSpread::run() {
  find_worst_target();
  if (targets_.empty()) worst_target_mm_ = infinity;
  if (views_) views_->assign(3 * skin_.triangles().size(), {});
  if (source_vertex_ >= 0) {
    Vertex& start = vertices_[at(source_vertex_)];
    start.mm = 0;
    start.way = Way::source;
    try_targets_at(source_vertex_);
    spread_from_vertex(source_vertex_);
  } else {
    const Face& here = face(source_.face);
    const Vector3d from = skin_.position(source_);
    for (size_t k = 0; k < 3; ++k) {
      const int v = here.corner[k];
      const Vector2d p = on_flap({here.length[k], here.x[k], here.y[k]}, source_, static_cast<int>(k));
      reach_vertex(v, (skin_.vertex(v) - from).norm(), Way::source, none, source_.face,
                   std::atan2(std::max(0.0, p.y()), p.x()));
    }
    for (int k = 0; k < 3; ++k) {
      const size_t e = at(k);
      if (here.across[e] < 0) continue;
      const Vector2d p = on_flap({here.length[e], here.x[e], here.y[e]}, source_, k);
      add_window({here.length[e] - p.x(), -std::max(0.0, p.y()), 0, 0, here.length[e], here.across[e], -1,
                  none, Came::from_root});
    }
  }
  constexpr size_t between_looks = 1U << 14;
  for (size_t round = 1; !waiting_.empty(); ++round) {
    if (watch_ && round % between_looks == 0) watch_();
    const auto [mm, next] = waiting_.take();
    const bool too_far = mm > worst_target_mm_;
    if (next & vertex_bit) {
      const int v = static_cast<int>(next & ~vertex_bit);
      // One that a shorter path to the vertex has overtaken is stale.
      if (!too_far && mm <= vertices_[at(v)].mm * same_length) spread_from_vertex(v);
      continue;
    }
    const Window w = windows_[next];
    if (!too_far) cross_face(w, next);
    if (keep_ == Keep::lengths) spare_.push_back(next);
  }
}

}  // namespace scalpmark::geometry
