#include "geometry/paths/walk.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/base/index.h"
#include "geometry/paths/unfold.h"
#include "geometry/surface/triangle_math.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;
using std::numbers::pi;

namespace {

/// A start this close to a corner or an edge (in weights) is on it: far below what rounding of a skin point
/// moves.
constexpr double on_rim = 1e-9;
/// A walk leaving a face this close to a corner (part of the edge's length) goes through the corner.
constexpr double through_corner = 1e-10;
/// Tangent directions are trusted up to this far from the skin's tangent plane.
constexpr double max_tilt_deg = 60;
/// A kilometre: far longer than any walk on a head, short enough to finish.
constexpr double longest_mm = 1e6;
/// Steps without gaining length before a walk among slivers is given up; no sound mesh has so many faces at a
/// corner.
constexpr int most_idle_steps = 10000;

/// Counter-clockwise from a to b, radians; for directions inside a face's corner, so never below zero.
double angle_between(const Vector2d& a, const Vector2d& b) {
  return std::max(0.0, std::atan2(cross(a, b), a.dot(b)));
}

/// A place on the rim of a face and a direction into it: `along_mm` from the start of edge `edge`; the
/// direction on the face laid flat over that edge (unit, y >= 0).
struct Entry {
  int face, edge;
  double along_mm;
  Vector2d direction;
};

int corner_index(const Surface& skin, int face, int vertex) {
  const auto& t = skin.triangle(face);
  return t[0] == vertex ? 0 : t[1] == vertex ? 1 : 2;
}

double angle_at(const Surface& skin, int face, int k) {
  return corner_angle(skin.corner(face, k), skin.corner(face, (k + 1) % 3), skin.corner(face, (k + 2) % 3));
}

/// A direction on a face laid flat over `edge`, in space.
Vector3d in_space(const Surface& skin, int face, int edge, const Vector2d& direction) {
  const Vector3d& a = skin.corner(face, edge);
  const Vector3d x = (skin.corner(face, (edge + 1) % 3) - a).normalized();
  Vector3d y = skin.corner(face, (edge + 2) % 3) - a;
  y -= y.dot(x) * x;
  if (y.norm() > 0) y.normalize();
  const Vector3d d = direction.x() * x + direction.y() * y;
  return d.norm() > 0 ? Vector3d(d.normalized()) : x;
}

/// The walk itself: where it is, and the path so far.
class Walker {
public:
  Walker(const Surface& skin, double length_mm) : skin_(skin), left_mm_(length_mm) {}

  Walk from_inside(const SurfacePoint& start, const Vector3d& heading);
  Walk from_edge(const SurfacePoint& start, int edge, const Vector3d& heading);
  Walk from_vertex(const SurfacePoint& start, int k, const Vector3d& heading);

private:
  Walk go(std::optional<Entry> next);
  /// Crosses one face; empty when the walk has ended.
  std::optional<Entry> cross_face(const Entry& here);
  std::optional<Entry> over_edge(int face, int edge, double along_mm, const Vector2d& direction);
  std::optional<Entry> leave_vertex(int vertex, int face, double angle);
  std::optional<Entry> through_vertex(int face, int k, double back_angle);
  void begin(const SurfacePoint& start, const Vector3d& heading);
  void end_inside(int face, int edge, const Vector2d& q, const Vector2d& direction);
  void step_to(const SurfacePoint& p, double mm, const Vector3d& heading);
  void stop_at_border() { walk_.reached_border = true; }

