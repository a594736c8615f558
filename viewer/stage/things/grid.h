#pragma once

#include <vector>

#include "viewer/stage/ink.h"

namespace scalpmark::viewer {

/// The nine search nodes: where each pulse goes (discs), where its edge mark lies (bars), and a line that
/// links the two.
class Grid {
public:
  explicit Grid(vtkRenderer* renderer) : ink_(renderer) {}
  void show(const geometry::Head& head, const geometry::Case& entered, const geometry::Plan& plan,
            const Shown& shown);
  void draw(const geometry::Head& head, const Sight& sight);
  [[nodiscard]] const std::vector<Mark>& marks() const { return marks_; }
  [[nodiscard]] vtkActor* actor() const { return ink_.actor(); }

private:
  std::vector<Mark> marks_;
  std::vector<std::vector<Eigen::Vector3d>> links_;
  bool shown_ = false;
  Ink ink_;
};

}  // namespace scalpmark::viewer
