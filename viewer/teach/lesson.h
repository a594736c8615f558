#pragma once

#include <set>
#include <string>
#include <vector>

#include "geometry/case.h"
#include "geometry/plan.h"
#include "viewer/stage/camera.h"
#include "viewer/stage/things.h"

namespace scalpmark::viewer {

/// What one step of the lesson is about, in the order in which staff do it.
enum class LessonTopic { measure, halve, cross, offset, forward, grid, twitch, treat, mark_edge };

/// One step: what is said and what is seen.
struct LessonStep {
  LessonTopic topic = LessonTopic::measure;
  std::string title;                ///< two or three words: "Halve the tapes"
  std::string caption;              ///< what staff do, a sentence or two with this case's numbers
  View view = View::front;          ///< where the camera goes
  Shown shown;                      ///< what the stage shows, and where the coil lies
  std::set<std::string> lines;      ///< construction lines, by their names in the plan
  std::set<std::string> landmarks;  ///< landmarks shown, by name
};

/// The whole procedure for a case, in order. Lengths in cm with one decimal, whole degrees.
[[nodiscard]] std::vector<LessonStep> lesson(const geometry::Case& entered, const geometry::Plan& plan);

/// The plan with only the lines and landmarks of a step, for the stage.
[[nodiscard]] geometry::Plan for_step(geometry::Plan plan, const LessonStep& step);

/// The plan with the lines named in `fresh` laid only as far as `share` (0 to 1) of all their length, one
/// after the other: what a class sees while a tape is being laid.
[[nodiscard]] geometry::Plan laid_so_far(geometry::Plan plan, const std::set<std::string>& fresh,
                                         double share);

}  // namespace scalpmark::viewer
