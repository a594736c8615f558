#pragma once
// Mesh files as tests write and read them.
#include <algorithm>
#include <catch2/catch.hpp>
#include <optional>
#include <string>
#include <vector>

#include "models/files/error.h"
#include "models/meshes/mesh_file.h"
#include "tests/support/mesh_writers.h"
#include "tests/support/sentence.h"
#include "tests/support/shapes.h"
#include "tests/support/temporary_folder.h"

namespace scalpmark::tests {

inline const Eigen::Vector3d egg_semi_axes{0.75, 0.95, 0.85};

/// An adult head's size and no symmetry that hides a mix-up: an ellipsoid off the origin, mm.
inline RawMesh egg(int level = 4) {
  RawMesh mesh(sphere(100, level, egg_semi_axes));
  for (auto& v : mesh.vertices) v += Eigen::Vector3d(3, -7, 11);
  return mesh;
}

inline bool says(const std::vector<geometry::Message>& notes, const std::string& words) {
  return std::any_of(notes.begin(), notes.end(), [&](const geometry::Message& note) {
    return english(note).find(words) != std::string::npos;
  });
}

inline models::SkinImport read_bytes_as(const std::string& name, const std::string& bytes,
                                        std::optional<models::Unit> unit = models::Unit::millimetre) {
  const TemporaryFolder folder;
  auto read = models::read_mesh(write_bytes(folder / name, bytes), unit);
  for (const std::string& note : english(read.notes)) {
    CAPTURE(note);
    CHECK(is_sentence(note));
  }
  return read;
}

inline models::SkinImport import_obj(const RawMesh& mesh) {
  return read_bytes_as("head.obj", obj_text(mesh));
}

inline std::string refusal(const std::string& name, const std::string& bytes,
                           std::optional<models::Unit> unit = models::Unit::millimetre) {
  std::string said = sentence_of<models::ModelError>([&] { (void)read_bytes_as(name, bytes, unit); });
  CAPTURE(said);
  CHECK(is_sentence(said));
  return said;
}

inline bool contains(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

/// The same triangles in space, whatever the order of vertices and triangles.
inline bool same_triangles(const geometry::Surface& a, const RawMesh& b, double within_mm = 1e-4) {
  if (a.triangles().size() != b.triangles.size() || a.vertices().size() != b.vertices.size()) return false;
  const geometry::Surface other(b.vertices, b.triangles);
  for (std::size_t f = 0; f < a.triangles().size(); ++f) {
    const int face = static_cast<int>(f);
    const Eigen::Vector3d middle = (a.corner(face, 0) + a.corner(face, 1) + a.corner(face, 2)) / 3;
    const int match = other.closest(middle).face;
    for (int k = 0; k < 3; ++k) {
      double nearest = 1e9;
      for (int j = 0; j < 3; ++j)
        nearest = std::min(nearest, (a.corner(face, k) - other.corner(match, j)).norm());
      if (nearest > within_mm) return false;
    }
    if (a.face_normal(face).dot(other.face_normal(match)) < 0.999) return false;
  }
  return true;
}

}  // namespace scalpmark::tests
