#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/coil/coil.h"
#include "geometry/coil/pose.h"

namespace scalpmark::geometry {

/// Where a coil's own frame (coil.h) lies in the head's: unit vectors, square to each other.
struct CoilFrame {
  Eigen::Vector3d origin = Eigen::Vector3d::Zero();   ///< the centre of its flat face, mm
  Eigen::Vector3d front = Eigen::Vector3d::UnitY();   ///< its front axis
  Eigen::Vector3d normal = Eigen::Vector3d::UnitZ();  ///< away from the head
  [[nodiscard]] Eigen::Vector3d right() const { return front.cross(normal); }
};

/// A coil in its pose, lifted along its normal.
[[nodiscard]] inline CoilFrame frame_of(const CoilPose& pose, double lift_mm) {
  return {pose.pulse + lift_mm * pose.normal, pose.front, pose.normal};
}

/// One closed turn of thin wire: a circle whose current runs from `along` to `across`.
struct Turn {
  Eigen::Vector3d centre = Eigen::Vector3d::Zero();
  Eigen::Vector3d along = Eigen::Vector3d::UnitX(), across = Eigen::Vector3d::UnitY();  ///< unit, square
  double radius_mm = 1;
};

/// All turns of a coil, each winding's side by side at an even pitch: turn k of n has the radius
/// inside + (k + 1/2) (outside - inside) / n. A spiral's leads and its step from turn to turn are left out.
[[nodiscard]] std::vector<Turn> turns_of(const Coil& coil, const CoilFrame& frame);

}  // namespace scalpmark::geometry
