#pragma once

#include <vector>

#include "viewer/stage/ink.h"
#include "viewer/stage/label.h"

namespace scalpmark::viewer {

/// Start (disc), hotspot (ring), treatment site (diamond) and where the site might have been (small
/// diamonds).
class Sites {
public:
  explicit Sites(vtkRenderer* renderer) : ink_(renderer) {}
  void show(const geometry::Head& head, const geometry::Case& entered, const geometry::Plan& plan,
            const Shown& shown);
  void draw(const geometry::Head& head, const Sight& sight);
  void wish(std::vector<LabelWish>& labels, const Sight& sight) const;
  [[nodiscard]] const std::vector<Mark>& marks() const { return marks_; }
  [[nodiscard]] vtkActor* actor() const { return ink_.actor(); }

private:
  std::vector<Mark> marks_;
  std::vector<std::string> texts_;  ///< one for each mark
  Ink ink_;
};

}  // namespace scalpmark::viewer
