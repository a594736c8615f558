#pragma once

#include <Eigen/Core>

namespace scalpmark::models::generic {

/// The generic head as an implicit surface: about the distance from the skin, mm, negative inside. Smooth
/// everywhere and the same for x and -x. Frame: right, front, up; origin half way between the tragi. Sizes
/// follow large surveys of adults (from memory), half way between men and women.
[[nodiscard]] double off_skin_mm(const Eigen::Vector3d& p);

/// The skin point reached from `p` by going straight down the slope (p within a few mm of the skin).
[[nodiscard]] Eigen::Vector3d onto_skin(const Eigen::Vector3d& p);

/// How long the edges of triangles near `p` should be, mm: short on eyes, nose, lips and ears.
[[nodiscard]] double edge_length_mm(const Eigen::Vector3d& p);

/// The three fiducials with x >= 0, on the skin; the left tragus mirrors the right one.
struct FiducialPoints {
  Eigen::Vector3d nasion, inion, right_tragus;
};
[[nodiscard]] FiducialPoints fiducial_points();

/// The box that holds the head's half with x >= 0, mm.
struct Box {
  Eigen::Vector3d low, high;
};
[[nodiscard]] Box right_half_box();

}  // namespace scalpmark::models::generic
