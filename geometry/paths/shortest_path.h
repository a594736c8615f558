#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// A shortest path over the skin.
struct ShortestPath {
  double length_mm = 0;
  std::vector<Eigen::Vector3d> line;  ///< from first to second point, corner by corner
};

/// The shortest path between two skin points, exact on the triangles (windows of Chen and Han 1990 with the
/// filter and priority order of Xin and Wang 2009, ACM Trans Graph 28:104). Refuses (GeometryError) points on
/// separate pieces of skin.
[[nodiscard]] ShortestPath shortest_path(const Surface& skin, const SurfacePoint& a, const SurfacePoint& b);

/// The lengths alone, from one point to several, in one propagation that ends once all are settled. A point
/// on a separate piece of skin gets infinity.
[[nodiscard]] std::vector<double> shortest_distances(const Surface& skin, const SurfacePoint& from,
                                                     const std::vector<SurfacePoint>& to);

}  // namespace scalpmark::geometry
