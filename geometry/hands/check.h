#pragma once

#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// How far off still counts as good. 5 mm and 5 degrees are common practice, no source; limits that careful
/// hands meet on a head: careful_limits.h.
struct CheckLimits {
  double pulse_mm = 5;   ///< along the skin, from the planned treatment pulse
  double angle_deg = 5;  ///< either way, from the case's coil angle
};

enum class Verdict { good, pulse_off, angle_off, both_off };

/// The coil as today's two marks put it, beside the coil as planned. mm and degrees.
struct Check {
  Placement as_laid;
  double pulse_off_mm = 0;  ///< tape distance from the planned treatment pulse to today's pulse
  double forward_mm = 0;    ///< the same offset straight, seen from the planned pulse; backward is negative
  double outward_mm = 0;    ///< away from the midline; toward it is negative
  double angle_deg = 0;     ///< of the front axis as laid, from forward, positive toward the midline
  double angle_error_deg = 0;     ///< angle_deg less the case's, within -180 to 180
  double pulse_from_site_mm = 0;  ///< tape distance from today's site mark to where the pulse really goes
  double mark_to_mark_mm = 0;     ///< tape distance between today's two marks
  Verdict verdict = Verdict::good;
  double planned_deg = 0;  ///< the case's coil angle
  CheckLimits limits;      ///< what the verdict was made by
};

/// Lays the coil the way staff lay it by two marks, and compares it with the plan's treatment placement.
/// Staff put the front edge over the edge mark and turn the coil until its centre line, looked at straight
/// down the coil's normal, runs over the site mark. So the pulse point and the angle are those for which the
/// coil's edge mark by the rule it is laid by falls on today's edge mark, and today's site mark lies in the
/// plane of the coil's normal and front axis. The angle is found by the secant method to 0.01 degrees; the
/// pulse point for each angle by pulse_for_mark (placement.h). `plan` is solve(head, entered); the side is
/// the plan's treatment side. Refuses (GeometryError): limits that are not above zero; marks whose tape
/// distance differs from the case's centre_to_edge_mm by more than 25 mm; marks no placement of the coil
/// fits. `tapes`: whether as_laid gets its tape distances.
[[nodiscard]] Check check_marks(const Head& head, const Case& the_case, const Plan& plan,
                                const SurfacePoint& site_mark_today, const SurfacePoint& edge_mark_today,
                                const CheckLimits& limits = {},
                                TapeDistances tapes = TapeDistances::left_out);

}  // namespace scalpmark::geometry
