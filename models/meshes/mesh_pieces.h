#pragma once

#include <cstddef>

#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// The largest piece by area (pieces hang together by shared edges), and how many there were.
struct LargestPiece {
  Mesh mesh;
  std::size_t pieces = 0;
  double share = 1;  ///< of the whole area
};
[[nodiscard]] LargestPiece largest_piece(const Mesh& mesh);

/// What was taken out to leave no edge with more than two triangles.
struct NonManifoldEdges {
  std::size_t dropped = 0;  ///< triangles
  double torn_share = 0;    ///< of the area, around edges whose parts could not be told apart
};

/// Leaves no edge with more than two triangles. At such an edge the parts that hang together elsewhere are
/// compared: all but the two largest go whole. Where that does not help (a part that meets itself), the
/// triangles around the edge go.
NonManifoldEdges drop_at_non_manifold_edges(Mesh& mesh);

}  // namespace scalpmark::models
