#pragma once

#include <Eigen/Geometry>

#include "geometry/head/fiducials.h"
#include "geometry/head/head.h"

namespace scalpmark::geometry {

/// Where the four points of a skin may be, by a computer's guess. A type of its own, so that it never passes
/// for points placed by hand: someone looks at each of them on the head and confirms or moves it first.
struct FiducialGuess {
  Fiducials at;                                       ///< on the skin
  Eigen::Affine3d fit = Eigen::Affine3d::Identity();  ///< from the fitted head's frame to the skin's
  double misfit_mm = 0;  ///< between the fitted head and the skin, root mean square
  double scale = 1;      ///< of the fitted head, all axes together
};

/// Fits a head whose points are known to a skin, however that is turned, as far as its own surface goes (a
/// neck or shoulders below it are left alone), and takes its four points over to the nearest skin. Rigid
/// motion and scale by closest points (Besl and McKay 1992, IEEE Trans Pattern Anal Mach Intell 14:239-256)
/// from 24 starts; then the best few by distances to the tangent planes (Chen and Medioni 1992, Image Vis
/// Comput 10:145-155), scaled along each of the head's axes. The skin must be about the size of a head in mm.
/// Refuses (GeometryError) a skin that looks like no head: nothing to compare, or a misfit over 12 mm.
[[nodiscard]] FiducialGuess guess_fiducials(const Head& model, const Surface& skin);

}  // namespace scalpmark::geometry
