#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/surface/surface.h"

namespace scalpmark::models::generic {

/// Triangles of the generic head's right half, mm. Vertices with x == 0 lie on the midline and are shared
/// with the left half.
struct HalfMesh {
  std::vector<Eigen::Vector3d> vertices;
  std::vector<geometry::Triangle> triangles;
  int nasion = -1, inion = -1, right_tragus = -1;  ///< vertices
};

/// The half made by the program make_generic_head while this one was built, compiled in.
[[nodiscard]] HalfMesh compiled_in_half();

/// Both halves as one closed surface. The left half's vertices are the right's with x turned to -x, exactly.
[[nodiscard]] geometry::Surface mirrored(const HalfMesh& half);

}  // namespace scalpmark::models::generic
