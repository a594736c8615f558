#include "models/meshes/close_vertices.h"

#include <bit>
#include <cmath>
#include <cstdint>

#include "geometry/base/index.h"
#include "models/meshes/number_table.h"

namespace scalpmark::models {

using Eigen::Vector3d;
using geometry::Triangle;

using geometry::at;

namespace {

using Key = NumberTable::Key;

/// For each vertex the earliest one within `tolerance` of it that has no such itself, or itself.
std::vector<int> close_vertices(const std::vector<Vector3d>& vertices, double tolerance) {
  // Cells four times as wide as the tolerance: most vertices have no cell but their own within reach.
  NumberTable cells(vertices.size());
  std::vector<int> to(vertices.size());
  for (std::size_t v = 0; v < vertices.size(); ++v) {
    const Vector3d& p = vertices[v];
    Key own{}, low{}, high{};
    for (std::size_t k = 0; k < 3; ++k) {
      const double s = p[static_cast<Eigen::Index>(k)] / tolerance / 4;
      own[k] = static_cast<std::int64_t>(std::floor(s));
      low[k] = static_cast<std::int64_t>(std::floor(s - 0.25));
      high[k] = static_cast<std::int64_t>(std::floor(s + 0.25));
    }
    const auto is_close = [&](int other) {
      return (vertices[at(other)] - p).squaredNorm() <= tolerance * tolerance;
    };
    int same = -1;
    for (std::int64_t x = low[0]; x <= high[0] && same < 0; ++x)
      for (std::int64_t y = low[1]; y <= high[1] && same < 0; ++y)
        for (std::int64_t z = low[2]; z <= high[2] && same < 0; ++z) same = cells.find({x, y, z}, is_close);
    if (same < 0) cells.add(own, static_cast<int>(v));
    to[v] = same < 0 ? static_cast<int>(v) : same;
  }
  return to;
}

void renumber(Mesh& mesh, const std::vector<int>& to) {
  for (Triangle& t : mesh.triangles)
    for (int& corner : t) corner = to[at(corner)];
}

}  // namespace

void merge_equal_vertices(Mesh& mesh) {
  NumberTable first(mesh.vertices.size());
  std::vector<int> to(mesh.vertices.size());
  std::vector<Vector3d> kept;
  kept.reserve(mesh.vertices.size());
  for (std::size_t v = 0; v < mesh.vertices.size(); ++v) {
    Key key{};
    for (std::size_t k = 0; k < 3; ++k)  // adding zero makes -0 and 0 the same
      key[k] = std::bit_cast<std::int64_t>(mesh.vertices[v][static_cast<Eigen::Index>(k)] + 0.0);
    to[v] = first.find(key);
    if (to[v] >= 0) continue;
    to[v] = static_cast<int>(kept.size());
    first.add(key, to[v]);
    kept.push_back(mesh.vertices[v]);
  }
  mesh.vertices = std::move(kept);
  renumber(mesh, to);
}

void merge_close_vertices(Mesh& mesh, double tolerance_mm) {
  renumber(mesh, close_vertices(mesh.vertices, tolerance_mm));
  drop_collapsed(mesh);
  drop_unused_vertices(mesh);
}

bool has_close_vertices(const std::vector<Vector3d>& vertices) {
  const std::vector<int> close = close_vertices(vertices, close_mm);
  for (std::size_t v = 0; v < close.size(); ++v)
    if (close[v] != static_cast<int>(v)) return true;
  return false;
}

}  // namespace scalpmark::models
