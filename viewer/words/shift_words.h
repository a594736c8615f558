#pragma once

#include <string>

#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::viewer {

/// What a technician is to do where the coil, laid by its rule over a mark drawn by another, has its pulse
/// away from the point that was measured: how far it lands and which way, and how to draw the mark instead.
/// Empty where they differ by no more than a pencil mark (geometry::is_shifted).
[[nodiscard]] std::string shift_sentence(const geometry::Placement& placement, geometry::MarkRule drawn_by,
                                         const geometry::CoilSetup& coil);

}  // namespace scalpmark::viewer
