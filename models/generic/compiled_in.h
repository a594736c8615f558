#pragma once

#include <cstddef>

namespace scalpmark::models::generic {

/// Coordinates are kept as whole numbers of this, mm: a ten-thousandth, far finer than any tape.
inline constexpr double compiled_in_unit_mm = 1e-4;

/// The right half as make_generic_head wrote it into a source file of the build folder.
struct CompiledIn {
  std::size_t vertex_count, triangle_count;
  const int* coordinates;  ///< x, y, z of each vertex
  const int* corners;      ///< three vertices of each triangle
  int nasion, inion, right_tragus;
};

[[nodiscard]] const CompiledIn& compiled_in();

}  // namespace scalpmark::models::generic
