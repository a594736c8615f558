#pragma once

#include <Eigen/Core>
#include <algorithm>
#include <cmath>

#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// A face laid flat over one of its edges: the edge runs from (0, 0) to (length, 0), the third corner lies at
/// (x, y), y >= 0. Lengths only, so it works for slivers without area too. mm.
struct Flap {
  double length = 0;
  double x = 0, y = 0;
};

[[nodiscard]] inline Flap lay_flat(double edge, double start_to_tip, double end_to_tip) {
  if (!(edge > 0)) return {0, 0, 0.5 * (start_to_tip + end_to_tip)};
  const double x = 0.5 * (edge + (start_to_tip - end_to_tip) * (start_to_tip + end_to_tip) / edge);
  return {edge, x, std::sqrt(std::max(0.0, (start_to_tip - x) * (start_to_tip + x)))};
}

/// Face `face` laid flat over its edge `edge` (from corner `edge` to the next).
[[nodiscard]] inline Flap lay_flat(const Surface& skin, int face, int edge) {
  const Eigen::Vector3d& a = skin.corner(face, edge);
  const Eigen::Vector3d& b = skin.corner(face, (edge + 1) % 3);
  const Eigen::Vector3d& c = skin.corner(face, (edge + 2) % 3);
  return lay_flat((b - a).norm(), (c - a).norm(), (c - b).norm());
}

/// Where a skin point of that face lies on the flap.
[[nodiscard]] inline Eigen::Vector2d on_flap(const Flap& flap, const SurfacePoint& p, int edge) {
  const double tip = p.weights[(edge + 2) % 3];
  return {p.weights[(edge + 1) % 3] * flap.length + tip * flap.x, tip * flap.y};
}

/// Where the line from (x, y), y <= 0, to (px, py), py >= 0, crosses the edge's line.
[[nodiscard]] inline double crossing_of(double x, double y, double px, double py) {
  const double rise = py - y;
  return rise > 0 ? x - (px - x) * (y / rise) : px;
}

}  // namespace scalpmark::geometry
