#pragma once

#include <Eigen/Core>

#include "geometry/head/head.h"

namespace scalpmark::geometry {

/// Whether a place lies on the face, where nothing is marked: in front of the tragi and below the plane
/// through the nasion and both tragi.
[[nodiscard]] bool on_face(const Head& head, const Eigen::Vector3d& at);

}  // namespace scalpmark::geometry
