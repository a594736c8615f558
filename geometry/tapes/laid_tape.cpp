#include "geometry/tapes/laid_tape.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/surface/patch_normal.h"
#include "geometry/surface/triangle_math.h"
#include "geometry/tapes/tape.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

constexpr double band_mm = 8;  ///< half of a tape's width and a little: what it rests on
constexpr double stretch_mm =
    15;  ///< on an ellipsoid of a head's size, within 0.1 mm of the geodesic at 60 mm

}  // namespace

std::optional<LaidTape> lay_tape(const Surface& skin, const SurfacePoint& start, const Vector3d& heading,
                                 double length_mm) {
  if (!std::isfinite(length_mm) || length_mm < 0)
    throw GeometryError(Message::of("A tape's length must be a number from 0 up."));
  LaidTape tape{start, skin.position(start), {skin.position(start)}};
  const int stretches = std::max(1, static_cast<int>(std::ceil(length_mm / stretch_mm)));
  const double step_mm = length_mm / stretches;
  Vector3d normal = patch_normal(skin, start, band_mm);
  Vector3d way = tangent_part(heading, normal);
  for (int i = 0; i < stretches && step_mm > 0; ++i) {
    if (i > 0) {
      // Carried on without turning: by the least rotation that takes one direction of the skin to the next.
      const Vector3d next = patch_normal(skin, tape.end, band_mm);
      way = tangent_part(Eigen::Quaterniond::FromTwoVectors(normal, next) * way, next);
      normal = next;
    }
    try {
      const Tape stretch = Tape::along(skin, tape.end, normal.cross(way), way, step_mm);
      const auto line = stretch.line();
      tape.line.insert(tape.line.end(), line.begin() + 1, line.end());
      const SectionPoint last = stretch.at(1);
      tape.end = last.on_skin;
      tape.at = last.at;
    } catch (const GeometryError&) {
      return {};  // the skin ends before the tape does
    }
  }
  return tape;
}

std::optional<SurfacePoint> nearest_skin(const Surface& skin, const Vector3d& from) {
  SurfacePoint foot = skin.closest(from);
  Vector3d at = skin.position(foot);
  const double gap = (at - from).norm();
  // The nearest skin to a place past the border is the border itself: no skin faces it.
  for (int k = 0; k < 3; ++k)
    if (foot.weights[k] < 1e-9 && skin.neighbour(foot.face, (k + 1) % 3).face < 0) return {};
  if (gap < 1e-6) return foot;
  // Each round looks along the averaged direction found in the last; the foot overshoots by gap over radius,
  // so it is taken that much less far. Usual heads and gaps need three or four rounds.
  constexpr double typical_radius_mm = 85, settled_mm = 1e-4;
  const double ease = 1 / (1 + gap / typical_radius_mm);
  for (int round = 0; round < 30; ++round) {
    const Vector3d normal = patch_normal(skin, foot, band_mm);
    const auto hit = skin.ray_hit(from, -normal, 2 * gap + 10);
    if (!hit) return {};
    const Vector3d next = at + ease * (skin.position(hit->point) - at);
    const double moved = (next - at).norm();
    foot = moved < settled_mm ? hit->point : skin.closest(next);
    at = skin.position(foot);
    if (moved < settled_mm) break;
  }
  return foot;
}

}  // namespace scalpmark::geometry
