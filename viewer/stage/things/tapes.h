#pragma once

#include <vector>

#include "viewer/stage/ink.h"
#include "viewer/stage/label.h"

namespace scalpmark::viewer {

/// The plan's tapes with a tick at every centimetre, a longer one at every fifth, counted from each tape's
/// start.
class Tapes {
public:
  explicit Tapes(vtkRenderer* renderer) : ink_(renderer) {}
  void show(const geometry::Head& head, const geometry::Plan& plan, const Shown& shown);
  void draw(const geometry::Head& head, const Sight& sight);
  void wish(std::vector<LabelWish>& labels, const Sight& sight) const;
  [[nodiscard]] vtkActor* actor() const { return ink_.actor(); }

private:
  struct Tick {
    Eigen::Vector3d at, across, normal;
    int cm = 0;
    bool visible = false;
  };
  struct Laid {
    geometry::PlanLine from;            ///< what it was made of, to tell whether it changed
    std::vector<Eigen::Vector3d> line;  ///< evenly spaced
    std::vector<Tick> ticks;
    bool walked = false;  ///< one of the steps the case asks for, not one of the head's three tapes
  };
  static Laid lay(const geometry::Head& head, const geometry::PlanLine& line);

  std::vector<Laid> laid_;
  const void* skin_ = nullptr;
  bool shown_ = false;
  Ink ink_;
};

}  // namespace scalpmark::viewer
