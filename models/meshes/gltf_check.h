#pragma once

#include <string>

namespace scalpmark::models {

/// Looks through the bytes of a .gltf or .glb file for what Assimp takes on trust and then reads past, asks
/// memory for, or reads wrongly: accessors longer than their views, views longer than their buffers, buffers
/// that are not there, parts with fewer corners than one of their lines or triangles has (Khronos, "glTF 2.0
/// Specification" 2.0.1, sections 3.6.2, 3.7.2 and 4.4), lines closed in a loop, corners in whole numbers.
/// Refuses (ModelError, `name` says where) a file with any of these, packed geometry, and glTF 1; what else
/// is wrong with it is for the reader to say. `binary`: the file is a .glb.
void check_gltf(const std::string& bytes, bool binary, const std::string& name);

}  // namespace scalpmark::models
