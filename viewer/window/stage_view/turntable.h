#pragma once

#include <Eigen/Core>

#include "viewer/stage/scene/camera.h"

namespace scalpmark::window {

/// Turns a gaze as if the head sat on a turntable: `around_deg` about the head's up, then `over_deg` about
/// the picture's right (positive: the eye rises). The eye stops short of straight above and below, so that up
/// stays up. From straight above (`gaze` of the view from above) turning goes on from there.
[[nodiscard]] viewer::Gaze turned(const viewer::Gaze& gaze, const Eigen::Vector3d& head_up, double around_deg,
                                  double over_deg);

/// The gaze a share (0 to 1) of the way from one to another, by the shortest turn.
[[nodiscard]] viewer::Gaze between(const viewer::Gaze& from, const viewer::Gaze& to, double share);

}  // namespace scalpmark::window
