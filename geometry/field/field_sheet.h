#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/brain/cortex.h"
#include "geometry/coil/pose.h"
#include "geometry/field/round_head.h"
#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// Where a brain lies under the skin of a round model head that shows none, mm; ours: 13 to 25 mm have been
/// measured over prefrontal and motor cortex of adults (memory).
inline constexpr double sheet_depth_mm = 20;

/// Triangles on which a field is looked at. mm, head's frame.
struct FieldSheet {
  std::vector<Eigen::Vector3d> at;
  std::vector<Triangle> triangles;
  std::vector<int> corners;  ///< of a brain's surface: the number there of each; empty for a sphere
  bool of_brain = false;     ///< of the brain under the head; else of a sphere within the round model head
};

/// The sphere of that radius about the round head's centre, as far as `reach_mm` along it from where the
/// coil's centre lies over it: an even grid of triangles that many mm wide, laid along the coil's front axis.
[[nodiscard]] FieldSheet sheet_on_sphere(const RoundHead& round, const CoilPose& pose, double radius_mm,
                                         double step_mm = 3, double reach_mm = 75);

/// The cortex as far as `reach_mm` from the skin point under the coil's centre, straight.
[[nodiscard]] FieldSheet sheet_on_cortex(const Cortex& cortex, const Eigen::Vector3d& pulse,
                                         double reach_mm = 60);

}  // namespace scalpmark::geometry
