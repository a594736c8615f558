#pragma once

#include <QWidget>
#include <functional>
#include <vector>

#include "viewer/window/fields/length_text.h"
#include "viewer/window/session/session.h"
#include "viewer/window/stage_view/stage_view.h"

namespace scalpmark::window {

/// What a lesson puts on the stage.
struct LessonStage {
  viewer::Shown shown;
  std::vector<StageNote> notes;
};

/// What a lesson hands to the window it is given in.
struct LessonParts {
  QWidget* panel = nullptr;  ///< stands left of the stage in Teach mode
  QWidget* bar = nullptr;    ///< stands under it
  std::function<LessonStage(const Session&)> stage;
  std::function<void(LengthUnit)> set_unit;
  std::function<void()> look;  ///< turns the stage to what the lesson is about
};

}  // namespace scalpmark::window
