#pragma once

#include <vector>

#include "models/exports/export_head.h"

namespace scalpmark::models {

// Things as closed meshes in the head's frame, mm, oriented outward.

/// A mark as a flat slab, from so far under the plane that touches the skin there to so far over it: a bar of
/// a centimetre bends away from that plane by no more than 0.3 mm on a head.
[[nodiscard]] Mesh mark_slab(const MarkOnSkin& mark, double under_mm, double over_mm);

/// A line as a six-sided tube with closed ends; empty for a line without length.
[[nodiscard]] Mesh tube(const std::vector<Eigen::Vector3d>& line, double radius_mm);

/// What is given in the coil's frame, where the coil lies: its face's centre at `origin`.
[[nodiscard]] Mesh laid_there(Mesh in_coil, const Eigen::Vector3d& origin, const Eigen::Vector3d& right,
                              const Eigen::Vector3d& front, const Eigen::Vector3d& normal);

}  // namespace scalpmark::models
