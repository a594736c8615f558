#include "geometry/surface/section.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>

#include "geometry/base/error.h"
#include "geometry/surface/triangle_math.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// Corners within this of the plane's section still count as the start's own place, mm: well over rounding on
/// a head of 300 mm (1e-13), far under anything a tape shows.
constexpr double same_point_mm = 1e-6;

/// How far an end may lie off the section that should lead to it, mm.
constexpr double end_tolerance_mm = 0.05;

struct Follower {
  const Surface& skin;
  Plane plane;

  // Zero counts as above, everywhere alike, so that every face has two crossed edges or none.
  [[nodiscard]] bool above(int vertex) const { return plane.height(skin.vertex(vertex)) >= 0; }

  [[nodiscard]] int corner_vertex(int face, int k) const {
    return skin.triangle(face)[static_cast<size_t>(k)];
  }

  [[nodiscard]] bool crosses(int face, int edge) const {
    return above(corner_vertex(face, edge)) != above(corner_vertex(face, (edge + 1) % 3));
  }

  [[nodiscard]] SectionPoint crossing(int face, int edge) const {
    const int next = (edge + 1) % 3;
    const double from = plane.height(skin.corner(face, edge)), to = plane.height(skin.corner(face, next));
    const double t = std::clamp(from / (from - to), 0.0, 1.0);
    SectionPoint p;
    p.on_skin.face = face;
    p.on_skin.weights.setZero();
    p.on_skin.weights[edge] = 1 - t;
    p.on_skin.weights[next] = t;
    p.at = skin.position(p.on_skin);
    return p;
  }

  /// Having come in by `edge`, the edge by which the section leaves.
  [[nodiscard]] int exit_edge(int face, int edge) const {
    const bool apex = above(corner_vertex(face, (edge + 2) % 3));
    return apex == above(corner_vertex(face, edge)) ? (edge + 1) % 3 : (edge + 2) % 3;
  }

  struct Exit {
    int face = -1, edge = -1;
    SectionPoint point;
  };

  /// The face and edge by which to leave `start` toward `heading`. A start on a corner or an edge may lie in
  /// a face that the plane does not cross; then the crossed face around it that leads furthest is taken.
  [[nodiscard]] Exit first_exit(const SurfacePoint& start, const Vector3d& heading) const {
    const Vector3d from = skin.position(start);
    Exit best;
    double best_progress = -std::numeric_limits<double>::infinity();
    const auto consider = [&](int face) {
      std::array<SectionPoint, 2> ends;
      std::array<int, 2> edges{};
      size_t count = 0;
      for (int k = 0; k < 3 && count < 2; ++k)
        if (crosses(face, k)) {
          edges[count] = k;
          ends[count++] = crossing(face, k);
        }
      if (count < 2) return;
      const Vector3d along = ends[1].at - ends[0].at;
      const double length2 = along.squaredNorm();
      const double t = length2 > 0 ? std::clamp((from - ends[0].at).dot(along) / length2, 0.0, 1.0) : 0.0;
      if ((ends[0].at + t * along - from).norm() > same_point_mm) return;
      for (size_t i = 0; i < 2; ++i) {
        const double progress = (ends[i].at - from).dot(heading);
        if (progress > best_progress) {
          best_progress = progress;
          best = {face, edges[i], ends[i]};
        }
      }
    };
    consider(start.face);
    // In the inside of a face there is nothing else to consider.
    if (best.face < 0 || best_progress < same_point_mm)
      for (const int vertex : skin.triangle(start.face))
        for (const int face : skin.faces_around(vertex)) consider(face);
    return best;
  }

  /// From a border edge straight across the hole to the other rim: the face and edge to come in by.
  [[nodiscard]] std::optional<Exit> across_hole(int face, int edge, const Vector3d& from, const Vector3d& way,
                                                double reach_mm) const {
    std::optional<Exit> best;
    double best_distance = reach_mm;
    const int rim_vertex = corner_vertex(face, edge);
    for (const auto& loop : skin.borders()) {
      if (std::find(loop.begin(), loop.end(), rim_vertex) == loop.end()) continue;
      for (const int vertex : loop) {
        const int f = skin.face_at(vertex);
        const auto& t = skin.triangle(f);
        const int k = t[0] == vertex ? 0 : t[1] == vertex ? 1 : 2;
        if (skin.neighbour(f, k).face >= 0 || (f == face && k == edge) || !crosses(f, k)) continue;
        const SectionPoint p = crossing(f, k);
        const double distance = (p.at - from).norm();
        if (distance < best_distance && (p.at - from).dot(way) > 0) {
          best_distance = distance;
          best = Exit{f, k, p};
        }
      }
    }
    return best;
  }
};

}  // namespace

