#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/hands/cap.h"

namespace scalpmark::geometry {

/// A cap to be drawn. mm, head-file frame.
struct CapVeil {
  Surface cloth;                       ///< the skin inside the brim, cut off at it, pushed out by a little
  std::vector<Eigen::Vector3d> brim;   ///< closed
  std::vector<Eigen::Vector3d> arrow;  ///< on the skin, from the brim's front to where it points
};

/// A cap that has slipped so far, as it lies on the skin. Corners within 2 cm of the brim are asked whether
/// they lie inside one by one; of others the turned brim's plane decides. Refuses (GeometryError) what
/// brim_line() refuses.
[[nodiscard]] CapVeil cap_veil(const Head& head, const Cap& cap, const CapSlip& slip = {});

}  // namespace scalpmark::geometry
