#include "models/meshes/sidedness.h"

#include <Eigen/Geometry>
#include <array>
#include <utility>
#include <vector>

#include "geometry/base/index.h"
#include "models/meshes/mesh_edges.h"

namespace scalpmark::models {

using Eigen::Vector3d;
using geometry::Triangle;

using geometry::at;

bool make_agree(Mesh& mesh) {
  const auto uses = edge_uses(mesh);
  std::vector<std::array<int, 3>> next(mesh.triangles.size(), {-1, -1, -1});
  for_edges(uses, [&](std::size_t i, std::size_t j) {
    if (j - i != 2) return;
    next[at(uses[i].face)][at(uses[i].edge)] = uses[i + 1].face;
    next[at(uses[i + 1].face)][at(uses[i + 1].edge)] = uses[i].face;
  });
  std::vector<Triangle> turned = mesh.triangles;
  const auto runs = [&](int face, int from, int to) {
    const Triangle& t = turned[at(face)];
    for (std::size_t k = 0; k < 3; ++k)
      if (t[k] == from && t[(k + 1) % 3] == to) return true;
    return false;
  };
  std::vector<char> done(turned.size(), 0);
  for (std::size_t seed = 0; seed < turned.size(); ++seed) {
    if (done[seed]) continue;
    done[seed] = 1;
    std::vector<int> waiting{static_cast<int>(seed)};
    while (!waiting.empty()) {
      const int f = waiting.back();
      waiting.pop_back();
      for (std::size_t k = 0; k < 3; ++k) {
        const int other = next[at(f)][k];
        if (other < 0) continue;
        const int a = mesh.triangles[at(f)][k], b = mesh.triangles[at(f)][(k + 1) % 3];
        const bool agree = runs(f, a, b) != runs(other, a, b);
        if (agree && done[at(other)]) continue;
        if (done[at(other)]) return false;
        if (!agree) std::swap(turned[at(other)][1], turned[at(other)][2]);
        done[at(other)] = 1;
        waiting.push_back(other);
      }
    }
  }
  mesh.triangles = std::move(turned);
  return true;
}

double signed_volume(const Mesh& mesh) {
  Vector3d middle = Vector3d::Zero();
  for (const Vector3d& v : mesh.vertices) middle += v / static_cast<double>(mesh.vertices.size());
  double volume = 0;
  for (const Triangle& t : mesh.triangles)
    volume += (mesh.vertices[at(t[0])] - middle)
                  .dot((mesh.vertices[at(t[1])] - middle).cross(mesh.vertices[at(t[2])] - middle));
  return volume;
}

}  // namespace scalpmark::models
