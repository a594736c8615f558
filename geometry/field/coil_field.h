#pragma once

#include <Eigen/Core>

#include "geometry/brain/cortex.h"
#include "geometry/coil/coil_setup.h"
#include "geometry/field/field_map.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// A coil's field under one placement: the round head fitted there, the sheet it is looked at on, what it
/// does there.
struct CoilField {
  RoundHead round;
  LaidPose laid;
  double lift_mm = 0;
  FieldSheet sheet;
  SphereField field;
  FieldMap map;
};

/// On the cortex where there is one, else on the sphere `sheet_depth_mm` under the round head's skin. Quick
/// enough for a coil being dragged. Refuses what its parts refuse (GeometryError).
[[nodiscard]] CoilField coil_field(const Surface& skin, const Cortex* cortex, const Coil& coil,
                                   const Placement& placement);

}  // namespace scalpmark::geometry
