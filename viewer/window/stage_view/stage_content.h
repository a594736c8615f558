#pragma once

#include <Eigen/Core>
#include <optional>
#include <set>
#include <vector>

#include "geometry/plan/plan.h"
#include "viewer/stage/scene/camera.h"
#include "viewer/stage/scene/shown.h"
#include "viewer/window/session/held_coil.h"

namespace scalpmark::window {

inline constexpr int usual_glide_ms = 350;

/// Where the stage is looked at from.
struct StageLook {
  viewer::View view = viewer::View::square_on;
  /// Instead: straight at a part of the head, so many millimetres of it filling the picture.
  struct CloseUp {
    viewer::Gaze gaze;
    Eigen::Vector3d at = Eigen::Vector3d::Zero();
    double across_mm = 0;
    double eye_mm = 0;  ///< from an eye so far away instead of by parallel projection
  };
  std::optional<CloseUp> close_up;
  int glide_ms = usual_glide_ms;  ///< how long it takes to get there
};

/// What a step or a mode puts on the stage: what is shown and where it is looked at from.
struct StageContent {
  viewer::Shown shown;
  StageLook look;
  bool coil_follows_hand = true;
  /// For staff at work: legend, numbers and gaps as they were chosen, and the line under the stage.
  bool for_work = false;
  /// Is about how far off hands could put the pulse; drawn with Thing::tolerance.
  bool off_by_hand = false;
};

/// These things, with the coil as it is held.
[[nodiscard]] viewer::Shown shown_with(std::set<viewer::Thing> things, const HeldCoil& coil);

}  // namespace scalpmark::window
