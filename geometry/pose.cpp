#include "geometry/pose.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// A box's extent as seen along a unit direction from a point.
struct Extent {
  double middle, half;
};

Extent extent_along(const Vector3d& low, const Vector3d& high, const Vector3d& from,
                    const Vector3d& direction) {
  const Vector3d centre = 0.5 * (low + high) - from, half = 0.5 * (high - low);
  return {centre.dot(direction), half.dot(direction.cwiseAbs())};
}

bool inside(const std::vector<Vector2d>& outline, const Vector2d& q) {
  bool in = false;
  for (size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
    const Vector2d &a = outline[i], &b = outline[j];
    if ((a.y() > q.y()) != (b.y() > q.y()) &&
        q.x() < (b.x() - a.x()) * (q.y() - a.y()) / (b.y() - a.y()) + a.x())
      in = !in;
  }
  return in;
}

double cross(const Vector2d& a, const Vector2d& b) {
  return a.x() * b.y() - a.y() * b.x();
}

/// The highest point of a triangle within an outline: at a corner inside it, where edges cross, or at a
/// corner of the outline inside the triangle. x, y across the coil's face, z the height; at most `known`
/// counts for nothing.
double highest_within(const std::array<Vector3d, 3>& corners, const std::vector<Vector2d>& outline,
                      double known) {
  double highest = known;
  std::array<Vector2d, 3> flat;
  for (size_t k = 0; k < 3; ++k) {
    flat[k] = corners[k].head<2>();
    if (corners[k].z() > highest && inside(outline, flat[k])) highest = corners[k].z();
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
      highest = std::max(highest, corners[k].z() + t * (corners[(k + 1) % 3].z() - corners[k].z()));
    }
    if (area != 0) {
      const double u = cross(p - flat[0], e2) / area, v = cross(e1, p - flat[0]) / area;
      if (u >= 0 && v >= 0 && u + v <= 1)
        highest = std::max(highest, corners[0].z() + u * (corners[1].z() - corners[0].z()) +
                                        v * (corners[2].z() - corners[0].z()));
    }
  }
  return highest;
}

}  // namespace

CoilPose tilted(const CoilPose& pose, const Tilt& tilt) {
  constexpr double radians = M_PI / 180;
  const Eigen::Quaterniond turn(Eigen::AngleAxisd(tilt.roll_deg * radians, pose.front) *
                                Eigen::AngleAxisd(tilt.pitch_deg * radians, pose.right()));
  return {pose.pulse, turn * pose.normal, turn * pose.front};
}

Vector3d contact_normal(const Surface& skin, const SurfacePoint& at, double patch_mm) {
  const Vector3d centre = skin.position(at), facing = skin.smooth_normal(at);
  const double patch2 = patch_mm * patch_mm;
  Vector3d sum = Vector3d::Zero();
  const auto weight = [&](const Vector3d& q) {
    const double r2 = (q - centre).squaredNorm() / patch2;
    return r2 < 1 ? (1 - r2) * (1 - r2) : 0.0;
  };
  skin.visit(
      [&](const Vector3d& low, const Vector3d& high) {
        return (centre.cwiseMax(low).cwiseMin(high) - centre).squaredNorm() < patch2;
      },
      [&](int face) {
        const Vector3d &a = skin.corner(face, 0), &b = skin.corner(face, 1), &c = skin.corner(face, 2);
        const Vector3d area = (b - a).cross(c - a);
        // The far wall of something thin (an ear) is not what the coil settles on.
        if (area.dot(facing) <= 0) return;
        sum += (weight(0.5 * (a + b)) + weight(0.5 * (b + c)) + weight(0.5 * (c + a))) * area;
      });
  return sum.norm() > 0 ? Vector3d(sum.normalized()) : facing;
}

double clearing_lift(const Surface& skin, const Coil& coil, const CoilPose& pose) {
  const Vector3d right = pose.right();
  double lift = 0;
  for (const CoilPart& part : coil.parts) {
    if (part.outline.size() < 3) continue;
    Vector2d low = part.outline.front(), high = low;
    for (const auto& p : part.outline) {
      low = low.cwiseMin(p);
      high = high.cwiseMax(p);
    }
    const double base = part.bottom_mm;
    skin.visit(
        [&](const Vector3d& box_low, const Vector3d& box_high) {
          const Extent z = extent_along(box_low, box_high, pose.pulse, pose.normal);
          if (z.middle + z.half - base <= lift) return false;
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
            corners[static_cast<size_t>(k)] = {d.dot(right), d.dot(pose.front), d.dot(pose.normal)};
            top = std::max(top, corners[static_cast<size_t>(k)].z());
          }
          if (top - base > lift) lift = highest_within(corners, part.outline, lift + base) - base;
        });
  }
  return lift;
}

}  // namespace scalpmark::geometry
