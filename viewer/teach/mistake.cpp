#include "viewer/teach/mistake.h"

#include "geometry/base/error.h"
#include "geometry/field/moved_coil.h"
#include "geometry/paths/shortest_path.h"
#include "viewer/stage/scene/field_shown.h"

namespace scalpmark::viewer {

using geometry::Misread;

namespace {

/// Closer than a pencil line is wide, two marks are one.
constexpr double same_mark_mm = 0.5;

template <class... Each>
struct Overloaded : Each... {
  using Each::operator()...;
};
template <class... Each>
Overloaded(Each...) -> Overloaded<Each...>;

CoilOn missed_by(const Mistake& mistake) {
  if (std::holds_alternative<VertexOff>(mistake)) return CoilOn::start;
  if (const auto* tape = std::get_if<TapeMisread>(&mistake))
    if (tape->which == Misread::lateral || tape->which == Misread::anterior) return CoilOn::start;
  return CoilOn::treatment;
}

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

}  // namespace

MistakeOutcome outcome_of(const geometry::Head& head, const geometry::Case& the_case,
                          const geometry::Plan& plan, const Mistake& mistake) {
  MistakeOutcome s;
  s.mistake = mistake;
  s.meant_on = missed_by(mistake);
  s.meant = s.meant_on == CoilOn::start ? plan.start : plan.treatment;
  s.result = std::visit(
      Overloaded{
          [&](const VertexOff& m) {
            return geometry::if_vertex_off(head, the_case, plan, m.forward_mm, m.right_mm);
          },
          [&](const TapeMisread& m) { return geometry::if_misread(head, the_case, plan, m.which, m.by_mm); },
          [&](const CoilTurned& m) {
            return m.about_centre ? geometry::if_turned_in_place(head, the_case, plan, m.by_deg)
                                  : geometry::if_coil_turned(head, the_case, plan, m.by_deg);
          },
          [&](const OtherRule& m) { return geometry::if_rule_changed(head, the_case, plan, m.laid_by); },
          [&](const CapSlipped& m) { return geometry::if_cap_slipped(head, the_case, plan, m.move); },
          [&](const LookedAside& m) {
            return geometry::if_looked_aside(head, the_case, plan, m.front_deg, m.right_deg);
          },
          [&](const StandsOff& m) {
            return geometry::if_standing_off(head, the_case, plan, m.gap_mm, m.tilt);
          }},
      mistake);
  s.field = field_under(head, nullptr, the_case.coil.model, s.result.really);
  s.field_left = field_left_of(head, the_case.coil.model, s.meant, s.result.really);
  if (s.meant_on == CoilOn::start && the_case.treatment.rule == geometry::TreatmentRule::forward)
    s.left_by_search = geometry::after_search(plan, s.result.really);
  if (const auto* slipped = std::get_if<CapSlipped>(&mistake)) {
    const geometry::Cap cap = geometry::cap_on(head, the_case.cap.brim_over_nasion_mm);
    s.cap = std::make_shared<const geometry::CapVeil>(
        geometry::cap_veil(head, cap, geometry::slip_by(cap, slipped->move)));
  }
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
