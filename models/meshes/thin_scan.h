#pragma once

#include <functional>

#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// A scan's mesh (manifold, borders allowed) thinned to at most `most` triangles with OpenMesh: edges are
/// collapsed into one of their ends, those first that move the planes around least (Garland and Heckbert
/// 1997, quadric error). Corners that are left stay where they were, and so does every border. No collapse
/// pinches the surface, turns a triangle by more than 50 degrees or makes a sliver, so it may stop above
/// `most` when only such edges are left. Vertices that no triangle uses are dropped. Of a mesh of many times
/// as many triangles, most are taken out roughly before (rough_thinning.h). `told` hears the part done, 0 to
/// 1.
[[nodiscard]] Mesh thin_scan(const Mesh& mesh, std::size_t most,
                             const std::function<void(double)>& told = {});

}  // namespace scalpmark::models
