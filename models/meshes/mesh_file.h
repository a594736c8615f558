#pragma once

#include <filesystem>
#include <optional>

#include "models/meshes/skin_import.h"

namespace scalpmark::models {

enum class Unit { millimetre, centimetre, metre, inch };

/// Reads a head surface from OBJ, PLY, STL, glTF or GLB (Assimp). Vertices come out in mm, triangles oriented
/// outward. Without a unit it is inferred from the size, and where two would do (a bust in inches, a bare
/// head in centimetres) from the one in which a head can be made out; it is said in the notes. The largest of
/// several pieces is kept, duplicate vertices merged, triangles without area dropped, small holes closed,
/// more than 250 000 triangles thinned within 0.3 mm, shoulders cut off, borders allowed; all of it said, and
/// roughness such as hair's. Refuses (ModelError): a missing file or a folder, another format, no triangles,
/// coordinates that are not finite, flat, non-manifold beyond repair, not head-sized in any unit.
[[nodiscard]] SkinImport read_mesh(const std::filesystem::path& file, std::optional<Unit> unit = {},
                                   const Progress& progress = {});

/// Writes a skin as binary PLY, mm, double coordinates; whole or not at all (see safe_file.h).
void write_ply(const std::filesystem::path& file, const geometry::Surface& skin);

}  // namespace scalpmark::models
