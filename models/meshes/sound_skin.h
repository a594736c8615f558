#pragma once

#include <optional>

#include "geometry/surface/surface.h"
#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// The mesh as a skin where repair_mesh would change nothing but the order of its vertices: one piece, facing
/// outward, its triangles meeting in twos at edges and in one fan at vertices, every vertex in use. Nothing
/// where there is something to mend. Vertices close together are not looked for, since a mesh may not be in
/// mm yet: ask has_close_vertices.
[[nodiscard]] std::optional<geometry::Surface> skin_as_it_stands(const Mesh& mesh);

}  // namespace scalpmark::models
