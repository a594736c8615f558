#include "models/meshes/touching_fans.h"

#include <unordered_map>
#include <vector>

#include "geometry/base/index.h"
#include "models/meshes/disjoint_sets.h"
#include "models/meshes/mesh_edges.h"

namespace scalpmark::models {

using Eigen::Vector3d;
using geometry::Triangle;

using geometry::at;

std::size_t part_touching_fans(Mesh& mesh) {
  const auto uses = edge_uses(mesh);
  // Corners (3 per face) that belong to one fan.
  DisjointSets corners(3 * mesh.triangles.size());
  const auto corner_of = [&](int face, int vertex) {
    const Triangle& t = mesh.triangles[at(face)];
    return 3 * face + (t[0] == vertex ? 0 : t[1] == vertex ? 1 : 2);
  };
  for_edges(uses, [&](std::size_t i, std::size_t j) {
    if (j - i != 2) return;
    for (const int v : {uses[i].low, uses[i].high})
      corners.join(corner_of(uses[i].face, v), corner_of(uses[i + 1].face, v));
  });
  std::vector<int> fan_of_vertex(mesh.vertices.size(), -1);
  std::unordered_map<int, int> own_vertex;  // of further fans
  std::size_t parted = 0;
  for (std::size_t f = 0; f < mesh.triangles.size(); ++f)
    for (std::size_t k = 0; k < 3; ++k) {
      int& corner = mesh.triangles[f][k];
      const int fan = corners.of(static_cast<int>(3 * f + k));
      int& first = fan_of_vertex[at(corner)];
      if (first < 0) first = fan;
      if (first == fan) continue;
      const auto [found, added] = own_vertex.emplace(fan, static_cast<int>(mesh.vertices.size()));
      if (added) {
        mesh.vertices.push_back(Vector3d(mesh.vertices[at(corner)]));
        ++parted;
      }
      corner = found->second;
    }
  return parted;
}

}  // namespace scalpmark::models
