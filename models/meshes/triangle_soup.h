#pragma once

#include <filesystem>

#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// All triangles of an OBJ, PLY, STL, glTF or GLB file (Assimp), as they stand: in the file's own unit, node
/// transforms applied, nothing merged. Only the file itself is opened, and for a glTF the data files beside
/// it
/// (.bin, named without a folder). Refuses (ModelError): a missing file or a folder, more than 512 MB,
/// another format, what Assimp cannot read, no triangles, more than ten million of them, a coordinate that is
/// not finite, a glTF that points elsewhere.
[[nodiscard]] Mesh read_triangle_soup(const std::filesystem::path& file);

}  // namespace scalpmark::models
