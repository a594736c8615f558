#pragma once

#include <memory>

#include "geometry/field/coil_field.h"
#include "geometry/head/head.h"
#include "geometry/plan/case.h"

namespace scalpmark::viewer {

/// The patch's two tints, over half and over 71 %, and their outlines, on the stage and in its legend.
inline constexpr double field_wide_opacity = 0.45, field_core_opacity = 0.6, field_outline_px = 1.6;

/// What Thing::field shows: the coil's field under one placement, on that brain, or without one (null) on the
/// sphere within the round model head. Null where there is none: a coil whose file tells of no windings, skin
/// that no sphere is like. Some milliseconds.
[[nodiscard]] std::shared_ptr<const geometry::CoilField> field_under(const geometry::Head& head,
                                                                     const geometry::Cortex* brain,
                                                                     const geometry::Coil& coil,
                                                                     const geometry::Placement& placement);

}  // namespace scalpmark::viewer
