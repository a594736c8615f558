#pragma once

#include <cstddef>

#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// Collapses short edges of a closed manifold mesh until at most `most` triangles are left, each to the point
/// that keeps the planes around best (Garland and Heckbert 1997, quadric error), short edges first, so that
/// triangles come out even. An edge whose collapse would pinch the surface (link condition, Dey et al. 1999)
/// or fold a triangle over stays. May stop above `most` when only such edges are left.
/// Vertices that no triangle uses are dropped.
[[nodiscard]] Mesh thin_triangles(Mesh mesh, std::size_t most);

}  // namespace scalpmark::models
