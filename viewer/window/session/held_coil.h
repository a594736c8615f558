#pragma once

#include <optional>

#include "geometry/plan/placement.h"
#include "geometry/plan/plan.h"
#include "models/heads/load_head.h"
#include "viewer/stage/scene/shown.h"

namespace scalpmark::window {

/// Where the coil on the stage lies: on a place of the plan, or held in the hand anywhere on the skin, turned
/// at will. Looking around with the coil is no edit; the case stays as it is.
struct HeldCoil {
  viewer::CoilOn on = viewer::CoilOn::treatment;
  int row = 0, column = 0;                       ///< on a spot
  geometry::SurfacePoint at;                     ///< in the hand: the pulse point
  std::optional<double> angle_deg;               ///< in the hand, turned: instead of the case's angle
  std::optional<geometry::Placement> placement;  ///< in the hand: as laid by geometry::place_coil

  [[nodiscard]] bool in_hand() const { return on == viewer::CoilOn::elsewhere; }
};

/// The coil laid at a skin point by hand, at the case's angle or at its own. A point where it cannot be laid
/// gives nothing.
[[nodiscard]] std::optional<HeldCoil> hold_coil(const models::LoadedHead& loaded,
                                                const geometry::Case& the_case,
                                                const geometry::SurfacePoint& at,
                                                std::optional<double> angle_deg,
                                                geometry::TapeDistances tapes);

/// The placement the coil is on, in the plan or in the hand.
[[nodiscard]] const geometry::Placement& placement_of(const geometry::Plan& plan, const HeldCoil& coil);

}  // namespace scalpmark::window
