#pragma once

#include <Eigen/Core>

#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// The sphere that stands for the head under a coil, mm, head's frame.
struct RoundHead {
  Eigen::Vector3d centre = Eigen::Vector3d::Zero();
  double radius_mm = 0;
  double misfit_mm = 0;  ///< how far the skin lies off it, root mean square over what was fitted
};

/// Skin this near to the coil's centre is fitted, mm, straight.
inline constexpr double fitted_mm = 75;

/// The sphere that fits the skin around a skin point best: least squares of the distances, each piece of skin
/// by its area, ears and the like left out by Tukey's biweight (Beaton and Tukey 1974, Technometrics
/// 16:147-185, memory) with a scale from the median. Quick enough for a coil being dragged: of a large head,
/// evenly picked triangles stand for all. Refuses (GeometryError) too little skin, and skin so flat or so
/// pointed that no head is like its sphere (radius not from 40 to 250 mm), or that curves the other way.
[[nodiscard]] RoundHead round_head(const Surface& skin, const Eigen::Vector3d& around);

}  // namespace scalpmark::geometry
