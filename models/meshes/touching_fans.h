#pragma once

#include <cstddef>

#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// Gives each fan of triangles that meets others in a vertex only a vertex of its own. How many vertices it
/// added.
std::size_t part_touching_fans(Mesh& mesh);

}  // namespace scalpmark::models
