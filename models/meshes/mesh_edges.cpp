#include "models/meshes/mesh_edges.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace scalpmark::models {

// By buckets of the lower end, which hold few each: a sort of
// all at once takes a good part of the time in which a mesh is read.
std::vector<EdgeUse> edge_uses(const Mesh& mesh) {
  std::vector<std::size_t> end(mesh.vertices.size() + 1, 0);
  const auto for_all = [&](const auto& visit) {
    for (std::size_t f = 0; f < mesh.triangles.size(); ++f)
      for (std::size_t k = 0; k < 3; ++k) {
        const auto [low, high] = std::minmax(mesh.triangles[f][k], mesh.triangles[f][(k + 1) % 3]);
        visit(EdgeUse{low, high, static_cast<int>(f), static_cast<int>(k)});
      }
  };
  for_all([&](const EdgeUse& use) { ++end[static_cast<std::size_t>(use.low) + 1]; });
  std::partial_sum(end.begin(), end.end(), end.begin());
  std::vector<EdgeUse> uses(end.back());
  for_all([&](const EdgeUse& use) {
    uses[end[static_cast<std::size_t>(use.low)]++] = use;
  });  // end[v] moves to where v's bucket ends
  std::size_t begin = 0;
  for (std::size_t v = 0; v < mesh.vertices.size(); begin = end[v++])
    std::sort(uses.begin() + static_cast<std::ptrdiff_t>(begin),
              uses.begin() + static_cast<std::ptrdiff_t>(end[v]), [](const EdgeUse& a, const EdgeUse& b) {
                return std::tie(a.high, a.face) < std::tie(b.high, b.face);
              });
  return uses;
}

}  // namespace scalpmark::models
