#pragma once

#include <optional>

#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"
#include "models/exports/export_file.h"
#include "models/heads/load_head.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// What an export shows of a plan: skin, landmarks of the 10-20 system, start, grid, hotspot, site, the coil
/// on the site with its edge mark, tapes.
[[nodiscard]] Shown shown_in_export();

/// A scene's marks, tapes and coil as solid things on its skin, in the stage's own shapes and colours; a
/// picture's pixel is export_mm_a_pixel. Things for the eye alone (labels, helping lines) are left out.
[[nodiscard]] models::ExportHead export_scene(const Scene& scene);

/// So large are shapes that the stage draws in pixels of a picture 800 high: a head then fills it.
inline constexpr double export_mm_a_pixel = 0.4;

/// Where a print is cut flat so that it stands: level with the head's axes, at the brim of the case's cap,
/// which lies above the brow. What is left has no face.
[[nodiscard]] models::FlatCut cut_above_brow(const geometry::Head& head, const geometry::Case& the_case);

/// All of it, for the command and the window alike.
[[nodiscard]] std::string export_plan(const geometry::Head& head, const geometry::Case& the_case,
                                      const geometry::Plan& plan, models::ExportFormat format,
                                      bool above_brow);

}  // namespace scalpmark::viewer
