#pragma once

#include <Eigen/Core>
#include <algorithm>
#include <limits>
#include <optional>
#include <vector>

#include "geometry/surface/surface.h"

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
  /// Stop once the line has come through here (within a millionth of a millimetre).
  std::optional<Eigen::Vector3d> until = {};
};

/// Follows the section of the skin by the plane through `start` with unit `normal`, from `start` in the
/// direction in which `heading` has a positive component. A plane that passes exactly through corners is
/// handled by treating them as lying just above it. Refuses (GeometryError) a start the plane cannot leave (a
/// skin that is flat there and parallel to the plane).
[[nodiscard]] Section follow_section(const Surface& skin, const SurfacePoint& start,
                                     const Eigen::Vector3d& normal, const Eigen::Vector3d& heading,
                                     const SectionOptions& options = {});

/// The part of a section from its start to the skin point `end`, which must lie on it within 0.05 mm (the
/// plane is laid through both, so only rounding stands between); empty when it does not.
[[nodiscard]] std::vector<SectionPoint> cut_section(const Surface& skin, const Section& section,
                                                    const SurfacePoint& end);

/// The length of a skin line from a to b in a plane, mm: of the planes through both, tried from the one that
/// holds the skin's mean direction there, one with nearly the shortest line. A path over the skin, near the
/// shortest on a head. Infinity where no such line leads from one to the other.
[[nodiscard]] double section_length(const Surface& skin, const SurfacePoint& a, const SurfacePoint& b);

/// Nearest place to q on the polyline of points [first, last]. `t` runs from point `segment` to the next.
struct OnLine {
  size_t segment = 0;
  double t = 0;
  double distance = 0;
};
template <typename PointAt>
[[nodiscard]] OnLine nearest_on_line(size_t first, size_t last, const PointAt& point_at,
                                     const Eigen::Vector3d& q) {
  OnLine best{first, 0, std::numeric_limits<double>::infinity()};
  for (size_t i = first; i < last; ++i) {
    const Eigen::Vector3d a = point_at(i), along = point_at(i + 1) - a;
    const double length2 = along.squaredNorm();
    const double t = length2 > 0 ? std::clamp((q - a).dot(along) / length2, 0.0, 1.0) : 0.0;
    const double distance = (a + t * along - q).norm();
    if (distance < best.distance) best = {i, t, distance};
  }
  return best;
}

/// The point at `t` on the stretch of section from point i to i + 1, which lies in the face of point i + 1.
[[nodiscard]] SectionPoint between(const Surface& skin, const std::vector<SectionPoint>& section, size_t i,
                                   double t);

}  // namespace scalpmark::geometry
