#include "models/meshes/mesh.h"

#include <Eigen/Geometry>
#include <utility>

#include "geometry/base/index.h"

namespace scalpmark::models {

using Eigen::Vector3d;
using geometry::Triangle;

using geometry::at;

double triangle_area(const Mesh& mesh, const Triangle& t) {
  const Vector3d& a = mesh.vertices[at(t[0])];
  return 0.5 * (mesh.vertices[at(t[1])] - a).cross(mesh.vertices[at(t[2])] - a).norm();
}

std::size_t drop_if(Mesh& mesh, const std::vector<char>& drop) {
  std::size_t kept = 0;
  for (std::size_t f = 0; f < mesh.triangles.size(); ++f)
    if (!drop[f]) mesh.triangles[kept++] = mesh.triangles[f];
  const std::size_t dropped = mesh.triangles.size() - kept;
  mesh.triangles.resize(kept);
  return dropped;
}

std::size_t drop_collapsed(Mesh& mesh) {
  std::vector<char> drop(mesh.triangles.size(), 0);
  for (std::size_t f = 0; f < drop.size(); ++f) {
    const Triangle& t = mesh.triangles[f];
    drop[f] = t[0] == t[1] || t[1] == t[2] || t[2] == t[0];
  }
  return drop_if(mesh, drop);
}

void drop_unused_vertices(Mesh& mesh) {
  std::vector<int> to(mesh.vertices.size(), -1);
  std::vector<Vector3d> kept;
  for (Triangle& t : mesh.triangles)
    for (int& corner : t) {
      int& number = to[at(corner)];
      if (number < 0) {
        number = static_cast<int>(kept.size());
        kept.push_back(mesh.vertices[at(corner)]);
      }
      corner = number;
    }
  mesh.vertices = std::move(kept);
}

}  // namespace scalpmark::models
