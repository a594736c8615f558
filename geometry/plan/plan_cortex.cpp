#include "geometry/plan/plan_cortex.h"

namespace scalpmark::geometry {

Plan with_cortex(Plan plan, const Head& head) {
  const auto look_under = [&](Placement& p) {
    p.cortex = head.cortex() != nullptr ? head.cortex()->under(p.pulse, -p.normal) : std::nullopt;
  };
  look_under(plan.start);
  for (GridNode& node : plan.grid) look_under(node.placement);
  look_under(plan.hotspot);
  look_under(plan.treatment);
  return plan;
}

}  // namespace scalpmark::geometry
