#include "geometry/exercise/pulled_tape.h"

#include <Eigen/Geometry>
#include <algorithm>

#include "geometry/base/error.h"
#include "geometry/surface/patch_normal.h"
#include "geometry/tapes/tape.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// A tape is about a centimetre wide: the skin's direction under it, mm.
constexpr double tape_patch_mm = 10;
/// Points nearer than this are one, and a tape as straight as this (its height over the chord to the chord)
/// is straight.
constexpr double one_place_mm = 0.2, straight = 1e-3;

void append(PulledTape& tape, const std::vector<Vector3d>& line) {
  for (const Vector3d& at : line) {
    if (!tape.line.empty()) tape.length_mm += (at - tape.line.back()).norm();
    tape.line.push_back(at);
  }
}

bool in_one_line(const Vector3d& a, const Vector3d& over, const Vector3d& b) {
  const Vector3d chord = b - a;
  return (over - a).cross(chord).norm() <= straight * chord.squaredNorm();
}

/// The stretch held at three points.
void add_over(PulledTape& tape, const Surface& skin, const SurfacePoint& a, const SurfacePoint& over,
              const SurfacePoint& b) {
  const Vector3d from = skin.position(a), middle = skin.position(over), to = skin.position(b);
  if (in_one_line(from, middle, to))
    append(tape, {from, to});
  else
    append(tape, Tape::over(skin, a, over, b).line());
}

/// The skin over the middle of two points: by the skin's mean direction there, the more the two directions
/// differ the more by the head's up.
SurfacePoint over_the_middle(const Head& head, const SurfacePoint& a, const SurfacePoint& b) {
  constexpr double above_mm = 400;
  const Surface& skin = head.skin();
  const Vector3d mean = 0.5 * (patch_normal(skin, a, tape_patch_mm) + patch_normal(skin, b, tape_patch_mm));
  const Vector3d way = (mean + (1 - mean.norm()) * head.axes().up).normalized();
  const Vector3d middle = 0.5 * (skin.position(a) + skin.position(b));
  const auto hit = skin.ray_hit(middle + above_mm * way, -way, 2 * above_mm);
  return hit ? hit->point : skin.closest(middle);
}

}  // namespace

Vector3d PulledTape::at_mm(double mm) const {
  double before = 0;
  for (size_t i = 1; i < line.size(); ++i) {
    const double length = (line[i] - line[i - 1]).norm();
    if (mm <= before + length && length > 0)
      return line[i - 1] + std::max(0.0, mm - before) / length * (line[i] - line[i - 1]);
    before += length;
  }
  return line.empty() ? Vector3d(Vector3d::Zero()) : line.back();
}

PulledTape pull_tape(const Head& head, const std::vector<Vector3d>& held_at, bool closed) {
  const Surface& skin = head.skin();
  std::vector<SurfacePoint> points;
  for (const Vector3d& at : held_at) points.push_back(skin.closest(at));
  if (closed && points.size() > 1) points.push_back(points.front());
  if (points.size() < 2)
    throw GeometryError(Message::of("A tape is held at two points or more; give it another."));
  for (size_t i = 1; i < points.size(); ++i)
    if ((skin.position(points[i]) - skin.position(points[i - 1])).norm() < one_place_mm)
      throw GeometryError(
          Message::of("Two points that the tape is held at lie in one place; pull it on from there."));
  PulledTape tape;
  size_t i = 0;
  for (; i + 2 < points.size(); i += 2) add_over(tape, skin, points[i], points[i + 1], points[i + 2]);
  if (i + 1 < points.size())
    add_over(tape, skin, points[i], over_the_middle(head, points[i], points[i + 1]), points[i + 1]);
  return tape;
}

}  // namespace scalpmark::geometry
