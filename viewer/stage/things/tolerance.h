#pragma once

#include <memory>
#include <vector>

#include "geometry/hands/tolerance.h"
#include "viewer/stage/ink.h"
#include "viewer/stage/label.h"

namespace scalpmark::viewer {

/// Where the pulse of the treatment could go when placed by hand: two ellipses on the skin, a strong one that
/// holds half of the placements and a thin one that holds 95 of 100, over a few of the placements as specks.
class ToleranceEllipses {
public:
  explicit ToleranceEllipses(vtkRenderer* renderer) : ink_(renderer) {}
  void show(const geometry::Head& head, const Shown& shown);
  void draw(const geometry::Head& head, const Sight& sight);
  void wish(std::vector<LabelWish>& labels, const Sight& sight) const;
  [[nodiscard]] vtkActor* actor() const { return ink_.actor(); }

private:
  std::shared_ptr<const geometry::Tolerance> tolerance_;
  /// Where each ellipse's name may stand: the highest point of its outline that is seen.
  struct Name {
    std::string text;
    Eigen::Vector3d at = Eigen::Vector3d::Zero();
    bool visible = false;
  };
  std::vector<Name> names_;
  Ink ink_;
};

}  // namespace scalpmark::viewer
