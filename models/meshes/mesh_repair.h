#pragma once

#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// Makes one clean piece of skin of a mesh in mm: close vertices merged, triangles without corners of their
/// own or given twice dropped, the smaller parts at edges with more than two triangles dropped, the largest
/// piece kept, triangles turned to agree and then outward, pieces that touch in a vertex only parted. Appends
/// one sentence to `notes` for each thing it had to do. Refuses (ModelError, `name` says where): nothing
/// left; more than 1 % of the skin around edges where no part is the smaller one; one-sided (like a Moebius
/// band).
[[nodiscard]] Mesh repair_mesh(Mesh mesh, const std::string& name, std::vector<geometry::Message>& notes);

}  // namespace scalpmark::models
