#include "geometry/coil/underside.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/surface/triangle_math.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// A wall that leans less than this faces nothing (sine of the lean).
constexpr double upright = 1e-6;

/// A box's extent as seen along a unit direction from a point.
struct Extent {
  double middle, half;
};

Extent extent_along(const Vector3d& low, const Vector3d& high, const Vector3d& from,
                    const Vector3d& direction) {
  const Vector3d centre = 0.5 * (low + high) - from, half = 0.5 * (high - low);
  return {centre.dot(direction), half.dot(direction.cwiseAbs())};
}

/// The highest point of a triangle within an outline: at a corner inside it, where edges cross, or at a
/// corner of the outline inside the triangle. x, y across the coil's face, z the height. `highest` is kept
/// unless something is higher.
void raise(Vector3d& highest, const std::array<Vector3d, 3>& corners, const std::vector<Vector2d>& outline) {
  std::array<Vector2d, 3> flat;
  for (size_t k = 0; k < 3; ++k) {
    flat[k] = corners[k].head<2>();
    if (corners[k].z() > highest.z() && within(outline, flat[k])) highest = corners[k];
  }
  const Vector2d e1 = flat[1] - flat[0], e2 = flat[2] - flat[0];
  const double area = cross(e1, e2);
  for (size_t i = 0; i < outline.size(); ++i) {
    const Vector2d &p = outline[i], way = outline[(i + 1) % outline.size()] - p;
    for (size_t k = 0; k < 3; ++k) {
      const Vector2d edge = flat[(k + 1) % 3] - flat[k];
      const double det = cross(way, edge);
      if (det == 0) continue;
      const double s = cross(flat[k] - p, edge) / det, t = cross(flat[k] - p, way) / det;
      if (s < 0 || s > 1 || t < 0 || t > 1) continue;
      const Vector3d at = corners[k] + t * (corners[(k + 1) % 3] - corners[k]);
      if (at.z() > highest.z()) highest = at;
    }
    if (area != 0) {
      const double u = cross(p - flat[0], e2) / area, v = cross(e1, p - flat[0]) / area;
      if (u < 0 || v < 0 || u + v > 1) continue;
      const Vector3d at = corners[0] + u * (corners[1] - corners[0]) + v * (corners[2] - corners[0]);
      if (at.z() > highest.z()) highest = at;
    }
  }
}

/// The piece through these corners, which lie in a plane that is not upright.
Underside piece(size_t part, bool is_wall, const std::vector<Vector3d>& corners, const Vector3d& normal) {
  Underside u;
  u.part = part;
  u.is_wall = is_wall;
  for (const auto& c : corners) u.outline.emplace_back(c.x(), c.y());
  u.slope = {-normal.x() / normal.z(), -normal.y() / normal.z()};
  u.height_mm = normal.dot(corners.front()) / normal.z();
  return u;
}

}  // namespace

std::optional<double> lowest_over(const std::vector<Underside>& pieces, const Vector2d& at) {
  std::optional<double> height;
  for (const Underside& piece : pieces)
    if (!piece.is_wall && within(piece.outline, at))
      height = height ? std::min(*height, piece.height_at(at)) : piece.height_at(at);
  return height;
}

bool within(const std::vector<Vector2d>& outline, const Vector2d& q) {
  bool in = false;
  for (size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
    const Vector2d &a = outline[i], &b = outline[j];
    if ((a.y() > q.y()) != (b.y() > q.y()) &&
        q.x() < (b.x() - a.x()) * (q.y() - a.y()) / (b.y() - a.y()) + a.x())
      in = !in;
  }
  return in;
}

std::vector<Underside> undersides(const Coil& coil) {
  std::vector<Underside> all;
  for (size_t i = 0; i < coil.parts.size(); ++i) {
    const CoilPart& part = coil.parts[i];
    if (part.outline.size() < 3) continue;
    const auto at = [&](const Vector2d& p, double z) { return bent({p.x(), p.y(), z}, part.bend_deg); };
    std::vector<Vector3d> bottom;
    for (const auto& p : part.outline) bottom.push_back(at(p, part.bottom_mm));
    all.push_back(piece(i, false, bottom, bent(Vector3d::UnitZ(), part.bend_deg)));
    if (part.bend_deg == 0) continue;
    for (size_t k = 0; k < part.outline.size(); ++k) {
      const Vector2d &p = part.outline[k], &q = part.outline[(k + 1) % part.outline.size()];
      const Vector2d along = (q - p).normalized();
      const Vector3d normal = bent({along.y(), -along.x(), 0}, part.bend_deg);
      if (normal.z() > -upright) continue;  // upright, or facing away from the head
      all.push_back(piece(
          i, true, {at(p, part.bottom_mm), at(q, part.bottom_mm), at(q, part.top_mm), at(p, part.top_mm)},
          normal));
    }
  }
  return all;
}

std::optional<Rise> highest_rise(const Surface& skin, const Underside& underside, const CoilPose& pose,
                                 double known_mm, const std::function<bool(int face)>& counts) {
  const Vector3d right = pose.right();
  Vector2d low = underside.outline.front(), high = low;
  for (const auto& p : underside.outline) {
    low = low.cwiseMin(p);
    high = high.cwiseMax(p);
  }
  // Heights over the underside, not over the coil's face: what slopes is sheared flat.
  const Vector3d over = pose.normal - underside.slope.x() * right - underside.slope.y() * pose.front;
  Vector3d highest(0, 0, known_mm);
  skin.visit(
      [&](const Vector3d& box_low, const Vector3d& box_high) {
        const Extent z = extent_along(box_low, box_high, pose.pulse, over);
        if (z.middle + z.half - underside.height_mm <= highest.z()) return false;
        const Extent x = extent_along(box_low, box_high, pose.pulse, right);
        if (x.middle + x.half < low.x() || x.middle - x.half > high.x()) return false;
        const Extent y = extent_along(box_low, box_high, pose.pulse, pose.front);
        return y.middle + y.half >= low.y() && y.middle - y.half <= high.y();
      },
      [&](int face) {
        std::array<Vector3d, 3> corners;
        double top = -1e300;
        for (int k = 0; k < 3; ++k) {
          const Vector3d d = skin.corner(face, k) - pose.pulse;
          corners[static_cast<size_t>(k)] = {d.dot(right), d.dot(pose.front),
                                             d.dot(over) - underside.height_mm};
          top = std::max(top, corners[static_cast<size_t>(k)].z());
        }
        if (top > highest.z() && (!counts || counts(face))) raise(highest, corners, underside.outline);
      });
  if (!(highest.z() > known_mm)) return {};
  const Vector2d at = highest.head<2>();
  return Rise{highest.z(),
              pose.pulse + at.x() * right + at.y() * pose.front +
                  (highest.z() + underside.height_at(at)) * pose.normal,
              at};
}

}  // namespace scalpmark::geometry
