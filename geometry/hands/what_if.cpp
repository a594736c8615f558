#include "geometry/hands/what_if.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/coil/contact.h"
#include "geometry/head/face_region.h"
#include "geometry/head/vertex.h"
#include "geometry/paths/shortest_path.h"
#include "geometry/paths/walk.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/search.h"
#include "geometry/plan/settings.h"
#include "geometry/plan/solve.h"
#include "geometry/surface/directions.h"
#include "geometry/tapes/tape.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// Further than anyone is off who has felt for the bones at all.
constexpr double most_vertex_error_mm = 50;
/// A cap that has slid further is over the eyes or off the head; one turned further has its arrow on a cheek.
constexpr double most_slide_mm = 50, most_cap_turn_deg = 30;

WhatIf outcome(const Head& head, const Vector3d& meant, Placement really) {
  WhatIf w;
  w.meant = meant;
  const Surface& skin = head.skin();
  w.off_mm = shortest_distances(skin, skin.closest(meant), {skin.closest(really.pulse)}).front();
  w.really = std::move(really);
  return w;
}

Message tilted_past_head() {
  return Message::of("Tilted this far, the coil's axis passes the head; enter a smaller tilt.");
}

/// A coil laid by a rule over the treatment's edge mark.
WhatIf on_edge_mark(const Head& head, const CoilSetup& laid, const Placement& treatment,
                    const Look& look = {}) {
  if (!treatment.mark)
    throw GeometryError(Message::of(
        "The treatment's edge mark falls off the head, so nothing can be laid on it; choose another rule or site."));
  const Surface& skin = head.skin();
  const Side side = side_of(treatment);
  const SurfacePoint near = skin.closest(treatment.pulse);
  MarkSearch search;
  search.near = &near;
  search.look = look;
  const SurfacePoint pulse =
      pulse_for_mark(head, laid, laid.laid_by, side, skin.closest(*treatment.mark), search);
  return outcome(head, treatment.pulse, place_coil(head, laid, side, pulse, TapeDistances::left_out));
}

}  // namespace

WhatIf if_vertex_off(const Head& head, const Case& the_case, const Plan& plan, double forward_mm,
                     double right_mm) {
  const double error_mm = std::hypot(forward_mm, right_mm);
  if (!(error_mm <= most_vertex_error_mm))
    throw GeometryError(Message::of("The vertex can be marked at most %1 cm off in this lesson; choose less.",
                                    number(most_vertex_error_mm / 10)));
  const Surface& skin = head.skin();
  SurfacePoint wrong = head.vertex();
  if (error_mm > 0) {
    const Vector3d way = forward_mm * head.axes().front + right_mm * head.axes().right;
    const Walk w = walk(skin, wrong, way.normalized(), error_mm);
    if (w.reached_border)
      throw GeometryError(Message::of("The skin ends before the wrong vertex; choose less."));
    wrong = w.end;
  }
  const SkinFiducials& f = head.fiducials();
  const Tape coronal = Tape::over(skin, f.left_tragus, wrong, f.right_tragus);
  const double vertex_mm = coronal.fraction_of(skin.position(wrong)) * coronal.length_mm();
  const SurfacePoint start = measure_start(head, coronal, vertex_mm, the_case.side,
                                           the_case.search.lateral_mm, the_case.search.anterior_mm)
                                 .anterior.at(1)
                                 .on_skin;
  if (on_face(head, skin.position(start)))
    throw GeometryError(
        Message::of("From so wrong a vertex the search start falls on the face; choose less."));
  WhatIf w = outcome(head, plan.start.pulse,
                     draw_and_lay(head, the_case.coil, the_case.search.drawn_by, the_case.side, start,
                                  TapeDistances::left_out)
                         .placement);
  w.vertex = skin.position(wrong);
  return w;
}

WhatIf if_misread(const Head& head, const Case& the_case, const Plan& plan, Misread which, double by_mm) {
  Case wrong = the_case;
  WhatIf w;
  switch (which) {
    case Misread::lateral:
    case Misread::anterior:
      (which == Misread::lateral ? wrong.search.lateral_mm : wrong.search.anterior_mm) += by_mm;
      w = outcome(head, plan.start.pulse, solve(head, wrong, TapeDistances::left_out).start);
      break;
    case Misread::treatment:
      if (the_case.treatment.rule != TreatmentRule::forward)
        throw GeometryError(Message::of(
            "This treatment site is a landmark, not a length from the hotspot, so no such tape can be read wrongly."));
      wrong.treatment.distance_mm += by_mm;
      w = outcome(head, plan.treatment.pulse, solve(head, wrong, TapeDistances::left_out).treatment);
      break;
    case Misread::centre_to_edge: {
      // The mark is made too far out; the coil, whose edge is where it is, then follows the mark.
      wrong.coil.centre_to_edge_mm += by_mm;
      check_settings(wrong);
      Placement misled = plan.treatment;
      const auto mark = edge_mark(head, wrong.coil, the_case.treatment.drawn_by, side_of(plan.treatment),
                                  head.skin().closest(plan.treatment.wanted));
      misled.mark = mark ? std::optional(head.skin().position(*mark)) : std::nullopt;
      w = on_edge_mark(head, the_case.coil, misled);
      break;
    }
  }
  return w;
}

