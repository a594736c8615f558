#pragma once

#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// Turns triangles so that neighbours agree. False when that cannot be (one-sided).
[[nodiscard]] bool make_agree(Mesh& mesh);

/// Six times the volume seen from the middle of the corners, mm3; for an open skin the sign still says which
/// way most of it faces (positive: outward).
[[nodiscard]] double signed_volume(const Mesh& mesh);

}  // namespace scalpmark::models
