#pragma once

#include "models/generic/half_mesh.h"

namespace scalpmark::models::generic {

/// The right half of the skin as it is first meshed, by marching over the six tetrahedra of each grid cell.
/// They meet face to face, so the result is manifold, and its border lies in the plane x = 0.
[[nodiscard]] HalfMesh first_mesh();

}  // namespace scalpmark::models::generic
