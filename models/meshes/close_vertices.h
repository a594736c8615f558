#pragma once

#include <Eigen/Core>
#include <vector>

#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// Vertices of a mesh in mm that lie closer than this are one, mm: coordinates come as single floats, which
/// at the size of a head step by 0.00001 mm; ten steps.
inline constexpr double close_mm = 1e-4;

/// One vertex for all that lie at exactly the same place (formats such as STL repeat each corner).
void merge_equal_vertices(Mesh& mesh);

/// One vertex for those closer than `tolerance_mm`; triangles that lose a corner by it go.
void merge_close_vertices(Mesh& mesh, double tolerance_mm);

/// Whether any two lie within close_mm of each other.
[[nodiscard]] bool has_close_vertices(const std::vector<Eigen::Vector3d>& vertices);

}  // namespace scalpmark::models
