#include "geometry/plan/plan_cortex.h"

namespace scalpmark::geometry {

Placement with_cortex(Placement placement, const Cortex* cortex) {
  placement.cortex = cortex != nullptr ? cortex->under(placement.pulse, -placement.normal) : std::nullopt;
  return placement;
}

Plan with_cortex(Plan plan, const Cortex* cortex) {
  const auto look_under = [&](Placement& p) { p = with_cortex(std::move(p), cortex); };
  look_under(plan.start);
  for (GridSpot& spot : plan.grid) look_under(spot.placement);
  look_under(plan.hotspot);
  look_under(plan.treatment);
  return plan;
}

}  // namespace scalpmark::geometry