WhatIf if_coil_turned(const Head& head, const Case& the_case, const Plan& plan, double by_deg) {
  CoilSetup turned = the_case.coil;
  if (!std::isfinite(by_deg) || std::abs(by_deg) > 90)
    throw GeometryError(
        Message::of("The coil can be turned by at most 90 degrees in this lesson; choose less."));
  turned.angle_deg = wrapped_deg(turned.angle_deg + by_deg);
  return on_edge_mark(head, turned, plan.treatment);
}

WhatIf if_turned_in_place(const Head& head, const Case& the_case, const Plan& plan, double by_deg) {
  if (!std::isfinite(by_deg) || std::abs(by_deg) > 90)
    throw GeometryError(
        Message::of("The coil can be turned by at most 90 degrees in this lesson; choose less."));
  CoilSetup turned = the_case.coil;
  turned.angle_deg = wrapped_deg(plan.treatment.angle_deg + by_deg);
  return outcome(head, plan.treatment.pulse,
                 place_coil(head, turned, side_of(plan.treatment), head.skin().closest(plan.treatment.pulse),
                            TapeDistances::left_out));
}

WhatIf if_standing_off(const Head& head, const Case& the_case, const Plan& plan, double gap_mm,
                       const Tilt& tilt) {
  constexpr double most_gap_mm = 30;
  if (!(gap_mm >= 0 && gap_mm <= most_gap_mm))
    throw GeometryError(Message::of("The gap can be at most %1 cm more in this lesson; choose less.",
                                    number(most_gap_mm / 10)));
  if (!(std::abs(tilt.roll_deg) <= most_tilt_deg && std::abs(tilt.pitch_deg) <= most_tilt_deg))
    throw GeometryError(Message::of("Either tilt must be from -30 to 30 degrees; correct it."));
  const Placement& meant = plan.treatment;
  const TiltedCoil t = tilt_coil(head.skin(), the_case.coil.model, meant.pose().pose, tilt);
  if (!t.meets) throw GeometryError(tilted_past_head());
  Placement really = meant;
  really.pulse = head.skin().position(*t.meets);
  really.normal = t.pose.normal;
  really.front = t.pose.front;
  really.forward = forward_along(head.axes(), t.pose.normal);
  const Vector3d across = really.forward.cross(really.normal);
  really.inward = across.dot(meant.inward) > 0 ? across : Vector3d(-across);
  // What keeps the coil off the skin as meant (cap and hair) keeps it off here.
  const double kept_off_mm =
      meant.lift_mm - clearing_lift(head.skin(), the_case.coil.model, meant.pose().pose);
  const Vector3d centre = t.centre + (std::max(0.0, kept_off_mm) + gap_mm) * meant.normal;
  // Further off, an axis that leans meets the skin elsewhere.
  if (tilt.roll_deg != 0 || tilt.pitch_deg != 0) {
    constexpr double far_mm = 500;
    const auto hit = head.skin().ray_hit(centre, -t.pose.normal, far_mm);
    if (!hit) throw GeometryError(tilted_past_head());
    really.pulse = head.skin().position(hit->point);
  }
  really.lift_mm = (centre - really.pulse).dot(really.normal);
  really.edge = centre + the_case.coil.centre_to_edge_mm * really.front;
  really.edge_mark = {};
  really.mark.reset();
  really.tape_line.clear();
  really.drop_gap_mm.reset();
  really.nearest_gap_mm.reset();
  return outcome(head, meant.pulse, std::move(really));
}

WhatIf if_cap_slipped(const Head& head, const Case& the_case, const Plan& plan, const CapMove& move) {
  const double slid_mm = std::hypot(move.forward_mm, move.right_mm);
  if (!(slid_mm <= most_slide_mm) || !(std::abs(move.turn_right_deg) <= most_cap_turn_deg))
    throw GeometryError(Message::of(
        "The cap can be slid by at most %1 cm and turned by at most %2 degrees in this lesson; choose less.",
        number(most_slide_mm / 10), number(most_cap_turn_deg)));
  const Cap cap = cap_on(head, the_case.cap.brim_over_nasion_mm);
  return outcome(head, plan.treatment.pulse,
                 check_slipped(head, the_case, plan, cap, slip_by(cap, move)).as_laid);
}

WhatIf if_rule_changed(const Head& head, const Case& the_case, const Plan& plan, MarkRule laid_by) {
  CoilSetup other = the_case.coil;
  other.laid_by = laid_by;
  return on_edge_mark(head, other, plan.treatment);
}

WhatIf if_looked_aside(const Head& head, const Case& the_case, const Plan& plan, double front_deg,
                       double right_deg) {
  constexpr double most_deg = 45;
  /// Where a head stands that looks down on a coil.
  constexpr double eye_mm = 180;
  if (!(std::abs(front_deg) <= most_deg && std::abs(right_deg) <= most_deg))
    throw GeometryError(Message::of("The eye can be off the coil's axis by at most %1 degrees; choose less.",
                                    number(most_deg)));
  if (the_case.coil.laid_by != MarkRule::drop)
    throw GeometryError(Message::of(
        "This case lays the coil by the %1 rule, not by looking past its edge; choose drop to see what a look from aside does.",
        in_words(the_case.coil.laid_by)));
  CoilSetup laid = the_case.coil;
  laid.angle_deg = plan.treatment.angle_deg;
  WhatIf w = on_edge_mark(head, laid, plan.treatment, {front_deg, right_deg});
  const Vector3d way = (w.really.edge - *plan.treatment.mark).normalized();
  w.sight = LineOfSight{w.really.edge + eye_mm * way, w.really.edge, *plan.treatment.mark};
  return w;
}

}  // namespace scalpmark::geometry
