#pragma once

#include <Eigen/Core>

#include "geometry/surface/directions.h"
#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// The four points every tape starts from, mm, in the frame of the head file.
struct Fiducials {
  Eigen::Vector3d nasion = Eigen::Vector3d::Zero();
  Eigen::Vector3d inion = Eigen::Vector3d::Zero();
  Eigen::Vector3d left_tragus = Eigen::Vector3d::Zero();
  Eigen::Vector3d right_tragus = Eigen::Vector3d::Zero();

  friend bool operator==(const Fiducials&, const Fiducials&) = default;
};

/// The axes of four points that make a head. Refuses (GeometryError, naming the points): a coordinate that is
/// not finite; two points closer than 20 mm; nasion to inion or tragus to tragus outside 100 to 300 mm; tragi
/// on one side of the line from inion to nasion, or lines more than 50 degrees off square; nasion and inion
/// more than 5 mm below the tragi, which is how swapped ears look (the axes then point up through the neck).
[[nodiscard]] HeadAxes head_axes(const Fiducials& fiducials);

/// The four points brought onto the skin.
struct SkinFiducials {
  SurfacePoint nasion, inion, left_tragus, right_tragus;
  Fiducials at;  ///< their positions, on the skin
};

/// Moves each fiducial to the nearest skin point. Refuses (GeometryError, naming the point and the distance)
/// one further than 15 mm from the skin, and all that head_axes refuses.
[[nodiscard]] SkinFiducials place_fiducials(const Surface& skin, const Fiducials& fiducials);

}  // namespace scalpmark::geometry
