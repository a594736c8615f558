#pragma once

#include <Eigen/Core>

#include "geometry/coil/coil.h"
#include "geometry/coil/tilt.h"
#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// How a coil's face lies on the skin, before it is lifted. Unit vectors, square to each other.
struct CoilPose {
  Eigen::Vector3d pulse = Eigen::Vector3d::Zero();    ///< the skin point under the centre
  Eigen::Vector3d normal = Eigen::Vector3d::UnitZ();  ///< of the coil's face, away from the head
  Eigen::Vector3d front = Eigen::Vector3d::UnitY();   ///< front axis
  [[nodiscard]] Eigen::Vector3d right() const { return front.cross(normal); }
};

/// The same with the directions of the head in the coil's face, unit.
struct LaidPose {
  CoilPose pose;
  Eigen::Vector3d forward = Eigen::Vector3d::UnitY();  ///< parasagittal, towards the nose
  Eigen::Vector3d inward = Eigen::Vector3d::UnitX();   ///< toward the midline
};

/// The pose turned about its pulse point: pitched about its own left-right axis, then rolled about the front
/// axis it had. The coil's axis goes through the pulse point still.
[[nodiscard]] CoilPose tilted(const CoilPose& pose, const Tilt& tilt);

/// How far the face must be lifted along its normal until no part of the coil is inside the head, mm, at
/// least 0: the most by which skin within a part's outline rises over that part's underside. Exact on the
/// triangles.
[[nodiscard]] double clearing_lift(const Surface& skin, const Coil& coil, const CoilPose& pose);

}  // namespace scalpmark::geometry
