#include "models/meshes/mesh_pieces.h"

#include <algorithm>
#include <numeric>
#include <utility>
#include <vector>

#include "geometry/base/index.h"
#include "models/meshes/disjoint_sets.h"
#include "models/meshes/mesh_edges.h"

namespace scalpmark::models {

using geometry::at;

namespace {

/// Faces joined over edges of at most `most` triangles.
DisjointSets faces_joined(const Mesh& mesh, const std::vector<EdgeUse>& uses, std::size_t most) {
  DisjointSets sets(mesh.triangles.size());
  for_edges(uses, [&](std::size_t i, std::size_t j) {
    if (j - i <= most)
      for (std::size_t k = i + 1; k < j; ++k) sets.join(uses[i].face, uses[k].face);
  });
  return sets;
}

std::vector<double> set_areas(const Mesh& mesh, DisjointSets& sets) {
  std::vector<double> areas(mesh.triangles.size(), 0);
  for (std::size_t f = 0; f < mesh.triangles.size(); ++f)
    areas[at(sets.of(static_cast<int>(f)))] += triangle_area(mesh, mesh.triangles[f]);
  return areas;
}

}  // namespace

NonManifoldEdges drop_at_non_manifold_edges(Mesh& mesh) {
  NonManifoldEdges found;
  double whole = 0;
  for (const geometry::Triangle& t : mesh.triangles) whole += triangle_area(mesh, t);
  for (;;) {
    const auto uses = edge_uses(mesh);
    DisjointSets parts = faces_joined(mesh, uses, 2);
    const auto areas = set_areas(mesh, parts);
    std::vector<char> part_goes(mesh.triangles.size(), 0), drop(mesh.triangles.size(), 0);
    bool crowded = false, helped = false;
    for_edges(uses, [&](std::size_t i, std::size_t j) {
      if (j - i <= 2) return;
      crowded = true;
      std::vector<int> around;
      for (std::size_t k = i; k < j; ++k) around.push_back(parts.of(uses[k].face));
      std::sort(around.begin(), around.end(),
                [&](int a, int b) { return std::pair(-areas[at(a)], a) < std::pair(-areas[at(b)], b); });
      // Both places may belong to the largest part; nothing of the part in second place may go then.
      for (std::size_t k = 2; k < around.size(); ++k)
        if (around[k] != around[0] && around[k] != around[1]) {
          part_goes[at(around[k])] = 1;
          helped = true;
        }
    });
    if (!crowded) return found;
    for (std::size_t f = 0; f < drop.size(); ++f) drop[f] = part_goes[at(parts.of(static_cast<int>(f)))];
    if (!helped) {
      for_edges(uses, [&](std::size_t i, std::size_t j) {
        if (j - i <= 2) return;
        // A part smaller than the rest that meets itself here goes whole, else only the triangles at the
        // edge.
        for (std::size_t k = i; k < j; ++k) drop[at(uses[k].face)] = 1;
      });
      for (std::size_t f = 0; f < drop.size(); ++f)
        if (drop[f]) found.torn_share += triangle_area(mesh, mesh.triangles[f]) / whole;
    }
    found.dropped += drop_if(mesh, drop);
  }
}

LargestPiece largest_piece(const Mesh& mesh) {
  LargestPiece largest;
  if (mesh.triangles.empty()) return largest;
  DisjointSets pieces = faces_joined(mesh, edge_uses(mesh), mesh.triangles.size());
  const auto areas = set_areas(mesh, pieces);
  const auto best = static_cast<int>(std::max_element(areas.begin(), areas.end()) - areas.begin());
  const double whole = std::accumulate(areas.begin(), areas.end(), 0.0);
  const int winner = pieces.of(best);
  largest.mesh.vertices = mesh.vertices;
  for (std::size_t f = 0; f < mesh.triangles.size(); ++f) {
    const int piece = pieces.of(static_cast<int>(f));
    if (piece == static_cast<int>(f)) ++largest.pieces;
    if (piece == winner) largest.mesh.triangles.push_back(mesh.triangles[f]);
  }
  largest.share = whole > 0 ? areas[at(winner)] / whole : 1;
  drop_unused_vertices(largest.mesh);
  return largest;
}

}  // namespace scalpmark::models
