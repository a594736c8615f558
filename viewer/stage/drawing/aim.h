#pragma once

#include <vtkRenderer.h>

#include <Eigen/Core>
#include <optional>

#include "geometry/surface/surface.h"
#include "viewer/stage/scene/camera.h"
#include "viewer/stage/scene/sight.h"

namespace scalpmark::viewer {

/// Three numbers as VTK hands them out.
[[nodiscard]] Eigen::Vector3d vector_of(const double* v);

/// Turns a renderer's camera: `focus` in the middle, half of the picture's height `half_height_mm` there,
/// seen from an eye `eye_mm` away (0: by parallel projection).
void aim(vtkRenderer& renderer, const Eigen::Vector3d& focus, const Gaze& gaze, double half_height_mm,
         double eye_mm = 0);

/// How the camera sees now. `scale` is the size of marks and text (see Sight).
[[nodiscard]] Sight sight_of(vtkRenderer& renderer, double scale);

/// The skin drawn at a pixel; empty beside it.
[[nodiscard]] std::optional<geometry::SurfacePoint> skin_under(const geometry::Surface& skin,
                                                               const Sight& sight, const Pixel& at);

}  // namespace scalpmark::viewer
