#pragma once

#include <Eigen/Core>

#include "geometry/base/side.h"
#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// Unit axes of a head, right-handed. `right`: left tragus to right tragus. `front`: inion to nasion made
/// square to right. `up` = right x front.
struct HeadAxes {
  Eigen::Vector3d right = Eigen::Vector3d::UnitX();
  Eigen::Vector3d front = Eigen::Vector3d::UnitY();
  Eigen::Vector3d up = Eigen::Vector3d::UnitZ();
  Eigen::Vector3d origin = Eigen::Vector3d::Zero();  ///< half way between the tragi
};

/// Forward, towards the nose, where the skin faces `normal`: the tangent of the parasagittal section. Where
/// the skin faces straight left or right the section is a point, and the head's front is taken. Unit.
[[nodiscard]] Eigen::Vector3d forward_along(const HeadAxes& axes, const Eigen::Vector3d& normal);

/// Forward (along the parasagittal section, towards the nose) and outward (square to it, away from the
/// midline) in the tangent plane of the skin. Unit.
struct Directions {
  Eigen::Vector3d forward = Eigen::Vector3d::UnitY();
  Eigen::Vector3d outward = Eigen::Vector3d::UnitX();
};
[[nodiscard]] Directions directions_at(const Surface& skin, const HeadAxes& axes, Side side,
                                       const SurfacePoint& at);

}  // namespace scalpmark::geometry
