#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/surface/surface.h"
#include "viewer/stage/drawing/label.h"
#include "viewer/stage/scene/sight.h"

namespace scalpmark::viewer {

/// Where a skin lies in the picture: cells that hold one of its corners; its triangles are smaller than a
/// cell.
[[nodiscard]] Coverage coverage_of(const geometry::Surface& skin, const Sight& sight);

/// Adds what lies within a closed line in space, such as a coil's rim.
void cover(Coverage& coverage, const std::vector<Eigen::Vector3d>& rim, const Sight& sight);

}  // namespace scalpmark::viewer
