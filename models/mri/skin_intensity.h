#pragma once

#include "models/mri/coarse_grid.h"
#include "models/mri/volume.h"
#include "models/mri/voxel_grid.h"

namespace scalpmark::models {

/// Mean intensity of the tissue just under the skin (1.4 to 5.1 mm below the outside air), spread over the
/// coarse grid: illumination differs from place to place.
[[nodiscard]] CoarseField skin_intensity(const Coarse& coarse, const Volume& scan, const Mask& outside,
                                         const Mask& tissue);

}  // namespace scalpmark::models
