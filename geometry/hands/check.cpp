#include "geometry/hands/check.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/paths/shortest_path.h"
#include "geometry/plan/placement.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// Marks further from the coil's own length than this were not made for this coil.
constexpr double most_misfit_mm = 25;
constexpr double settled_deg = 0.01;

double degrees(double radians) {
  return radians * 180 / M_PI;
}

double wrapped(double angle_deg) {
  return std::remainder(angle_deg, 360);
}

/// The coil laid with its edge over the mark at one angle, and how far the site mark is off its centre line.
struct Turned {
  SurfacePoint pulse;
  double sideways_mm = 0;  ///< of the site mark, toward greater angles
};

Turned turned_to(const Head& head, Case entered, Side side, double angle_deg, const Vector3d& site,
                 const SurfacePoint& edge_mark, const SurfacePoint& near) {
  entered.coil.angle_deg = wrapped(angle_deg);
  Turned t;
  t.pulse = pulse_for_mark(head, entered, side, edge_mark, &near);
  const Placement p = place_coil(head, entered, side, t.pulse, TapeDistances::left_out);
  const double a = entered.coil.angle_deg * M_PI / 180;
  const Vector3d greater = -std::sin(a) * p.forward + std::cos(a) * p.inward;
  t.sideways_mm = (site - p.pulse).dot(greater);
  return t;
}

}  // namespace

Side side_of(const Placement& placement) {
  return placement.forward.cross(placement.normal).dot(placement.inward) > 0 ? Side::left : Side::right;
}

Check check_marks(const Head& head, const Case& entered, const Plan& plan,
                  const SurfacePoint& site_mark_today, const SurfacePoint& edge_mark_today,
                  const CheckLimits& limits, TapeDistances tapes) {
  if (!(limits.pulse_mm > 0) || !(limits.angle_deg > 0) || !std::isfinite(limits.pulse_mm + limits.angle_deg))
    throw GeometryError(
        Message::of("The limits of the check must be more than 0 mm and 0 degrees; correct them."));
  const Surface& skin = head.skin();
  const Side side = side_of(plan.treatment);
  const Vector3d site = skin.position(site_mark_today), edge = skin.position(edge_mark_today);
  Check check;
  check.planned_deg = entered.coil.angle_deg;
  check.limits = limits;
  check.mark_to_mark_mm = shortest_distances(skin, site_mark_today, {edge_mark_today}).front();
  const double reach = entered.coil.centre_to_edge_mm;
  if (!(std::abs(check.mark_to_mark_mm - reach) <= most_misfit_mm))
    throw GeometryError(Message::of(
        "The site mark and the edge mark lie %1 cm apart, but this coil's edge is %2 cm from its centre; check that both marks were made for this coil.",
        number(check.mark_to_mark_mm / 10), number(reach / 10)));

  // From the site mark, the edge mark's direction is already the answer where the pulse falls on the site
  // mark.
  const Directions at_site = directions_at(head, side, site_mark_today);
  const Vector3d toward = edge - site;
  double angle = degrees(std::atan2(-toward.dot(at_site.outward), toward.dot(at_site.forward)));
  Turned now = turned_to(head, entered, side, angle, site, edge_mark_today, site_mark_today);
  // Turning the coil about its edge by a small angle swings its centre by that angle times the centre's
  // distance.
  double degrees_per_mm = -degrees(1 / reach);
  constexpr int most_rounds = 30;
  constexpr double longest_turn_deg = 20;
  int round = 0;
  for (; round < most_rounds; ++round) {
    const double turn = std::clamp(degrees_per_mm * now.sideways_mm, -longest_turn_deg, longest_turn_deg);
    if (std::abs(turn) < settled_deg) break;
    const Turned next = turned_to(head, entered, side, angle + turn, site, edge_mark_today, now.pulse);
    const double change = next.sideways_mm - now.sideways_mm;
    // A slope of the wrong sign or a wild one is the skin's grain, not the coil's turning.
    const double slope = change != 0 ? turn / change : 0;
    if (slope < 0 && -slope < degrees(4 / reach) && -slope > degrees(0.25 / reach)) degrees_per_mm = slope;
    angle += turn;
    now = next;
  }
  if (round == most_rounds)
    throw GeometryError(Message::of(
        "The coil cannot be laid with its edge over the edge mark and its centre line over the site mark; make both marks new."));

  Case laid = entered;
  laid.coil.angle_deg = check.angle_deg = wrapped(angle);
  check.as_laid = place_coil(head, laid, side, now.pulse, tapes);
  const Vector3d off = check.as_laid.pulse - plan.treatment.pulse;
  check.forward_mm = off.dot(plan.treatment.forward);
  check.outward_mm = -off.dot(plan.treatment.inward);
  const std::vector<double> from_pulse =
      shortest_distances(skin, now.pulse, {skin.closest(plan.treatment.pulse), site_mark_today});
  check.pulse_off_mm = from_pulse[0];
  check.pulse_from_site_mm = from_pulse[1];
  check.angle_error_deg = wrapped(check.angle_deg - entered.coil.angle_deg);
  const bool pulse_off = check.pulse_off_mm > limits.pulse_mm;
  const bool angle_off = std::abs(check.angle_error_deg) > limits.angle_deg;
  check.verdict = pulse_off && angle_off ? Verdict::both_off
                  : pulse_off            ? Verdict::pulse_off
                  : angle_off            ? Verdict::angle_off
                                         : Verdict::good;
  return check;
}

}  // namespace scalpmark::geometry
