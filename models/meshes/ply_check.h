#pragma once

#include <string>

namespace scalpmark::models {

/// Looks through the bytes of a PLY file (Turk 1994, "The PLY polygon file format") for what Assimp takes on
/// trust and then reads past, or for ever: a header without an end, elements that the file is too short for,
/// lists longer than what is left of their line or file, corners or triangles given twice. Refuses
/// (ModelError, `name` says where) a file that is damaged so; what else is wrong with it is for the reader to
/// say.
void check_ply(const std::string& bytes, const std::string& name);

}  // namespace scalpmark::models
