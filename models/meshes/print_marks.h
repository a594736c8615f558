#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace scalpmark::models {

// A head written for a printer (binary STL) has its marks standing out of the skin. The two bytes that STL
// has for each triangle and no use for (and that other programs pass over) say which triangles those are, so
// that reading the file back finds the skin as it is under them.

/// The first bytes of such a file's heading. STL's own may not begin with "solid".
inline constexpr std::string_view print_heading = "Scalpmark print, mm";

/// What a triangle's two bytes say. The highest bit stays 0: some programs take it for a colour.
namespace print_mark {
inline constexpr std::uint16_t skin = 0;
inline constexpr std::uint16_t wall = 0x4000;        ///< of a mark, standing on the skin
inline constexpr std::uint16_t first_wall = 0x2000;  ///< with wall: its first edge goes up, from skin to top
inline constexpr std::uint16_t most = 0x1fff;        ///< the others are the mark's number, from 1: its top
}  // namespace print_mark

/// Where STL has what: a heading, the number of triangles, then each triangle's normal, three corners, and
/// two bytes; little-endian. (3D Systems, 1989; memory.)
namespace stl {
inline constexpr std::size_t heading = 80, before_triangles = 84, triangle = 50, corner = 12, corners_at = 12,
                             bytes_at = 48;
}  // namespace stl

/// The bytes of a binary STL that was written so with the marks taken off: walls go, tops lie on the skin
/// again. Of any other file the bytes as they are.
[[nodiscard]] std::string without_print_marks(std::string bytes);

}  // namespace scalpmark::models
