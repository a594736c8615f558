#pragma once

#include <vtkRenderer.h>

#include <Eigen/Core>

#include "viewer/stage/scene/camera.h"

namespace scalpmark::window {

/// Where a picture is taken from, and how much of what is there fills it.
struct Eye {
  viewer::Gaze gaze;
  Eigen::Vector3d focus = Eigen::Vector3d::Zero();  ///< in the middle of the picture
  double scale = 100;                               ///< half of the picture's height, mm
  double eye_mm = 0;                                ///< from the focus; 0: by parallel projection
  double centre_x = 0, centre_y = 0;                ///< shift of the picture, in shares of its half sides
};

/// A renderer's camera as an eye, and the other way round.
[[nodiscard]] Eye eye_of(vtkRenderer& renderer);
void aim(vtkRenderer& renderer, const Eye& eye);

/// The eye a share (0 to 1) of the way from one to another.
[[nodiscard]] Eye between(const Eye& from, const Eye& to, double share);

}  // namespace scalpmark::window
