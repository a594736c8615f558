#include "geometry/field/depth_and_spread.h"

#include "geometry/field/field_map.h"
#include "geometry/field/field_sheet.h"

namespace scalpmark::geometry {

DepthAndSpread depth_and_spread(const SphereField& field, const RoundHead& round, const CoilPose& pose) {
  constexpr double step_mm = 1, grid_mm = 4;
  const double brain_mm = round.radius_mm - deng_brain_depth_mm;
  // As far round as a coil may have field: half of the sphere and more.
  const auto sheet_at = [&](double radius_mm) {
    return sheet_on_sphere(round, pose, radius_mm, grid_mm, 2 * radius_mm);
  };
  const double strongest = strongest_on(field, sheet_at(brain_mm)).strength();
  DepthAndSpread found;
  double volume_mm3 = 0, area_above = 0, strongest_above = strongest;
  for (double depth = 0; depth < brain_mm - grid_mm; depth += step_mm) {
    const FieldSheet sheet = sheet_at(brain_mm - depth);
    const double here = strongest_on(field, sheet).strength();
    const double area = 100 * part_above(field, sheet, 0.5 * strongest).area_cm2;
    if (depth > 0) volume_mm3 += 0.5 * step_mm * (area + area_above);
    if (here < 0.5 * strongest) {
      found.half_depth_mm = depth - step_mm * (0.5 * strongest - here) / (strongest_above - here);
      break;
    }
    area_above = area;
    strongest_above = here;
  }
  if (found.half_depth_mm > 0) found.spread_cm2 = volume_mm3 / found.half_depth_mm / 100;
  return found;
}

}  // namespace scalpmark::geometry
