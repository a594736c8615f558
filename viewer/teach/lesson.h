#pragma once

#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"
#include "viewer/stage/scene/camera.h"
#include "viewer/stage/scene/shown.h"

namespace scalpmark::viewer {

/// What one step of the lesson is about, in the order in which staff do it.
enum class LessonTopic { measure, halve, cross, offset, forward, grid, twitch, site, mark_edge, gap, across };

/// A mark the pencil leaves at a step.
struct PencilMark {
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
  Eigen::Vector3d along = Eigen::Vector3d::UnitX();  ///< the way the short line runs
  std::string text;
};

/// A part of the head looked at from close by.
struct CloseLook {
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
  double across_mm = 200;  ///< the height of the picture
};

/// One step: what is said and what is seen.
struct LessonStep {
  LessonTopic topic = LessonTopic::measure;
  std::string title;               ///< two or three words: "Halve the tapes"
  std::string caption;             ///< what staff do, a sentence or two with this case's numbers
  std::string why;                 ///< why it is done so, for whoever asks
  View view = View::front;         ///< where the camera goes
  std::optional<CloseLook> close;  ///< empty: the whole head
  Shown shown;                     ///< what the stage shows, and where the coil lies
  std::vector<PencilMark> pencil;
};

/// The whole procedure for a case, in order. Lengths in cm with one decimal, whole degrees.
[[nodiscard]] std::vector<LessonStep> lesson(const geometry::Case& the_case, const geometry::Plan& plan);

}  // namespace scalpmark::viewer