Section follow_section(const Surface& skin, const SurfacePoint& start, const Vector3d& normal,
                       const Vector3d& heading, const SectionOptions& options) {
  const Vector3d from = skin.position(start);
  const Follower follower{skin, {from, normal}};
  Section section;
  section.points.push_back({start, from});
  auto exit = follower.first_exit(start, heading);
  if (exit.face < 0)
    throw GeometryError(Message::of(
        "The skin is flat where a tape line should start, so the line has no direction; move the point a little."));
  const int first_face = exit.face;
  bool there = false;
  const auto append = [&](const SectionPoint& p) {
    const Vector3d last = section.points.back().at, along = p.at - last;
    section.length_mm += along.norm();
    section.points.push_back(p);
    if (!options.until) return;
    const Vector3d to_end = *options.until - last;
    const double length2 = along.squaredNorm();
    const double t = length2 > 0 ? std::clamp(to_end.dot(along) / length2, 0.0, 1.0) : 0.0;
    there = (to_end - t * along).squaredNorm() < same_point_mm * same_point_mm;
  };
  append(exit.point);
  int face = exit.face, edge = exit.edge;
  // A section visits a face once; holes add a rim crossing each.
  const size_t most = 2 * skin.triangles().size() + 2;
  while (!there && section.length_mm < options.reach_mm && section.points.size() < most) {
    const Neighbour n = skin.neighbour(face, edge);
    if (n.face < 0) {
      const auto& points = section.points;
      const Vector3d here = points.back().at;
      Vector3d way = Vector3d::Zero();
      for (size_t i = points.size() - 1; i-- > 0 && way.norm() < same_point_mm;) way = here - points[i].at;
      const auto rim = follower.across_hole(face, edge, here, way, options.bridge_mm);
      if (!rim) {
        section.reached_border = true;
        break;
      }
      append(rim->point);
      face = rim->face;
      edge = follower.exit_edge(rim->face, rim->edge);
    } else {
      face = n.face;
      edge = follower.exit_edge(n.face, n.edge);
    }
    if (face == first_face) {
      append({start, from});
      section.closed = true;
      break;
    }
    append(follower.crossing(face, edge));
  }
  return section;
}

SectionPoint between(const Surface& skin, const std::vector<SectionPoint>& section, size_t i, double t) {
  const SectionPoint &a = section[i], &b = section[i + 1];
  if (t <= 0) return a;
  if (t >= 1) return b;
  const Vector3d at = a.at + t * (b.at - a.at);
  const int face = b.on_skin.face;
  return {{face, closest_weights(at, skin.corner(face, 0), skin.corner(face, 1), skin.corner(face, 2))}, at};
}

std::vector<SectionPoint> cut_section(const Surface& skin, const Section& section, const SurfacePoint& end) {
  const Vector3d at = skin.position(end);
  const auto& points = section.points;
  const OnLine hit = nearest_on_line(
      0, points.size() - 1, [&](size_t i) { return points[i].at; }, at);
  if (hit.distance > end_tolerance_mm) return {};
  std::vector<SectionPoint> cut(points.begin(),
                                points.begin() + static_cast<std::ptrdiff_t>(hit.segment) + 1);
  // The last stretch keeps the face it runs in; the end itself may be filed under a face beside it.
  SectionPoint last = between(skin, points, hit.segment, hit.t);
  last.on_skin.face = points[hit.segment + 1].on_skin.face;
  const int face = last.on_skin.face;
  last.on_skin.weights =
      closest_weights(at, skin.corner(face, 0), skin.corner(face, 1), skin.corner(face, 2));
  last.at = at;
  cut.push_back(last);
  return cut;
}

double section_length(const Surface& skin, const SurfacePoint& a, const SurfacePoint& b) {
  const Vector3d from = skin.position(a), chord = skin.position(b) - from;
  const Vector3d across = chord.cross(skin.smooth_normal(a) + skin.smooth_normal(b));
  constexpr double infinity = std::numeric_limits<double>::infinity();
  if (!(across.norm() > 1e-9 * chord.norm())) return infinity;
  const Vector3d level = across.normalized(), upright = level.cross(chord.normalized());
  const Vector3d to = from + chord;
  const auto length_tilted = [&](double tilt, double at_most) {
    try {
      const Section section =
          follow_section(skin, a, std::cos(tilt) * level + std::sin(tilt) * upright, chord,
                         {.reach_mm = std::min(at_most, 4 * chord.norm() + 10), .bridge_mm = 0, .until = to});
      const auto cut = cut_section(skin, section, b);
      double mm = cut.empty() ? infinity : 0;
      for (size_t i = 1; i < cut.size(); ++i) mm += (cut[i].at - cut[i - 1].at).norm();
      return mm;
    } catch (const GeometryError&) {
      return infinity;  // no line leaves a in that plane
    }
  };
  double best = 0, best_mm = length_tilted(0, infinity);
  const auto better = [&](double tilt) {
    const double mm = length_tilted(tilt, best_mm);
    if (!(mm < best_mm)) return false;
    best = tilt;
    best_mm = mm;
    return true;
  };
  for (double step = 0.2; step > 0.02; step /= 4)
    for (const double way : {-step, step})
      while (better(best + way)) {
      }
  return best_mm;
}

}  // namespace scalpmark::geometry
