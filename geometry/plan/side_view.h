#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/head/head.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// Head and coil cut along the coil's front axis, looked at from beside the coil: x along the front axis, y
/// away from the head along the coil's normal, mm, from the pulse point. What shows why a flat coil's edge
/// has three marks on a round head.
struct SideView {
  std::vector<Eigen::Vector2d> skin;               ///< from behind the coil to in front of it
  double face_mm = 0;                              ///< height of the coil's face
  double back_mm = 0;                              ///< x of the coil's back end, below 0
  Eigen::Vector2d edge = Eigen::Vector2d::Zero();  ///< the middle of the front edge
  /// By rule; a mark that lies aside of the cut is seen through the head. Empty where it falls off the head.
  std::optional<Eigen::Vector2d> tape, drop, nearest;

  [[nodiscard]] const std::optional<Eigen::Vector2d>& by(MarkRule rule) const {
    return rule == MarkRule::tape ? tape : rule == MarkRule::drop ? drop : nearest;
  }
};

/// `reach_mm`: how far the skin is followed to either side. Refuses (GeometryError) what follow_section
/// refuses.
[[nodiscard]] SideView side_view(const Head& head, const Coil& coil, const Placement& placement,
                                 double reach_mm = 120);

}  // namespace scalpmark::geometry