  const Surface& skin_;
  double left_mm_;
  Walk walk_;
};

void Walker::begin(const SurfacePoint& start, const Vector3d& heading) {
  walk_.end = start;
  walk_.at = skin_.position(start);
  walk_.heading = heading;
  walk_.line.push_back(walk_.at);
}

void Walker::step_to(const SurfacePoint& p, double mm, const Vector3d& heading) {
  walk_.end = p;
  walk_.at = skin_.position(p);
  walk_.heading = heading;
  walk_.length_mm += mm;
  left_mm_ -= mm;
  if (mm > 0) walk_.line.push_back(walk_.at);
}

void Walker::end_inside(int face, int edge, const Vector2d& q, const Vector2d& direction) {
  const Flap flap = lay_flat(skin_, face, edge);
  Vector3d w = Vector3d::Zero();
  const double tip = flap.y > 0 ? std::clamp(q.y() / flap.y, 0.0, 1.0) : 0;
  w[(edge + 2) % 3] = tip;
  w[(edge + 1) % 3] = flap.length > 0 ? (q.x() - tip * flap.x) / flap.length : 0;
  w[edge] = 1 - w[(edge + 1) % 3] - tip;
  const double rest = left_mm_;
  step_to({face, clamp_weights(w)}, rest, in_space(skin_, face, edge, direction));
  left_mm_ = 0;
}

SurfacePoint on_edge(int face, int edge, double part) {
  SurfacePoint p{face, Vector3d::Zero()};
  p.weights[edge] = 1 - part;
  p.weights[(edge + 1) % 3] = part;
  return p;
}

// Turns into the face across an edge; `direction` is on the face behind, laid flat over that same edge, and
// points out of it (y <= 0).
std::optional<Entry> Walker::over_edge(int face, int edge, double along_mm, const Vector2d& direction) {
  const Neighbour n = skin_.neighbour(face, edge);
  if (n.face < 0) {
    stop_at_border();
    return {};
  }
  const double length = (skin_.corner(face, (edge + 1) % 3) - skin_.corner(face, edge)).norm();
  return Entry{n.face, n.edge, length - along_mm, {-direction.x(), std::max(0.0, -direction.y())}};
}

// Leaves a vertex into `face`, at `angle` from that face's edge that starts at the vertex, turning
// counter-clockwise; goes on round the vertex while the angle reaches past a face.
std::optional<Entry> Walker::leave_vertex(int vertex, int face, double angle) {
  const int first = face;
  for (;;) {
    const int k = corner_index(skin_, face, vertex);
    const double here = angle_at(skin_, face, k);
    const Neighbour next = skin_.neighbour(face, (k + 2) % 3);
    if (angle <= here || next.face < 0) {
      const double a = std::clamp(angle, 0.0, here);
      return Entry{face, k, 0, {std::cos(a), std::sin(a)}};
    }
    angle -= here;
    face = next.face;
    if (face == first && angle <= 0) angle = 0;
  }
}

// The straightest way on has as much skin angle on its left as on its right (Polthier and Schmies 1998).
// `back_angle`: where the walk came from, in `face`, counter-clockwise from its edge that starts at the
// vertex.
std::optional<Entry> Walker::through_vertex(int face, int k, double back_angle) {
  const int vertex = skin_.triangle(face)[at(k)];
  if (skin_.is_border_vertex(vertex)) {
    stop_at_border();
    return {};
  }
  double total = 0;
  for (const int f : skin_.faces_around(vertex)) total += angle_at(skin_, f, corner_index(skin_, f, vertex));
  return leave_vertex(vertex, face, back_angle + total / 2);
}

std::optional<Entry> Walker::cross_face(const Entry& here) {
  const Flap flap = lay_flat(skin_, here.face, here.edge);
  const Vector2d p(here.along_mm, 0), tip(flap.x, flap.y), &d = here.direction;
  const double ahead = d.dot(tip - p);
  if (ahead > 0 && std::abs(cross(d, tip - p)) <= through_corner * ahead) {
    if (ahead >= left_mm_) {
      end_inside(here.face, here.edge, p + left_mm_ * d, d);
      return {};
    }
    const int k = (here.edge + 2) % 3;
    step_to(on_edge(here.face, k, 0), ahead, in_space(skin_, here.face, here.edge, d));
    return through_vertex(here.face, k, angle_between(-tip, -d));
  }
  // The corner opposite decides the way out, whatever rounding does elsewhere: a step can be short, but it
  // always leaves by one of the other two edges.
  const bool tip_on_left = cross(d, tip - p) > 0;
  const int edge = tip_on_left ? (here.edge + 1) % 3 : (here.edge + 2) % 3;
  const Vector2d from = tip_on_left ? Vector2d(flap.length, 0) : tip;
  const Vector2d to = tip_on_left ? tip : Vector2d(0, 0);
  const double from_side = cross(d, from - p), to_side = cross(d, to - p);
  const double spread = to_side - from_side;
  const double part = spread > 0 ? std::clamp(-from_side / spread, 0.0, 1.0) : (d.x() > 0 ? 0.0 : 1.0);
  const Vector2d out = from + part * (to - from);
  const double mm = (out - p).norm();
  if (mm >= left_mm_) {
    end_inside(here.face, here.edge, p + left_mm_ * d, d);
    return {};
  }
  step_to(on_edge(here.face, edge, part), mm, in_space(skin_, here.face, here.edge, d));
  if (part <= through_corner || part >= 1 - through_corner) {
    const int k = part < 0.5 ? edge : (edge + 1) % 3;
    // The way back, seen from the corner: from the edge that starts there, counter-clockwise.
    const int next = (k + 1) % 3;
    const auto place = [&](int corner) {
      return corner == here.edge             ? Vector2d(0, 0)
             : corner == (here.edge + 2) % 3 ? tip
                                             : Vector2d(flap.length, 0);
    };
    const Vector2d side = place(next) - place(k);
    return through_vertex(here.face, k, angle_between(side, -d));
  }
  const Vector2d along = (to - from).normalized();
  return over_edge(here.face, edge, part * (to - from).norm(), {along.dot(d), cross(along, d)});
}

Walk Walker::go(std::optional<Entry> next) {
  int idle = 0;
  while (next && left_mm_ > 0) {
    const double before = left_mm_;
    next = cross_face(*next);
    idle = left_mm_ < before ? 0 : idle + 1;
    if (idle > most_idle_steps)
      throw GeometryError(
          Message::of("The walk got stuck among triangles without area; repair the mesh first."));
  }
  return std::move(walk_);
}

// --- Starts

Vector3d in_face_plane(const Vector3d& heading, const Vector3d& normal) {
  const Vector3d flat = heading - heading.dot(normal) * normal;
  if (!(flat.norm() > 1e-6 * heading.norm()))
    throw GeometryError(
        Message::of("The walk's direction stands upright on the skin here; choose one along the skin."));
  return flat.normalized();
}

Walk Walker::from_inside(const SurfacePoint& start, const Vector3d& heading) {
  const Vector3d flat = in_face_plane(heading, skin_.face_normal(start.face));
  begin(start, flat);
  const Flap flap = lay_flat(skin_, start.face, 0);
  const Vector3d x = (skin_.corner(start.face, 1) - skin_.corner(start.face, 0)).normalized();
  const Vector2d p = on_flap(flap, start, 0),
                 d(flat.dot(x), flat.dot(skin_.face_normal(start.face).cross(x)));
  const std::array<Vector2d, 3> corners{Vector2d(0, 0), Vector2d(flap.length, 0), Vector2d(flap.x, flap.y)};
  // Counter-clockwise round the face, the edge going out is the one that passes from right to left of the
  // line.
  int edge = 0;
  double widest = -1;
  for (int k = 0; k < 3; ++k) {
    const double from = cross(d, corners[at(k)] - p), to = cross(d, corners[at((k + 1) % 3)] - p);
    if (from <= 0 && to >= 0 && to - from > widest) {
      widest = to - from;
      edge = k;
    }
  }
  const Vector2d& from = corners[at(edge)];
  const Vector2d& to = corners[at((edge + 1) % 3)];
  const double from_side = cross(d, from - p), to_side = cross(d, to - p);
  const double part = to_side > from_side ? std::clamp(-from_side / (to_side - from_side), 0.0, 1.0) : 0.5;
  const double mm = (from + part * (to - from) - p).norm();
  if (mm >= left_mm_) {
    end_inside(start.face, 0, p + left_mm_ * d, d);
    walk_.heading = flat;
    return std::move(walk_);
  }
  step_to(on_edge(start.face, edge, part), mm, flat);
  if (part <= through_corner || part >= 1 - through_corner) {
    const int k = part < 0.5 ? edge : (edge + 1) % 3;
    const Vector2d side = corners[at((k + 1) % 3)] - corners[at(k)];
    return go(through_vertex(start.face, k, angle_between(side, -d)));
  }
  const Vector2d along = (to - from).normalized();
  return go(over_edge(start.face, edge, part * (to - from).norm(), {along.dot(d), cross(along, d)}));
}

Walk Walker::from_edge(const SurfacePoint& start, int edge, const Vector3d& heading) {
  const int face = start.face;
  const Neighbour n = skin_.neighbour(face, edge);
  Vector3d normal = skin_.face_normal(face);
  if (n.face >= 0) normal += skin_.face_normal(n.face);
  if (!(normal.norm() > 1e-6)) normal = skin_.face_normal(face);
  normal.normalize();
  const Vector3d flat = in_face_plane(heading, normal);
  const Vector3d side = skin_.corner(face, (edge + 1) % 3) - skin_.corner(face, edge);
  const double length = side.norm(),
               along = start.weights[(edge + 1) % 3] / (1 - start.weights[(edge + 2) % 3]);
  const Vector3d x = side / length;
  const Vector2d d = Vector2d(flat.dot(x), flat.dot(normal.cross(x))).normalized();
  begin(start, flat);
  if (d.y() >= 0) return go(Entry{face, edge, along * length, d});
  return go(over_edge(face, edge, along * length, d));
}

Walk Walker::from_vertex(const SurfacePoint& start, int k, const Vector3d& heading) {
  const int vertex = skin_.triangle(start.face)[at(k)];
  const Vector3d normal = skin_.smooth_normal(start);
  const Vector3d flat = in_face_plane(heading, normal);
  begin(start, flat);
  // The faces round the vertex, pressed flat into the tangent plane: the heading falls into one of them, at
  // some part of its pressed angle, and sets out at the same part of its real one.
  const Vector3d left = normal.cross(flat);
  const auto bearing = [&](const Vector3d& to) {
    const Vector3d v = to - skin_.vertex(vertex);
    return std::atan2(v.dot(left), v.dot(flat));
  };
  std::optional<Entry> way;
  double nearest = 1e9;
  for (const int face : skin_.faces_around(vertex)) {
    const int c = corner_index(skin_, face, vertex);
    const double from = bearing(skin_.corner(face, (c + 1) % 3)),
                 to = bearing(skin_.corner(face, (c + 2) % 3));
    double pressed = to - from;
    if (pressed < 0) pressed += 2 * pi;
    // Outside by how much: nothing when the heading (bearing 0) lies between the two edges.
    const bool inside = pressed > 0 && pressed < pi && from <= 0 && from + pressed >= 0;
    const double outside = inside ? -1 : std::min(std::abs(from), std::abs(to));
    if (outside >= nearest) continue;
    nearest = outside;
    const double part = inside ? -from / pressed : std::abs(from) <= std::abs(to) ? 0.0 : 1.0;
    const double angle = part * angle_at(skin_, face, c);
    way = Entry{face, c, 0, {std::cos(angle), std::sin(angle)}};
  }
  // Rounding may leave a heading just outside every face; at a border it may really point off the skin.
  constexpr double rounding = 1e-9;
  if (nearest > rounding && skin_.is_border_vertex(vertex)) {
    stop_at_border();
    return std::move(walk_);
  }
  return go(way);
}

}  // namespace

Walk walk(const Surface& skin, const SurfacePoint& start, const Vector3d& heading, double length_mm) {
  if (!std::isfinite(length_mm) || length_mm < 0 || length_mm > longest_mm)
    throw GeometryError(Message::of("The length of a walk must be a number from 0 mm to a kilometre."));
  const double size = heading.norm();
  if (!heading.allFinite() || !(size > 0) || !std::isfinite(size))
    throw GeometryError(Message::of("The direction of a walk must be three numbers, not all zero."));
  const Vector3d unit = heading / size;
  if (std::abs(unit.dot(skin.smooth_normal(start))) > std::sin(max_tilt_deg * pi / 180))
    throw GeometryError(Message::of(
        "The walk's direction points more than 60 degrees away from the skin; choose one along the skin."));
  Walker walker(skin, length_mm);
  for (int k = 0; k < 3; ++k)
    if (start.weights[k] >= 1 - on_rim) return walker.from_vertex(start, k, unit);
  for (int k = 0; k < 3; ++k)
    if (start.weights[k] <= on_rim) return walker.from_edge(start, (k + 1) % 3, unit);
  return walker.from_inside(start, unit);
}

}  // namespace scalpmark::geometry
