#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/coil/coil_setup.h"
#include "geometry/coil/pose.h"
#include "geometry/coil/tilt.h"
#include "geometry/head/head.h"
#include "geometry/plan/edge_marks.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// How the coil's face lies at a skin point, before any lift, `tilt` out of tangent.
[[nodiscard]] LaidPose pose_at(const Head& head, const CoilSetup& setup, Side side, const SurfacePoint& pulse,
                               const Tilt& tilt = {});

/// Lays the coil with its centre over the skin point `pulse`: pose, lift, the three marks, gaps, tape
/// distances. The coil's face is tangent to the skin averaged over the coil's contact patch, then lifted
/// until no part of the coil is inside the head, plus the setup's lift. `side` says which way is toward the
/// midline. The point wanted is the pulse point.
[[nodiscard]] Placement place_coil(const Head& head, const CoilSetup& setup, Side side,
                                   const SurfacePoint& pulse,
                                   TapeDistances tapes = TapeDistances::worked_out);

/// The reverse: the placement whose mark by the rule it is laid by falls on `mark`. Refuses (GeometryError) a
/// mark that no pulse point reaches.
[[nodiscard]] Placement place_by_mark(const Head& head, const CoilSetup& setup, Side side,
                                      const SurfacePoint& mark,
                                      TapeDistances tapes = TapeDistances::worked_out);

/// A placement with its points as skin points, for going on from them.
struct LaidCoil {
  Placement placement;
  SurfacePoint wanted, pulse;
  std::optional<SurfacePoint> mark;  ///< over which it is laid
};
[[nodiscard]] LaidCoil lay_coil(const Head& head, const CoilSetup& setup, Side side,
                                const SurfacePoint& pulse, TapeDistances tapes = TapeDistances::worked_out);

/// The mark over which the coil is laid for its pulse to go to `wanted` is drawn there by `drawn_by`, and the
/// coil laid over it by the setup's own rule. Where the two are one, the pulse goes where it is wanted; else
/// it goes elsewhere by their difference. Where the mark falls off the head, the coil lies on the wanted
/// point without one. Refuses (GeometryError) a mark that no pulse point reaches.
[[nodiscard]] LaidCoil draw_and_lay(const Head& head, const CoilSetup& setup, MarkRule drawn_by, Side side,
                                    const SurfacePoint& wanted,
                                    TapeDistances tapes = TapeDistances::worked_out);

/// The coil laid over a mark that was drawn by `drawn_by` for a point that is found from it. `near`: a pulse
/// point to look from. Refuses (GeometryError) a mark that no pulse point reaches.
[[nodiscard]] LaidCoil lay_over(const Head& head, const CoilSetup& setup, MarkRule drawn_by, Side side,
                                const SurfacePoint& mark, const SurfacePoint& near,
                                TapeDistances tapes = TapeDistances::worked_out);

/// The coil laid with its pulse at `pulse`, over a mark that was drawn for `wanted`.
[[nodiscard]] LaidCoil lay_for(const Head& head, const CoilSetup& setup, Side side,
                               const SurfacePoint& wanted, const SurfacePoint& mark,
                               const SurfacePoint& pulse, TapeDistances tapes = TapeDistances::worked_out);

/// The same placements' tape distances, each by its own shortest path (TapeDistances::each_path), all in one
/// go on as many threads as there are cores. Points on a separate piece of skin get infinity.
void measure_tapes(const Head& head, const std::vector<LaidCoil*>& coils);

/// The mark by a rule alone; empty where it falls off the head.
[[nodiscard]] std::optional<SurfacePoint> edge_mark(const Head& head, const CoilSetup& setup, MarkRule rule,
                                                    Side side, const SurfacePoint& pulse);

/// How a coil is laid on a mark when it is not laid as it should be.
struct MarkSearch {
  const SurfacePoint* near = nullptr;  ///< look from here; by default from where a tape would lead
  double wanted_mm = 1e-3;             ///< stop when the mark is met this closely
  Tilt tilt;                           ///< out of tangent, about the pulse point
  Look look{};                         ///< past the edge, by the drop rule
};
/// The pulse point alone whose mark by `rule` falls on `mark` (to 0.02 mm at worst); of a coil held askew,
/// where its axis then meets the skin. Refuses (GeometryError) a mark that no pulse point reaches.
[[nodiscard]] SurfacePoint pulse_for_mark(const Head& head, const CoilSetup& setup, MarkRule rule, Side side,
                                          const SurfacePoint& mark, const MarkSearch& search = {});

}  // namespace scalpmark::geometry
