#pragma once

#include "geometry/head/scale.h"
#include "models/heads/load_head.h"

namespace scalpmark::models {

/// The generic head, scaled to the tapes where there are any. Refuses what geometry::scale_to_tapes refuses.
[[nodiscard]] LoadedHead built_in_head(const geometry::MeasuredTapes& tapes);

}  // namespace scalpmark::models
