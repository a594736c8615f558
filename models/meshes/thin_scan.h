#pragma once

#include <functional>

#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// A scan's mesh (manifold, borders allowed) thinned to at most `most` triangles with OpenMesh: edges are
/// collapsed into one of their ends, those first that move the planes around least (Garland and Heckbert
/// 1997, quadric error). Corners that are left stay where they were, and so does every border. No collapse
/// pinches the surface, turns a triangle by more than 50 degrees or makes a sliver, so it may stop above
/// `most` when only such edges are left. Vertices that no triangle uses are dropped. `told` hears the part
/// done, 0 to 1. thin_triangles, for the skin of an MRI, is five times as quick and leaves evener triangles
/// where the mesh was even before.
[[nodiscard]] Mesh thin_scan(const Mesh& mesh, std::size_t most,
                             const std::function<void(double)>& told = {});

}  // namespace scalpmark::models
