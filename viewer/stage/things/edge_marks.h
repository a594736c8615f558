#pragma once

#include <optional>
#include <vector>

#include "viewer/stage/ink.h"
#include "viewer/stage/label.h"

namespace scalpmark::viewer {

/// The coil's edge marks where it lies: a bar for each marking rule along the coil's edge, the chosen rule's
/// strong and the others faint; a sight line from the edge in the air to each mark; the tape line from the
/// pulse point; and the pulse point itself.
class EdgeMarkBars {
public:
  explicit EdgeMarkBars(vtkRenderer* renderer) : ink_(renderer) {}
  void show(const geometry::Head& head, const geometry::Case& entered, const geometry::Placement& placement,
            const Shown& shown);
  void draw(const geometry::Head& head, const Sight& sight);
  void wish(std::vector<LabelWish>& labels, const Sight& sight) const;
  [[nodiscard]] const std::vector<Mark>& marks() const { return marks_; }
  [[nodiscard]] vtkActor* actor() const { return ink_.actor(); }

private:
  struct Bar {
    geometry::MarkRule rule = geometry::MarkRule::tape;
    std::string text;
    bool chosen = false;
  };
  std::vector<Mark> marks_;
  std::vector<Bar> bars_;  ///< of marks_[i + 1]; marks_[0] is the pulse point
  geometry::Placement placement_;
  bool shown_ = false;
  Ink ink_;
};

}  // namespace scalpmark::viewer
