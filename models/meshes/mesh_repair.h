#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/surface/surface.h"
#include "models/meshes/thin_triangles.h"

namespace scalpmark::models {

/// One vertex for all that lie at exactly the same place (formats such as STL repeat each corner).
void merge_equal_vertices(Mesh& mesh);

/// One vertex for those closer than `tolerance_mm`; triangles that lose a corner by it go.
void merge_close_vertices(Mesh& mesh, double tolerance_mm);

/// The largest piece by area (pieces hang together by shared edges), and how many there were.
struct LargestPiece {
  Mesh mesh;
  std::size_t pieces = 0;
  double share = 1;  ///< of the whole area
};
[[nodiscard]] LargestPiece largest_piece(const Mesh& mesh);

/// The mesh as a skin where repair_mesh would change nothing but the order of its vertices: one piece, facing
/// outward, its triangles meeting in twos at edges and in one fan at vertices, every vertex in use. Nothing
/// where there is something to mend. Vertices close together are not looked for, since a mesh may not be in
/// mm yet: ask has_close_vertices.
[[nodiscard]] std::optional<geometry::Surface> skin_as_it_stands(const Mesh& mesh);

/// Whether repair_mesh would merge any of these, mm.
[[nodiscard]] bool has_close_vertices(const std::vector<Eigen::Vector3d>& vertices);

/// Makes one clean piece of skin of a mesh in mm: close vertices merged, triangles without corners of their
/// own or given twice dropped, edges with more than two triangles freed of the smaller parts that hang on
/// them, the largest piece kept, triangles turned to agree and then outward, pieces that touch in a vertex
/// only parted. Appends one sentence to `notes` for each thing it had to do. Refuses (ModelError, `name` says
/// where): nothing left; more than 1 % of the skin around edges that cannot be freed; one-sided (like a
/// Moebius band).
[[nodiscard]] Mesh repair_mesh(Mesh mesh, const std::string& name, std::vector<geometry::Message>& notes);

}  // namespace scalpmark::models
