#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/coil/tilt.h"
#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

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

/// The mark by the case's rule alone; empty where it falls off the head.
[[nodiscard]] std::optional<SurfacePoint> edge_mark(const Head& head, const Case& entered, Side side,
                                                    const SurfacePoint& pulse);

/// The pulse point alone whose mark by the case's rule falls on `mark` (to 0.02 mm at worst), looked for from
/// `near` where given. Refuses (GeometryError) a mark that no pulse point reaches.
[[nodiscard]] SurfacePoint pulse_for_mark(const Head& head, const Case& entered, Side side,
                                          const SurfacePoint& mark, const SurfacePoint* near = nullptr);

/// How a coil is laid on a mark when it is not laid as it should be.
struct MarkSearch {
  const SurfacePoint* near = nullptr;  ///< look from here; by default from where a tape would lead
  double wanted_mm = 1e-3;             ///< stop when the mark is met this closely
  Tilt tilt;                           ///< out of tangent, about the pulse point
};
/// The same for a coil held askew: where its axis then meets the skin.
[[nodiscard]] SurfacePoint pulse_for_mark(const Head& head, const Case& entered, Side side,
                                          const SurfacePoint& mark, const MarkSearch& search);

/// Forward (along the parasagittal section, towards the nose) and outward (square to it, away from the
/// midline) in the tangent plane of the skin. Unit.
struct Directions {
  Eigen::Vector3d forward = Eigen::Vector3d::UnitY();
  Eigen::Vector3d outward = Eigen::Vector3d::UnitX();
};
[[nodiscard]] Directions directions_at(const Head& head, Side side, const SurfacePoint& at);

}  // namespace scalpmark::geometry
