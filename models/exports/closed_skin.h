#pragma once

#include <Eigen/Core>

#include "geometry/surface/surface.h"
#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// A skin without borders: each is closed by triangles to the middle of its corners (the hole of a neck is
/// flat and round, or nearly).
[[nodiscard]] Mesh closed_skin(const geometry::Surface& skin);

/// What of a closed skin lies over a plane, closed by a flat underside (VTK); of several pieces (the tip of
/// an ear) the largest. Refuses (ModelError) a plane that leaves nothing or takes nothing away.
[[nodiscard]] Mesh cut_flat(const Mesh& closed, const Eigen::Vector3d& on_plane, const Eigen::Vector3d& up);

}  // namespace scalpmark::models
