#pragma once

#include <cstddef>
#include <string>

#include "geometry/surface/surface.h"
#include "models/meshes/skin_import.h"
#include "models/mri/volume.h"

namespace scalpmark::models {

/// The surface of what stands out from the air in a volume (see air_boundary.h), in world mm: its largest
/// piece, closed, outward, at most `most_triangles`. Refuses (ModelError, `name` says where): what
/// find_air_boundary refuses, a surface too rough for that many triangles. Says what it is doing as
/// `progress` from 0 to 1.
[[nodiscard]] geometry::Surface surface_of(const Volume& scan, const std::string& name,
                                           std::size_t most_triangles, const Progress& progress);

}  // namespace scalpmark::models
