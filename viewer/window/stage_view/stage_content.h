#pragma once

#include <Eigen/Core>
#include <QString>
#include <optional>
#include <set>
#include <vector>

#include "geometry/plan/plan.h"
#include "viewer/stage/scene/camera.h"
#include "viewer/stage/scene/mark.h"
#include "viewer/stage/scene/palette.h"
#include "viewer/stage/scene/shown.h"
#include "viewer/window/session/held_coil.h"

namespace scalpmark::window {

/// A mark of today's visit, a landmark that was asked for, a line between two marks: drawn on the stage
/// besides the plan.
struct StageNote {
  viewer::Shape shape = viewer::Shape::disc;
  viewer::Colour colour;
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
  Eigen::Vector3d along = Eigen::Vector3d::UnitX();
  std::vector<Eigen::Vector3d> line;  ///< drawn instead of the shape, with the text at its middle
  bool ticked = false;                ///< the line is a tape, with a tick every half centimetre
  QString text;
};

inline constexpr int usual_glide_ms = 350;

/// Where the stage is looked at from.
struct StageLook {
  viewer::View view = viewer::View::square_on;
  /// Instead: straight at a part of the head, so many millimetres of it filling the picture.
  struct CloseUp {
    viewer::Gaze gaze;
    Eigen::Vector3d at = Eigen::Vector3d::Zero();
    double across_mm = 0;
  };
  std::optional<CloseUp> close_up;
  int glide_ms = usual_glide_ms;  ///< how long it takes to get there
};

/// What a step or a mode puts on the stage: what is shown, what is noted beside it and where it is looked at
/// from.
struct StageContent {
  viewer::Shown shown;
  std::vector<StageNote> notes;
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
