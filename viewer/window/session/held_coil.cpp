#include "viewer/window/session/held_coil.h"

#include "geometry/base/error.h"
#include "geometry/plan/plan_cortex.h"
#include "geometry/plan/treatment.h"

namespace scalpmark::window {

std::optional<HeldCoil> hold_coil(const models::LoadedHead& loaded, const geometry::Case& the_case,
                                  const geometry::SurfacePoint& at, std::optional<double> angle_deg,
                                  geometry::TapeDistances tapes) {
  geometry::CoilSetup turned = the_case.coil;
  if (angle_deg) turned.angle_deg = *angle_deg;
  try {
    HeldCoil coil;
    coil.on = viewer::CoilOn::elsewhere;
    coil.at = at;
    coil.angle_deg = angle_deg;
    coil.placement = geometry::with_cortex(
        geometry::place_coil(loaded.head, turned, geometry::laying_side(loaded.head, the_case, at), at,
                             tapes),
        loaded.cortex.get());
    return coil;
  } catch (const geometry::GeometryError&) {
    return {};  // the coil stays where it last could lie
  }
}

const geometry::Placement& placement_of(const geometry::Plan& plan, const HeldCoil& coil) {
  viewer::Shown shown;
  shown.coil_on = coil.on;
  shown.row = coil.row;
  shown.column = coil.column;
  if (coil.in_hand() && coil.placement) return *coil.placement;
  return viewer::placement_shown(plan, shown);
}

}  // namespace scalpmark::window
