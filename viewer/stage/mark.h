#pragma once

#include <Eigen/Core>
#include <string>

#include "geometry/head/head.h"
#include "viewer/stage/palette.h"
#include "viewer/stage/shapes.h"
#include "viewer/stage/sight.h"
#include "viewer/stage/things.h"

namespace scalpmark::viewer {

/// A mark lying on the skin.
struct Mark {
  Thing thing = Thing::landmarks;
  std::string name;  ///< "C3", "grid +1 0 pulse", "treatment", ...
  Shape shape = Shape::dot;
  Colour colour;
  Eigen::Vector3d at = Eigen::Vector3d::Zero();       ///< where the plan says
  Eigen::Vector3d normal = Eigen::Vector3d::UnitZ();  ///< of the skin, calmed over a few millimetres
  Eigen::Vector3d along = Eigen::Vector3d::UnitX();   ///< the shape's x, square to the normal
  bool visible = false;                               ///< not behind the head, as seen last

  /// Marks of a higher layer lie over those of a lower one where they meet.
  [[nodiscard]] int layer() const;
};

/// A mark at a skin point; `along` need not be square to the skin.
[[nodiscard]] Mark make_mark(const geometry::Head& head, Thing thing, std::string name, Shape shape,
                             Colour colour, const Eigen::Vector3d& at, const Eigen::Vector3d& along);

/// The skin's direction at a point of it, averaged over a patch of 8 mm so that scanner noise does not tilt
/// marks.
[[nodiscard]] Eigen::Vector3d calm_normal(const geometry::Surface& skin, const Eigen::Vector3d& at);

/// Whether the head does not stand between a skin point and the eye.
[[nodiscard]] bool in_sight(const geometry::Surface& skin, const Eigen::Vector3d& at,
                            const Eigen::Vector3d& normal, const Sight& sight);

}  // namespace scalpmark::viewer
