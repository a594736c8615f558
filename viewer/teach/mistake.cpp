#include "viewer/teach/mistake.h"

#include <algorithm>

#include "geometry/base/error.h"
#include "geometry/field/moved_coil.h"
#include "geometry/paths/shortest_path.h"
#include "viewer/stage/scene/field_shown.h"

namespace scalpmark::viewer {

namespace {

/// Closer than a pencil line is wide, two marks are one.
constexpr double same_mark_mm = 0.5;

std::optional<double> field_left_of(const geometry::Head& head, const geometry::Coil& coil,
                                    const geometry::Placement& meant, const geometry::Placement& really) {
  const auto field = field_under(head, nullptr, coil, meant);
  if (!field) return {};
  try {
    return geometry::field_left(
        *field, {field->round.centre,
                 geometry::turns_of(coil, geometry::frame_of(really.pose().pose, really.lift_mm))});
  } catch (const geometry::GeometryError&) {
    return {};
  }
}

geometry::ShortestPath on_skin(const geometry::Surface& skin, const Eigen::Vector3d& a,
                               const Eigen::Vector3d& b) {
  if ((b - a).norm() < same_mark_mm) return {};
  return geometry::shortest_path(skin, skin.closest(a), skin.closest(b));
}

MistakeAlone alone(const geometry::Head& head, const geometry::Case& the_case, const geometry::Plan& plan,
                   const Mistake& mistake, bool at_start) {
  const geometry::WhatIf w = at_start ? geometry::if_made(head, the_case, plan, mistake)
                                      : geometry::if_made_at_site(head, the_case, plan, {mistake});
  return {w.really, w.off_mm, on_skin(head.skin(), w.meant, w.really.pulse).line};
}

std::shared_ptr<const geometry::CapVeil> cap_as_it_sits(const geometry::Head& head,
                                                        const geometry::Case& the_case,
                                                        const std::vector<Mistake>& mistakes) {
  geometry::CapMove all;
  for (const Mistake& mistake : mistakes)
    if (const auto* slipped = std::get_if<CapSlipped>(&mistake)) {
      all.forward_mm += slipped->move.forward_mm;
      all.right_mm += slipped->move.right_mm;
      all.turn_right_deg += slipped->move.turn_right_deg;
    }
  const geometry::Cap cap = geometry::cap_on(head, the_case.cap.brim_over_nasion_mm);
  return std::make_shared<const geometry::CapVeil>(
      geometry::cap_veil(head, cap, geometry::slip_by(cap, all)));
}

}  // namespace

MistakeOutcome outcome_of(const geometry::Head& head, const geometry::Case& the_case,
                          const geometry::Plan& plan, const std::vector<Mistake>& mistakes) {
  MistakeOutcome s;
  s.mistakes = mistakes;
  const bool at_start = std::all_of(mistakes.begin(), mistakes.end(), geometry::is_before_search);
  s.meant_on = at_start ? CoilOn::start : CoilOn::treatment;
  s.meant = at_start ? plan.start : plan.treatment;
  s.result = geometry::if_made(head, the_case, plan, mistakes);
  if (mistakes.size() > 1)
    for (const Mistake& mistake : mistakes) s.alone.push_back(alone(head, the_case, plan, mistake, at_start));
  s.field = field_under(head, nullptr, the_case.coil.model, s.result.really);
  s.field_left = field_left_of(head, the_case.coil.model, s.meant, s.result.really);
  if (at_start && the_case.treatment.rule == geometry::TreatmentRule::forward) try {
      s.after_search = geometry::site_after_search(head, the_case, plan, s.result.really);
    } catch (const geometry::GeometryError&) {
      // a site that falls off the head: the start is told all the same
    }
  if (s.made<CapSlipped>()) s.cap = cap_as_it_sits(head, the_case, mistakes);
  s.pulse_line = on_skin(head.skin(), s.result.meant, s.result.really.pulse).line;
  const auto& meant_mark = s.meant.edge_mark.by(the_case.coil.laid_by);
  const auto& real_mark = s.result.really.edge_mark.by(the_case.coil.laid_by);
  if (meant_mark && real_mark) {
    const geometry::ShortestPath path = on_skin(head.skin(), *meant_mark, *real_mark);
    s.edge_mark_off_mm = path.length_mm;
    s.edge_line = path.line;
  }
  return s;
}

}  // namespace scalpmark::viewer
