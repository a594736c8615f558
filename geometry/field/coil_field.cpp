#include "geometry/field/coil_field.h"

#include <utility>

namespace scalpmark::geometry {

CoilField coil_field(const Surface& skin, const Cortex* cortex, const Coil& coil,
                     const Placement& placement) {
  const RoundHead round = round_head(skin, placement.pulse);
  const LaidPose laid = placement.pose();
  const CoilPose& pose = laid.pose;
  FieldSheet sheet = cortex != nullptr ? sheet_on_cortex(*cortex, placement.pulse)
                                       : sheet_on_sphere(round, pose, round.radius_mm - sheet_depth_mm);
  SphereField field(round.centre, turns_of(coil, frame_of(pose, placement.lift_mm)));
  FieldMap map = field_map(field, sheet, pose);
  return {round, laid, placement.lift_mm, std::move(sheet), std::move(field), std::move(map)};
}

}  // namespace scalpmark::geometry
