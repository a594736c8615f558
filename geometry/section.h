#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/surface.h"

namespace scalpmark::geometry {

/// A plane through `point`, unit `normal`.
struct Plane {
  Eigen::Vector3d point = Eigen::Vector3d::Zero();
  Eigen::Vector3d normal = Eigen::Vector3d::UnitZ();
  [[nodiscard]] double height(const Eigen::Vector3d& q) const { return (q - point).dot(normal); }
};

/// One corner of a section line.
struct SectionPoint {
  SurfacePoint on_skin;
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
};

/// The line in which a plane cuts the skin, as an ordered polyline that starts at a skin point.
struct Section {
  std::vector<SectionPoint> points;
  bool closed = false;          ///< came back to the start (the start is then also the last point)
  bool reached_border = false;  ///< ended at the skin's border
  double length_mm = 0;
};

struct SectionOptions {
  /// Stop once the line is this long, mm.
  double reach_mm = 1e9;
  /// Where the line meets a hole in the skin, go straight on to the hole's other rim, if it is no wider than
  /// this.
  double bridge_mm = 60;
};

/// Follows the section of the skin by the plane through `start` with unit `normal`, from `start` in the
/// direction in which `heading` has a positive component. A plane that passes exactly through corners is
/// handled by treating them as lying just above it. Refuses (GeometryError) a start the plane cannot leave (a
/// skin that is flat there and parallel to the plane).
[[nodiscard]] Section follow_section(const Surface& skin, const SurfacePoint& start,
                                     const Eigen::Vector3d& normal, const Eigen::Vector3d& heading,
                                     const SectionOptions& options = {});

}  // namespace scalpmark::geometry
