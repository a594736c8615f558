#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// Where a walk over the skin came to.
struct Walk {
  SurfacePoint end;
  Eigen::Vector3d at = Eigen::Vector3d::Zero();  ///< position of `end`
  Eigen::Vector3d heading =
      Eigen::Vector3d::UnitX();  ///< unit tangent at the end, the way the walk was going
  double length_mm = 0;          ///< walked; shorter than asked only at a border
  bool reached_border = false;
  std::vector<Eigen::Vector3d> line;  ///< the path, for drawing
};

/// Walks `length_mm` over the skin from `start` in the tangent direction `heading` (unit, world frame) along
/// the straightest geodesic (Polthier and Schmies 1998). Stops at a border and says so. A negative or
/// non-finite length, or a heading more than 60 degrees out of the tangent plane, is refused (GeometryError).
[[nodiscard]] Walk walk(const Surface& skin, const SurfacePoint& start, const Eigen::Vector3d& heading,
                        double length_mm);

}  // namespace scalpmark::geometry
