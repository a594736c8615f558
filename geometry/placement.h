#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/case.h"
#include "geometry/head.h"
#include "geometry/plan.h"

namespace scalpmark::geometry {

/// Lays the coil with its centre over the skin point `pulse`: pose, lift, the three marks, gaps, tape
/// distances. The coil's face is tangent to the skin averaged over the coil's contact patch, then lifted
/// until no part of the coil is inside the head, plus the case's lift. `side` says which way is toward the
/// midline.
[[nodiscard]] Placement place_coil(const Head& head, const Case& entered, Side side,
                                   const SurfacePoint& pulse,
                                   TapeDistances tapes = TapeDistances::worked_out);

/// The reverse: the placement whose mark by the case's rule falls on `mark`. Refuses (GeometryError) a mark
/// that no pulse point reaches.
[[nodiscard]] Placement place_by_mark(const Head& head, const Case& entered, Side side,
                                      const SurfacePoint& mark,
                                      TapeDistances tapes = TapeDistances::worked_out);

/// A placement with its points as skin points, for going on from them.
struct LaidCoil {
  Placement placement;
  SurfacePoint pulse;
  std::optional<SurfacePoint> mark;  ///< by the case's rule
};
[[nodiscard]] LaidCoil lay_coil(const Head& head, const Case& entered, Side side, const SurfacePoint& pulse,
                                TapeDistances tapes = TapeDistances::worked_out);

/// The same placements' tape distances, each by its own shortest path (TapeDistances::each_path), all in one
/// go on as many threads as there are cores. Points on a separate piece of skin get infinity.
void measure_tapes(const Head& head, const std::vector<LaidCoil*>& coils);

/// The pulse point alone whose mark by the case's rule falls on `mark` (to 0.02 mm at worst), looked for from
/// `near` where given. Refuses (GeometryError) a mark that no pulse point reaches.
[[nodiscard]] SurfacePoint pulse_for_mark(const Head& head, const Case& entered, Side side,
                                          const SurfacePoint& mark, const SurfacePoint* near = nullptr);

/// Forward (along the parasagittal section, towards the nose) and outward (square to it, away from the
/// midline) in the tangent plane of the skin. Unit.
struct Directions {
  Eigen::Vector3d forward = Eigen::Vector3d::UnitY();
  Eigen::Vector3d outward = Eigen::Vector3d::UnitX();
};
[[nodiscard]] Directions directions_at(const Head& head, Side side, const SurfacePoint& at);

}  // namespace scalpmark::geometry
