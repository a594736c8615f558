#include "geometry/plan/other_side.h"

#include "geometry/head/landmark_names.h"

namespace scalpmark::geometry {

void lay_on_side(Case& the_case, Side side) {
  the_case.side = side;
  TreatmentSettings& treatment = the_case.treatment;
  if (treatment.rule == TreatmentRule::landmark) treatment.label = label_on_side(treatment.label, side);
}

}  // namespace scalpmark::geometry
