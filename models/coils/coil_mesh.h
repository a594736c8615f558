#pragma once

#include "geometry/coil/coil.h"
#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// A coil's parts (casing, handle, ...), each a slab over its outline and bent as it is: triangles in the
/// coil's frame (coil.h). An outline that crosses itself has no top and no underside.
[[nodiscard]] Mesh casing_mesh(const geometry::Coil& coil);
/// Its windings, a flat ring each turn, in the coil's frame; not closed.
[[nodiscard]] Mesh windings_mesh(const geometry::Coil& coil);

}  // namespace scalpmark::models
