#include "geometry/hands/after_search.h"

#include <limits>

#include "geometry/base/error.h"
#include "geometry/plan/treatment.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// The site's wanted point, from the plan's: forward and outward.
Vector2d site_off(const Plan& plan, const Placement& site) {
  const Vector3d by = site.wanted - plan.treatment.wanted;
  return {by.dot(plan.treatment.forward), -by.dot(plan.treatment.inward)};
}

}  // namespace

AfterSearch after_search(const Plan& plan, const Placement& start) {
  const Vector3d carried = start.pulse - plan.start.pulse;
  AfterSearch best;
  best.left_mm = std::numeric_limits<double>::infinity();
  for (const GridSpot& spot : plan.grid) {
    const Vector3d there = spot.placement.pulse + carried;
    const double left = (there - plan.hotspot.pulse).norm();
    if (left < best.left_mm) best = {spot.row, spot.column, left, there};
  }
  return best;
}

SiteAfterSearch site_after_search(const Head& head, const Case& the_case, const Plan& plan,
                                  const Placement& start) {
  if (the_case.treatment.rule != TreatmentRule::forward)
    throw GeometryError(Message::of(
        "This treatment site is a landmark, so it does not hang on which spot of the search answers."));
  const auto site_from = [&](const Vector3d& hotspot) {
    return lay_treatment(head, the_case, head.skin().closest(hotspot), TapeDistances::left_out)
        .coil.placement;
  };
  SiteAfterSearch s;
  s.search = after_search(plan, start);
  s.site = site_from(s.search.hotspot);
  s.off_mm = site_off(plan, s.site);
  const Vector3d unsearched = plan.hotspot.pulse + start.pulse - plan.start.pulse;
  s.same_spot = (unsearched - s.search.hotspot).norm() < 1e-9;
  s.unsearched_mm = s.same_spot ? s.off_mm : site_off(plan, site_from(unsearched));
  return s;
}

}  // namespace scalpmark::geometry
