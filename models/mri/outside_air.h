#pragma once

#include <optional>

#include "models/mri/coarse_grid.h"
#include "models/mri/volume.h"
#include "models/mri/voxel_grid.h"

namespace scalpmark::models {

/// The voxels of the scan that are air outside the head, given what is bright as tissue is. A ball of 4 mm
/// radius comes in from the edges of the box, where nothing narrower than itself lets it pass (nostrils, ear
/// canals); from there air creeps another 4 mm into folds, up to the tissue. Hairs and cracks of one or two
/// voxels are smoothed away, and all bodies but the largest. Nothing where there is no air at the edges of
/// the volume.
[[nodiscard]] std::optional<Mask> outside_air(const Coarse& coarse, const Volume& scan, const Mask& tissue);

}  // namespace scalpmark::models
