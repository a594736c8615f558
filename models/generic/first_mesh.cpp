#include "models/generic/first_mesh.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <unordered_map>

#include "geometry/base/index.h"
#include "models/generic/edge_key.h"
#include "models/generic/skin_shape.h"

namespace scalpmark::models::generic {

using Eigen::Vector3d;

namespace {

constexpr double grid_mm = 2.2;  // about the thinnest part of an ear

}  // namespace

HalfMesh first_mesh() {
  const Box box = right_half_box();
  const Eigen::Array3i n = ((box.high - box.low) / grid_mm).array().ceil().cast<int>() + 1;
  const auto at = [&](int node) {
    const int i = node % n.x(), j = node / n.x() % n.y(), k = node / (n.x() * n.y());
    return Vector3d(box.low + grid_mm * Vector3d(i, j, k));
  };
  std::vector<double> off(geometry::at(n.prod()));
  for (int node = 0; node < n.prod(); ++node) off[geometry::at(node)] = off_skin_mm(at(node));

  HalfMesh mesh;
  std::unordered_map<std::uint64_t, int> cuts;
  const auto cut_edge = [&](int in, int out) {
    const auto [found, fresh] = cuts.try_emplace(edge_key(in, out), static_cast<int>(mesh.vertices.size()));
    if (fresh) {
      const double a = off[geometry::at(in)], b = off[geometry::at(out)];
      // Kept off the nodes, so that no triangle is born without area.
      const double t = std::clamp(a / (a - b), 0.05, 0.95);
      mesh.vertices.push_back((1 - t) * at(in) + t * at(out));
    }
    return found->second;
  };
  const auto add = [&](int a, int b, int c, const Vector3d& outside) {
    const Vector3d &p = mesh.vertices[geometry::at(a)], &q = mesh.vertices[geometry::at(b)],
                   &r = mesh.vertices[geometry::at(c)];
    if ((q - p).cross(r - p).dot(outside) < 0) std::swap(b, c);
    mesh.triangles.push_back({a, b, c});
  };
  const auto tetrahedron = [&](std::array<int, 4> nodes) {
    std::stable_partition(nodes.begin(), nodes.end(), [&](int v) { return off[geometry::at(v)] < 0; });
    const auto inside =
        std::count_if(nodes.begin(), nodes.end(), [&](int v) { return off[geometry::at(v)] < 0; });
    if (inside == 0 || inside == 4) return;
    Vector3d in = Vector3d::Zero(), out = Vector3d::Zero();
    for (int k = 0; k < 4; ++k)
      (k < inside ? in : out) +=
          at(nodes[geometry::at(k)]) / static_cast<double>(k < inside ? inside : 4 - inside);
    const Vector3d outside = out - in;
    if (inside == 2) {
      const int a = cut_edge(nodes[0], nodes[2]), b = cut_edge(nodes[0], nodes[3]);
      const int c = cut_edge(nodes[1], nodes[3]), d = cut_edge(nodes[1], nodes[2]);
      add(a, b, c, outside);
      add(a, c, d, outside);
    } else if (inside == 1) {
      add(cut_edge(nodes[0], nodes[1]), cut_edge(nodes[0], nodes[2]), cut_edge(nodes[0], nodes[3]), outside);
    } else {
      add(cut_edge(nodes[0], nodes[3]), cut_edge(nodes[1], nodes[3]), cut_edge(nodes[2], nodes[3]), outside);
    }
  };
  const std::array<int, 3> along{1, n.x(), n.x() * n.y()};
  constexpr std::array<std::array<int, 3>, 6> orders{
      {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}}};
  for (int k = 0; k + 1 < n.z(); ++k)
    for (int j = 0; j + 1 < n.y(); ++j)
      for (int i = 0; i + 1 < n.x(); ++i) {
        const int corner = i + n.x() * (j + n.y() * k);
        for (const auto& o : orders) {
          const int a = corner + along[geometry::at(o[0])], b = a + along[geometry::at(o[1])],
                    c = b + along[geometry::at(o[2])];
          tetrahedron({corner, a, b, c});
        }
      }
  return mesh;
}

}  // namespace scalpmark::models::generic
