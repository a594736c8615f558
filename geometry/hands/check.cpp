#include "geometry/hands/check.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/paths/shortest_path.h"
#include "geometry/plan/lay_on_marks.h"
#include "geometry/plan/placement.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// Marks whose distance differs from the plan's by more than this were not made for this coil.
constexpr double most_misfit_mm = 25;

/// How far apart the plan's own two marks lie along the skin; without an edge mark, the coil's own length.
double planned_mark_to_mark_mm(const Surface& skin, const Case& the_case, const Plan& plan) {
  const Placement& p = plan.treatment;
  if (!p.mark) return the_case.coil.centre_to_edge_mm;
  return shortest_distances(skin, skin.closest(p.wanted), {skin.closest(*p.mark)}).front();
}

}  // namespace

Check check_marks(const Head& head, const Case& the_case, const Plan& plan,
                  const SurfacePoint& site_mark_today, const SurfacePoint& edge_mark_today,
                  const CheckLimits& limits, TapeDistances tapes) {
  if (!(limits.pulse_mm > 0) || !(limits.angle_deg > 0) || !std::isfinite(limits.pulse_mm + limits.angle_deg))
    throw GeometryError(Message::of(
        "The limits of the check must be more than 0, the distance and the angle; correct them."));
  const Surface& skin = head.skin();
  const Side side = side_of(plan.treatment);
  Check check;
  check.planned_deg = the_case.coil.angle_deg;
  check.limits = limits;
  check.mark_to_mark_mm = shortest_distances(skin, site_mark_today, {edge_mark_today}).front();
  const double planned_mm = planned_mark_to_mark_mm(skin, the_case, plan);
  if (!(std::abs(check.mark_to_mark_mm - planned_mm) <= most_misfit_mm))
    throw GeometryError(Message::of(
        "The site mark and the edge mark lie %1 cm apart, but this plan's lie %2 cm apart; check that both marks were made for this coil.",
        number(check.mark_to_mark_mm / 10), number(planned_mm / 10)));

  const LaidOnMarks now = lay_on_marks(head, the_case.coil, side, site_mark_today, edge_mark_today);
  CoilSetup laid = the_case.coil;
  laid.angle_deg = check.angle_deg = now.angle_deg;
  check.as_laid = place_coil(head, laid, side, now.pulse, tapes);
  const Vector3d off = check.as_laid.pulse - plan.treatment.pulse;
  check.forward_mm = off.dot(plan.treatment.forward);
  check.outward_mm = -off.dot(plan.treatment.inward);
  const std::vector<double> from_pulse =
      shortest_distances(skin, now.pulse, {skin.closest(plan.treatment.pulse), site_mark_today});
  check.pulse_off_mm = from_pulse[0];
  check.pulse_from_site_mm = from_pulse[1];
  check.angle_error_deg = wrapped_deg(check.angle_deg - the_case.coil.angle_deg);
  const bool pulse_off = check.pulse_off_mm > limits.pulse_mm;
  const bool angle_off = std::abs(check.angle_error_deg) > limits.angle_deg;
  check.verdict = pulse_off && angle_off ? Verdict::both_off
                  : pulse_off            ? Verdict::pulse_off
                  : angle_off            ? Verdict::angle_off
                                         : Verdict::good;
  return check;
}

}  // namespace scalpmark::geometry
