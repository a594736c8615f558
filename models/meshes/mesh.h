#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <vector>

#include "geometry/surface/surface.h"

namespace scalpmark::models {

/// Triangles by the numbers of their corners; may still be anything (unused vertices, several pieces).
struct Mesh {
  std::vector<Eigen::Vector3d> vertices;
  std::vector<geometry::Triangle> triangles;
};

/// mm2, if the mesh is in mm.
[[nodiscard]] double triangle_area(const Mesh& mesh, const geometry::Triangle& t);

/// Takes out the triangles that `drop` marks. How many.
std::size_t drop_if(Mesh& mesh, const std::vector<char>& drop);

/// Takes out triangles that use a vertex twice. How many.
std::size_t drop_collapsed(Mesh& mesh);

/// Takes out vertices that no triangle uses; the others are numbered in the order of their use.
void drop_unused_vertices(Mesh& mesh);

}  // namespace scalpmark::models
