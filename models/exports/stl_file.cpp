#include <Eigen/Geometry>
#include <array>
#include <bit>
#include <cstring>

#include "geometry/base/index.h"
#include "models/exports/closed_skin.h"
#include "models/exports/export_file.h"
#include "models/exports/raised_marks.h"
#include "models/files/made_by.h"
#include "models/meshes/print_marks.h"

namespace scalpmark::models {

using Eigen::Vector3f;
using geometry::at;

namespace {

static_assert(std::endian::native == std::endian::little, "STL is little-endian, and written as it stands");

template <class Number>
void put_number(std::string& bytes, Number number) {
  std::array<char, sizeof(Number)> raw{};
  std::memcpy(raw.data(), &number, sizeof(Number));
  bytes.append(raw.data(), raw.size());
}

void put_place(std::string& bytes, const Vector3f& p) {
  for (int k = 0; k < 3; ++k) put_number(bytes, p[k]);
}

/// Marks that stand on what is left, clear of its edge.
std::vector<MarkOnSkin> over(const FlatCut& cut, const std::vector<MarkOnSkin>& marks) {
  constexpr double clear_mm = 2;
  std::vector<MarkOnSkin> kept;
  for (const MarkOnSkin& m : marks) {
    double reach = 0;
    for (const auto& p : m.triangles) reach = std::max(reach, p.norm());
    if ((m.at - cut.at).dot(cut.up) > reach + clear_mm) kept.push_back(m);
  }
  return kept;
}

}  // namespace

std::string stl_bytes(const ExportHead& head, const std::optional<FlatCut>& cut) {
  Mesh skin = closed_skin(head.skin);
  if (cut) skin = cut_flat(skin, cut->at, cut->up);
  const PrintMesh print = with_raised_marks(std::move(skin), cut ? over(*cut, head.marks) : head.marks);
  std::string bytes = std::string(print_heading) + "; " + made_by();
  bytes.resize(stl::heading, ' ');
  bytes.reserve(stl::before_triangles + stl::triangle * print.mesh.triangles.size());
  put_number(bytes, static_cast<std::uint32_t>(print.mesh.triangles.size()));
  for (std::size_t f = 0; f < print.mesh.triangles.size(); ++f) {
    const auto& t = print.mesh.triangles[f];
    // As the file has them: of a narrow triangle the rounded corners' normal is another.
    const Vector3f a = print.mesh.vertices[at(t[0])].cast<float>(),
                   b = print.mesh.vertices[at(t[1])].cast<float>(),
                   c = print.mesh.vertices[at(t[2])].cast<float>();
    const Vector3f normal = (b - a).cross(c - a), none = Vector3f::Zero();
    put_place(bytes, normal.norm() > 0 ? Vector3f(normal.normalized()) : none);
    for (const Vector3f& corner : {a, b, c}) put_place(bytes, corner);
    put_number(bytes, print.is[f]);
  }
  return bytes;
}

}  // namespace scalpmark::models
