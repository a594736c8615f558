#pragma once

#include <optional>
#include <vector>

#include "geometry/head/head.h"
#include "geometry/head/landmarks.h"
#include "geometry/plan/case.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/plan.h"
#include "geometry/tapes/tape.h"

namespace scalpmark::geometry {

/// The side a case's treatment lies on: that of its landmark, where it is one beside the midline, else the
/// side of the search.
[[nodiscard]] Side treatment_side(const Case& the_case);

/// The side a coil held at this skin point is laid for: the case's; where the search is on one side and the
/// treatment on the other, the one the point lies on.
[[nodiscard]] Side laying_side(const Head& head, const Case& the_case, const SurfacePoint& at);

/// The coil laid for a treatment's pulse at `site`: over its edge mark, and where that was drawn by another
/// rule than it is laid by, turned until both of the treatment's marks fit. Where none fits both it is laid
/// over its edge mark at the angle entered.
[[nodiscard]] LaidCoil lay_on_site(const Head& head, const Case& the_case, Side side,
                                   const SurfacePoint& site, TapeDistances tapes);

/// Where the treatment's pulse is wanted, and the coil laid for it.
struct LaidTreatment {
  Side side = Side::left;
  std::optional<Tape> step;  ///< forward from the hotspot's pulse point; none for a landmark
  LaidCoil coil;
};
/// `hotspot` is where the pulse of the spot that answers goes. Refuses (GeometryError) a site on the face,
/// and a skin that ends before the site.
[[nodiscard]] LaidTreatment lay_treatment(const Head& head, const Case& the_case, const SurfacePoint& hotspot,
                                          TapeDistances tapes);

/// What else the site might have been, with the tape distance from it: 5, 5.5 and 6 cm forward of the hotspot
/// (where the treatment lies on the search's side), F3 or F4, and half way from there to AF3 or AF4. Those on
/// the face are left out.
[[nodiscard]] std::vector<TreatmentAlternative> treatment_alternatives(const Head& head, const Case& the_case,
                                                                       const std::vector<Landmark>& landmarks,
                                                                       const SurfacePoint& hotspot,
                                                                       const LaidTreatment& treatment);

}  // namespace scalpmark::geometry
