#include "geometry/plan/solve.h"

#include <cmath>

#include "geometry/base/message.h"
#include "geometry/base/text.h"
#include "geometry/head/vertex.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/pulse_shift.h"
#include "geometry/plan/search.h"
#include "geometry/plan/settings.h"
#include "geometry/plan/treatment.h"

namespace scalpmark::geometry {

namespace {

constexpr double tape_difference_worth_saying_mm = 5;

PlanLine line_of(const char* name, const Tape& tape) {
  return {name, tape.line(), tape.length_mm()};
}

void warn_of_missing_marks(std::vector<Message>& warnings, const Message& where, const Placement& p) {
  for (const MarkRule rule : all_mark_rules)
    if (!p.edge_mark.by(rule))
      warnings.push_back(Message::of(
          "The edge mark of %1 by the %2 rule falls off the head (over the face or past the skin's border), so it is left out.",
          where, in_words(rule)));
}

void warn_of_far_pulse(std::vector<Message>& warnings, const Message& where, const Placement& p,
                       MarkRule drawn_by, MarkRule laid_by) {
  if (p.wanted_to_pulse_mm > far_shift_mm)
    warnings.push_back(Message::of(
        "With edge marks drawn by the %1 rule and the coil laid over them by the %2 rule, the pulse at %3 lands %4 cm from the point that was wanted; draw and lay by one rule.",
        in_words(drawn_by), in_words(laid_by), where, Number{p.wanted_to_pulse_mm / 10, 1, true}));
}

void warn_of_tapes(std::vector<Message>& warnings, const MeasuredTapes& given, const TapeMeasures& own) {
  const auto compare = [&](const Message& name, const std::optional<double>& tape, double head) {
    if (tape && std::abs(*tape - head) > tape_difference_worth_saying_mm)
      warnings.push_back(Message::of(
          "The %1 tape was entered as %2 cm, but the head measures %3 cm; check the tape and the four points.",
          name, number(*tape / 10), number(head / 10)));
  };
  compare(Message::of("nasion-inion"), given.nasion_inion_mm, own.nasion_inion_mm);
  compare(Message::of("tragus-tragus"), given.tragus_tragus_mm, own.tragus_tragus_mm);
  compare(Message::of("circumference"), given.circumference_mm, own.circumference_mm);
}

Message other_side(Side searched, const std::string& label) {
  return searched == Side::left
             ? Message::of(
                   "The search is on the patient's left side, but %1 lies on the right: the coil is laid on the right.",
                   label)
             : Message::of(
                   "The search is on the patient's right side, but %1 lies on the left: the coil is laid on the left.",
                   label);
}

/// Those that were asked for, in one go.
void measure_wanted(const Head& head, TapeDistances wanted, LaidSearch& search, LaidTreatment& treatment) {
  if (wanted == TapeDistances::treatment_alone) measure_tapes(head, {&treatment.coil});
  if (wanted != TapeDistances::each_path) return;
  std::vector<LaidCoil*> coils{&search.start, &treatment.coil};
  for (LaidCoil& coil : search.coils) coils.push_back(&coil);
  if (search.off_grid) coils.push_back(&*search.off_grid);
  measure_tapes(head, coils);
}

void add_lines(Plan& plan, const Head& head, const Case& the_case, const StartTapes& start,
               const std::optional<Tape>& step) {
  const VertexTapes& tapes = head.vertex_tapes();
  if (step) plan.lines.push_back(line_of("treatment", *step));
  plan.lines.push_back(line_of("midline", tapes.midline));
  plan.lines.push_back(line_of("coronal", tapes.coronal));
  plan.lines.push_back(line_of("circumference", side_tape(head.skin(), tapes, true)));
  plan.lines.push_back(line_of("circumference", side_tape(head.skin(), tapes, false)));
  plan.lines.push_back({"lateral", start.lateral, the_case.search.lateral_mm});
  plan.lines.push_back(line_of("anterior", start.anterior));
}

}  // namespace

Plan solve(const Head& head, const Case& the_case, TapeDistances tapes_wanted) {
  // Paths are measured in one go at the end.
  const TapeDistances looked_up =
      tapes_wanted == TapeDistances::worked_out ? TapeDistances::worked_out : TapeDistances::left_out;
  check_settings(the_case);
  Plan plan;
  plan.tapes = head.tapes();
  plan.fiducials = head.fiducials().at;
  plan.axes = head.axes();
  plan.landmarks = landmarks(head, LandmarkSystem::ten_ten);
  warn_of_tapes(plan.warnings, the_case.tape_mm, plan.tapes);
  plan.size_caution = size_caution(head, the_case.tape_mm);
  if (plan.size_caution) plan.warnings.push_back(plan.size_caution->sentence);

  LaidSearch search = lay_search(head, the_case, looked_up);
  warn_of_missing_marks(plan.warnings, Message::of("the start"), search.start.placement);
  warn_of_far_pulse(plan.warnings, Message::of("the start"), search.start.placement, the_case.search.drawn_by,
                    the_case.coil.laid_by);
  const SurfacePoint hotspot = search.on_hotspot().pulse;
  LaidTreatment treatment = lay_treatment(head, the_case, hotspot, looked_up);
  warn_of_missing_marks(plan.warnings, Message::of("the treatment site"), treatment.coil.placement);
  warn_of_far_pulse(plan.warnings, Message::of("the treatment site"), treatment.coil.placement,
                    the_case.treatment.drawn_by, the_case.coil.laid_by);
  if (site_is_open(the_case))
    plan.warnings.push_back(Message::of(
        "No spot of the grid has answered yet: the treatment site and its marks hold only if the middle spot answers."));
  if (treatment.side != the_case.side)
    plan.warnings.push_back(other_side(
        the_case.side, canonical_label(the_case.treatment.label).value_or(the_case.treatment.label)));
  measure_wanted(head, tapes_wanted, search, treatment);
  plan.treatment_alternatives = treatment_alternatives(head, the_case, plan.landmarks, hotspot, treatment);
  add_lines(plan, head, the_case, search.tapes, treatment.step);

  plan.start = std::move(search.start.placement);
  plan.treatment = std::move(treatment.coil.placement);
  plan.grid = std::move(search.spots);
  for (size_t i = 0; i < plan.grid.size(); ++i) plan.grid[i].placement = std::move(search.coils[i].placement);
  plan.hotspot =
      search.off_grid ? std::move(search.off_grid->placement) : plan.grid[search.hotspot].placement;
  return plan;
}

}  // namespace scalpmark::geometry
