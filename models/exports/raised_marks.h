#pragma once

#include <cstdint>
#include <vector>

#include "models/exports/export_head.h"

namespace scalpmark::models {

/// A mesh for a printer: of each triangle, which part it is (models/meshes/print_marks.h).
struct PrintMesh {
  Mesh mesh;
  std::vector<std::uint16_t> is;
};

/// How far marks stand out of a printed head, mm: felt with a finger, and a few layers of any printer.
inline constexpr double print_mark_mm = 1.2;

/// A closed skin with these marks standing out of it by print_mark_mm, with upright walls: still one closed
/// skin, since each mark's outline is cut into the triangles and what lies within is lifted with walls around
/// it. Marks that overlap, or nearly, stand out as one. An outline is met within 0.05 mm.
[[nodiscard]] PrintMesh with_raised_marks(Mesh closed_skin, const std::vector<MarkOnSkin>& marks);

}  // namespace scalpmark::models
