#pragma once

#include "models/generic/half_mesh.h"

namespace scalpmark::models::generic {

/// Meshes the right half of the generic head: marching tetrahedra on a coarse grid, then rounds of splitting,
/// collapsing, flipping and relaxing (after Botsch and Kobbelt 2004) toward edge_length_mm, every vertex on
/// the skin and the three fiducials among the vertices. Always gives the same mesh.
[[nodiscard]] HalfMesh mesh_right_half();

}  // namespace scalpmark::models::generic
