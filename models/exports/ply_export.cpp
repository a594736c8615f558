#include <array>
#include <bit>
#include <cstring>

#include "models/exports/export_file.h"
#include "models/files/made_by.h"
#include "models/files/own_files.h"

namespace scalpmark::models {

namespace {

static_assert(std::endian::native == std::endian::little, "PLY is written little-endian, as numbers stand");

template <class Number>
void put_in_ply(std::string& bytes, Number number) {
  std::array<char, sizeof(Number)> raw{};
  std::memcpy(raw.data(), &number, sizeof(Number));
  bytes.append(raw.data(), raw.size());
}

/// Corners, and triangles whose corners are counted on from those of what came before.
struct PlyLists {
  std::string corners, triangles;
  std::size_t corner_count = 0, triangle_count = 0;

  void add(const std::vector<Eigen::Vector3d>& vertices, const std::vector<geometry::Triangle>& faces,
           const ExportColour& colour) {
    const int first = static_cast<int>(corner_count);
    for (const Eigen::Vector3d& v : vertices) {
      for (int k = 0; k < 3; ++k) put_in_ply(corners, static_cast<float>(v[k]));
      for (const std::uint8_t c : {colour.red, colour.green, colour.blue}) put_in_ply(corners, c);
    }
    for (const geometry::Triangle& t : faces) {
      put_in_ply(triangles, std::uint8_t{3});
      for (const int corner : t) put_in_ply(triangles, static_cast<std::int32_t>(first + corner));
    }
    corner_count += vertices.size();
    triangle_count += faces.size();
  }
};

}  // namespace

// By hand, since VTK 9.1's writer leaves the text it is asked for empty, and Assimp's takes no comment, by
// which own_files knows a file of ours.
std::string ply_bytes(const ExportHead& head) {
  PlyLists lists;
  lists.add(head.skin.vertices(), head.skin.triangles(), head.skin_colour);
  for (const ExportPart& part : head.parts) lists.add(part.mesh.vertices, part.mesh.triangles, part.colour);
  return "ply\nformat binary_little_endian 1.0\n" + std::string(own_ply_comment) +
         ", with what was worked out on it; " + made_by() + "\nelement vertex " +
         std::to_string(lists.corner_count) +
         "\nproperty float x\nproperty float y\nproperty float z\nproperty uchar red\nproperty uchar green\n"
         "property uchar blue\nelement face " +
         std::to_string(lists.triangle_count) + "\nproperty list uchar int vertex_indices\nend_header\n" +
         lists.corners + lists.triangles;
}

}  // namespace scalpmark::models
