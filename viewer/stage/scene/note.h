#pragma once

#include <Eigen/Core>
#include <string>
#include <vector>

#include "viewer/stage/scene/mark.h"
#include "viewer/stage/scene/palette.h"
#include "viewer/stage/scene/shapes.h"

namespace scalpmark::viewer {

/// Something on the stage besides the plan: a mark of today's visit, a landmark that was asked for, a line
/// between two marks.
struct Note {
  Shape shape = Shape::disc;
  Role role = Role::text;
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
  Eigen::Vector3d along = Eigen::Vector3d::UnitX();
  std::vector<Eigen::Vector3d> line{};  ///< drawn instead of the shape, with the text at its middle
  bool ticked = false;                  ///< the line is a tape, with a tick every half centimetre
  std::string text{};
  int priority = label_priority::note;
};

}  // namespace scalpmark::viewer
