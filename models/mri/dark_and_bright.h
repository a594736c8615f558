#pragma once

#include <optional>

#include "models/mri/volume.h"

namespace scalpmark::models {

struct DarkAndBright {
  float dark = 0;  ///< median of what lies below the threshold
  float threshold = 0;
};

/// The threshold between dark and bright that explains most of the variance (Otsu 1979, IEEE Trans Syst Man
/// Cybern 9:62-66). Outliers beyond the 0.1 and 99.8 percentiles do not count. Empty when the intensities are
/// all alike.
[[nodiscard]] std::optional<DarkAndBright> dark_and_bright(const Volume& scan);

}  // namespace scalpmark::models
