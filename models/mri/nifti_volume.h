#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "models/mri/volume.h"

namespace scalpmark::models {

struct NiftiVolume {
  Volume volume;  ///< intensities after the file's slope and intercept; index to world mm
  std::vector<geometry::Message> notes;  ///< what had to be assumed or left out, one sentence each
};

/// Reads the first volume of a NIfTI-1 file (.nii, .nii.gz; NIfTI-1 standard, Cox et al. 2004) with VTK's
/// reader. The world frame is that of the sform, else of the qform; a frame in metres or micrometres is
/// turned into mm. Intensities that are not finite become the lowest finite one (and are counted in the
/// notes). The header is checked here before VTK sees the file, since it would allocate whatever a header
/// claims. Refuses (ModelError): a missing file or a folder, not NIfTI-1, header and image in two files,
/// fewer than three dimensions, a size of zero, voxels without a positive size, colours or complex numbers,
/// more than 512 MB or 1024 voxels along an edge, a file that ends early, no world transform that can be
/// used, no finite intensity.
[[nodiscard]] NiftiVolume read_nifti(const std::filesystem::path& file);

}  // namespace scalpmark::models
