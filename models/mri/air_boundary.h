#pragma once

#include <string>

#include "models/mri/volume.h"

namespace scalpmark::models {

/// The head as a block whose contour at `level` is the skin: one closed surface, the outer air boundary.
///
/// Air is flooded from the edges of the volume's box by a ball of 4 mm radius, so that it does not enter ear
/// canals, nostrils or the airway cut open at the neck; from there it creeps up to the skin. The skin is
/// where the intensity crosses half way between the air and the skin's own intensity nearby (which follows
/// uneven illumination over a few centimetres). The intensities between which the contour is interpolated are
/// the volume's own; only dark voxels inside are raised, and stray bright ones outside lowered. The block has
/// one voxel more than the volume on each side, so that a head that touches the side of the volume ends in a
/// flat face there; `world` is set accordingly.
struct AirBoundary {
  Volume block;
  float level = 0.5F;
};

/// Refuses (ModelError, `name` says where): a volume in which no head stands out from the air (constant,
/// noise, air nowhere at the sides, a body that is not 100 to 400 mm in extent).
[[nodiscard]] AirBoundary find_air_boundary(const Volume& scan, const std::string& name);

}  // namespace scalpmark::models
