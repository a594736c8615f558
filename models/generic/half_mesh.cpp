#include "models/generic/half_mesh.h"

#include "models/generic/compiled_in.h"

namespace scalpmark::models::generic {

using Eigen::Vector3d;
using geometry::Triangle;

HalfMesh compiled_in_half() {
  HalfMesh half;
  const CompiledIn& kept = compiled_in();
  half.vertices.reserve(kept.vertex_count);
  for (size_t v = 0; v < kept.vertex_count; ++v) {
    const int* c = kept.coordinates + 3 * v;
    half.vertices.emplace_back(c[0] * compiled_in_unit_mm, c[1] * compiled_in_unit_mm,
                               c[2] * compiled_in_unit_mm);
  }
  half.triangles.reserve(kept.triangle_count);
  for (size_t t = 0; t < kept.triangle_count; ++t) {
    const int* c = kept.corners + 3 * t;
    half.triangles.push_back({c[0], c[1], c[2]});
  }
  half.nasion = kept.nasion;
  half.inion = kept.inion;
  half.right_tragus = kept.right_tragus;
  return half;
}

geometry::Surface mirrored(const HalfMesh& half) {
  std::vector<Vector3d> vertices = half.vertices;
  std::vector<Triangle> triangles = half.triangles;
  std::vector<int> twin(half.vertices.size());
  vertices.reserve(2 * vertices.size());
  for (size_t v = 0; v < half.vertices.size(); ++v) {
    const Vector3d& p = half.vertices[v];
    twin[v] = static_cast<int>(p.x() == 0 ? v : vertices.size());
    if (p.x() != 0) vertices.emplace_back(-p.x(), p.y(), p.z());
  }
  triangles.reserve(2 * triangles.size());
  const auto other = [&](int v) { return twin[static_cast<size_t>(v)]; };
  for (const auto& [a, b, c] : half.triangles) triangles.push_back({other(a), other(c), other(b)});
  return {std::move(vertices), std::move(triangles)};
}

}  // namespace scalpmark::models::generic
