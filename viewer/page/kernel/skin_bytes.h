#pragma once

#include <cstdint>
#include <span>
#include <string>

#include "geometry/surface/surface.h"

namespace scalpmark::viewer {

/// How fine a page keeps a skin: whole micrometres, far finer than any tape.
inline constexpr double skin_unit_mm = 1e-3;

/// The same triangles with every corner on a whole micrometre, which is the skin a page works on: what the
/// program says of it, the page says too. Refuses (GeometryError) what Surface refuses.
[[nodiscard]] geometry::Surface on_whole_micrometres(const geometry::Surface& skin);

/// A surface as bytes, little-endian whole numbers of 32 bits: how many corners, how many triangles, x y z of
/// each corner in micrometres, three corners of each triangle.
[[nodiscard]] std::string bytes_of(const geometry::Surface& skin);
/// The surface again. Refuses (GeometryError) bytes that are none of bytes_of, and what Surface refuses.
[[nodiscard]] geometry::Surface surface_from(std::span<const std::byte> bytes);

}  // namespace scalpmark::viewer
