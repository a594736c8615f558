#pragma once

#include <vector>

#include "viewer/stage/ink.h"
#include "viewer/stage/label.h"

namespace scalpmark::viewer {

/// Landmarks as small round dots with their labels.
class Landmarks {
public:
  explicit Landmarks(vtkRenderer* renderer) : ink_(renderer) {}
  void show(const geometry::Head& head, const geometry::Plan& plan, const Shown& shown);
  void draw(const geometry::Head& head, const Sight& sight);
  void wish(std::vector<LabelWish>& labels, const Sight& sight) const;
  [[nodiscard]] const std::vector<Mark>& marks() const { return marks_; }
  [[nodiscard]] vtkActor* actor() const { return ink_.actor(); }

private:
  std::vector<Mark> marks_;
  const void* skin_ = nullptr;  ///< the vertices the marks were laid on
  bool shown_ = false;
  Ink ink_;
};

}  // namespace scalpmark::viewer
