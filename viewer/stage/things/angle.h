#pragma once

#include <vector>

#include "viewer/stage/ink.h"
#include "viewer/stage/label.h"

namespace scalpmark::viewer {

/// The coil's angle, lying on the skin: the midline direction (forward) through the pulse point, the front
/// axis, and the arc between them with its degrees.
class Angle {
public:
  explicit Angle(vtkRenderer* renderer) : ink_(renderer) {}
  void show(const geometry::Head& head, const geometry::Placement& placement, const Shown& shown);
  void draw(const geometry::Head& head, const Sight& sight);
  void wish(std::vector<LabelWish>& labels, const Sight& sight) const;
  [[nodiscard]] vtkActor* actor() const { return ink_.actor(); }

private:
  std::vector<Eigen::Vector3d> forward_, front_, arc_;
  std::string text_, forward_text_;
  Eigen::Vector3d label_at_ = Eigen::Vector3d::Zero(), forward_end_ = Eigen::Vector3d::Zero(),
                  normal_ = Eigen::Vector3d::UnitZ();
  bool shown_ = false, in_sight_ = false;
  Ink ink_;
};

}  // namespace scalpmark::viewer
