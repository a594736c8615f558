#pragma once

#include <filesystem>
#include <optional>

#include "geometry/head/fiducials.h"
#include "models/meshes/mesh_file.h"

namespace scalpmark::models {

enum class HeadKind { generic, mesh, mri };

/// Where the head of a case comes from.
struct HeadSource {
  HeadKind kind = HeadKind::generic;
  std::filesystem::path file;                    ///< mesh, mri: as written in the case (relative to it)
  std::optional<Unit> unit;                      ///< mesh
  std::optional<geometry::Fiducials> fiducials;  ///< mesh, mri

  friend bool operator==(const HeadSource&, const HeadSource&) = default;
};

}  // namespace scalpmark::models
