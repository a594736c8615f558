#pragma once

#include <optional>

#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// A scan's mesh (manifold, borders allowed) thinned to about `most` triangles by meshoptimizer: edges are
/// collapsed into one of their ends, least quadric error first, many at a time, thirty times as quickly as
/// one by one. Corners that are left stay where they were, and so does every border. It may pinch the surface
/// in places; they are mended here. Nothing where the mesh would not be as whole as it was. For what is
/// thinned further with more care (thin_scan.h).
[[nodiscard]] std::optional<Mesh> thinned_roughly(const Mesh& mesh, std::size_t most);

}  // namespace scalpmark::models
