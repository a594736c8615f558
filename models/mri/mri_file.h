#pragma once

#include <filesystem>

#include "models/meshes/skin_import.h"

namespace scalpmark::models {

/// The skin found in a NIfTI volume (.nii, .nii.gz), in the file's world frame (sform, else qform; mm): the
/// outer air boundary, flooded from outside, so without sinuses or inner shells; sub-voxel, closed (a cropped
/// neck gets a flat end), at most 150 000 triangles. Refuses (ModelError): a missing file or a folder, not
/// NIfTI, not a 3-D volume, no world transform that can be used, a volume in which no head stands out from
/// the air.
[[nodiscard]] SkinImport read_mri(const std::filesystem::path& file, const Progress& progress = {});

}  // namespace scalpmark::models
