#pragma once

#include <Eigen/Core>

#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// The skin's direction under something that rests on it (a coil's face, a tape): the normals within
/// `patch_mm` of the point, weighted by area and by (1 - r2 / patch2)^2, which fades to nothing at the rim so
/// that the direction changes smoothly as the thing moves. A skin too coarse to have anything within the
/// patch gives its smooth normal. Unit.
[[nodiscard]] Eigen::Vector3d patch_normal(const Surface& skin, const SurfacePoint& at, double patch_mm);

}  // namespace scalpmark::geometry
