#include "geometry/plan/solve.h"

#include <array>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/base/ranges.h"
#include "geometry/base/text.h"
#include "geometry/head/face_region.h"
#include "geometry/head/vertex.h"
#include "geometry/paths/shortest_path.h"
#include "geometry/tapes/forward_tape.h"
#include "geometry/tapes/laid_tape.h"
#include "geometry/tapes/tape.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

constexpr double tape_difference_worth_saying_mm = 5;

void check(double value, const Range& range, const char* name, const Message& unit) {
  if (range.holds(value)) return;
  if (!std::isfinite(value))
    throw GeometryError(Message::of("%1 must be from %2 to %3 %4, but is not a number; correct it.", name,
                                    number(range.low), number(range.high), unit));
  throw GeometryError(Message::of("%1 must be from %2 to %3 %4, but is %5; correct it.", name,
                                  number(range.low), number(range.high), unit, number(value, 3)));
}

/// The side a label stands on: odd numbers left, even right, the midline with the case.
Side side_of(const std::string& label, Side midline) {
  const size_t last = label.find_last_of("0123456789");
  if (last == std::string::npos) return midline;
  return (label[last] - '0') % 2 != 0 ? Side::left : Side::right;
}

const Landmark* find(const std::vector<Landmark>& all, const std::string& name) {
  for (const auto& l : all)
    if (l.name == name) return &l;
  return nullptr;
}

PlanLine line_of(const char* name, const Tape& tape) {
  return {name, tape.line(), tape.length_mm()};
}

/// The marking rule's name for a sentence.
Message name_of(MarkRule rule) {
  return rule == MarkRule::tape   ? Message::of("tape")
         : rule == MarkRule::drop ? Message::of("drop")
                                  : Message::of("nearest");
}

void warn_of_missing_marks(std::vector<Message>& warnings, const Message& where, const Placement& p) {
  for (const MarkRule rule : {MarkRule::tape, MarkRule::drop, MarkRule::nearest})
    if (!p.edge_mark.by(rule))
      warnings.push_back(Message::of(
          "The edge mark of %1 by the %2 rule falls off the head (over the face or past the skin's border), so it is left out.",
          where, name_of(rule)));
}

void warn_of_tapes(std::vector<Message>& warnings, const MeasuredTapes& entered, const TapeMeasures& own) {
  const auto compare = [&](const Message& name, const std::optional<double>& tape, double head) {
    if (tape && std::abs(*tape - head) > tape_difference_worth_saying_mm)
      warnings.push_back(Message::of(
          "The %1 tape was entered as %2 cm, but the head measures %3 cm; check the tape and the four points.",
          name, number(*tape / 10), number(head / 10)));
  };
  compare(Message::of("nasion-inion"), entered.nasion_inion_mm, own.nasion_inion_mm);
  compare(Message::of("tragus-tragus"), entered.tragus_tragus_mm, own.tragus_tragus_mm);
  compare(Message::of("circumference"), entered.circumference_mm, own.circumference_mm);
}

}  // namespace

void check_settings(const Case& entered) {
  const Message mm = Message::of("mm");
  const auto measure = [&mm](const std::optional<double>& tape, const Range& range, const char* name) {
    if (tape) check(*tape, range, name, mm);
  };
  measure(entered.tape_mm.nasion_inion_mm, ranges::nasion_inion_mm, "tape_mm.nasion_inion");
  measure(entered.tape_mm.tragus_tragus_mm, ranges::tragus_tragus_mm, "tape_mm.tragus_tragus");
  measure(entered.tape_mm.circumference_mm, ranges::circumference_mm, "tape_mm.circumference");
  check(entered.search.lateral_mm, ranges::lateral_mm, "search.lateral_mm", mm);
  check(entered.search.anterior_mm, ranges::anterior_mm, "search.anterior_mm", mm);
  check(entered.search.pitch_mm, ranges::pitch_mm, "search.pitch_mm", mm);
  check(entered.coil.angle_deg, ranges::angle_deg, "coil.angle_deg", Message::of("degrees"));
  check(entered.coil.centre_to_edge_mm, ranges::centre_to_edge_mm, "coil.centre_to_edge_mm", mm);
  check(entered.coil.lift_mm, ranges::lift_mm, "coil.lift_mm", mm);
  check(entered.hotspot.row, ranges::node, "hotspot.row", Message::of("(grid rows from the start)"));
  check(entered.hotspot.column, ranges::node, "hotspot.column", Message::of("(grid columns from the start)"));
  if (entered.treatment.rule == TreatmentRule::forward)
    check(entered.treatment.distance_mm, ranges::distance_mm, "treatment.distance_mm", mm);
  else if (!canonical_label(entered.treatment.label))
    throw GeometryError(Message::of(
        "treatment.label is \"%1\", which is not a position of the 10-20, 10-10 or 10-5 system; write one such as F3.",
        entered.treatment.label));
}

Plan solve(const Head& head, const Case& entered, TapeDistances tapes_wanted) {
  // Paths are measured in one go at the end.
  const TapeDistances wanted =
      tapes_wanted == TapeDistances::worked_out ? TapeDistances::worked_out : TapeDistances::left_out;
  check_settings(entered);
  const Surface& skin = head.skin();
  const VertexTapes& tapes = head.vertex_tapes();
  Plan plan;
  plan.tapes = head.tapes();
  plan.fiducials = head.fiducials().at;
  plan.axes = head.axes();
  plan.landmarks = landmarks(head, LandmarkSystem::ten_ten);
  warn_of_tapes(plan.warnings, entered.tape_mm, plan.tapes);

  // Search start: along the coronal tape from the vertex toward the chosen side, then forward.
  const double half_mm = 0.5 * tapes.coronal.length_mm();
  const double way = entered.side == Side::left ? -1 : 1;
  const SectionPoint lateral = tapes.coronal.at_mm(half_mm + way * entered.search.lateral_mm);
  const Tape anterior = forward_tape(head, lateral.on_skin, entered.search.anterior_mm);
  const SectionPoint start_point = anterior.at(1);
  if (on_face(head, start_point.at))
    throw GeometryError(
        Message::of("The search start falls on the face; shorten search.lateral_mm or search.anterior_mm."));
  LaidCoil start = lay_coil(head, entered, entered.side, start_point.on_skin, wanted);
  warn_of_missing_marks(plan.warnings, Message::of("the start"), start.placement);

  // The grid, as drawn with a pencil on edge marks, or laid out on pulse points.
  const bool on_marks = entered.search.grid_on == GridOn::edge_marks;
  if (on_marks && !start.mark)
    throw GeometryError(Message::of(
        "The start's edge mark by the %1 rule falls off the head, so no grid can be drawn around it; choose another rule, angle or start.",
        name_of(entered.coil.mark_rule)));
  const SurfacePoint& middle = on_marks ? *start.mark : start.pulse;
  const auto grid_point = [&](int row, int column) {
    SurfacePoint at = middle;
    const double pitch = entered.search.pitch_mm;
    if (column != 0) {
      const Directions d = directions_at(head, entered.side, at);
      const auto tape = lay_tape(skin, at, column * d.outward, pitch);
      if (!tape)
        throw GeometryError(Message::of("The search grid reaches past the skin's border; move the start."));
      at = tape->end;
    }
    return row == 0 ? at : forward_tape(head, at, row * pitch).at(1).on_skin;
  };
  std::vector<LaidCoil> nodes;
  SurfacePoint hotspot = start.pulse;
  for (int row = -1; row <= 1; ++row)
    for (int column = -1; column <= 1; ++column) {
      LaidCoil node = start;
      if (row != 0 || column != 0) {
        const SurfacePoint at = grid_point(row, column);
        node =
            lay_coil(head, entered, entered.side,
                     on_marks ? pulse_for_mark(head, entered, entered.side, at, &start.pulse) : at, wanted);
      }
      if (row == entered.hotspot.row && column == entered.hotspot.column) hotspot = node.pulse;
      plan.grid.push_back({row, column, {}});
      nodes.push_back(std::move(node));
    }

  // The treatment site and what else it might have been.
  std::optional<Landmark> label;
  if (entered.treatment.rule == TreatmentRule::landmark) label = landmark(head, entered.treatment.label);
  const Side treated = label ? side_of(label->name, entered.side) : entered.side;
  const auto forward_site = [&](double mm) { return forward_tape(head, hotspot, mm); };
  SurfacePoint site;
  if (label) {
    site = label->on_skin;
  } else {
    const Tape step = forward_site(entered.treatment.distance_mm);
    site = step.at(1).on_skin;
    plan.lines.push_back(line_of("treatment", step));
  }
  if (on_face(head, skin.position(site)))
    throw GeometryError(
        label
            ? Message::of("The position %1 lies on the face of this head; choose another.", label->name)
            : Message::of(
                  "The treatment site, %1 cm forward of the hotspot, falls on the face; shorten treatment.distance_mm.",
                  number(entered.treatment.distance_mm / 10)));
  LaidCoil treatment = lay_coil(head, entered, treated, site, wanted);
  warn_of_missing_marks(plan.warnings, Message::of("the treatment site"), treatment.placement);

  if (tapes_wanted == TapeDistances::treatment_alone) measure_tapes(head, {&treatment});
  if (tapes_wanted == TapeDistances::each_path) {
    std::vector<LaidCoil*> coils{&start, &treatment};
    for (LaidCoil& node : nodes) coils.push_back(&node);
    measure_tapes(head, coils);
  }
  plan.start = std::move(start.placement);
  plan.treatment = std::move(treatment.placement);
  for (size_t i = 0; i < nodes.size(); ++i) {
    GridNode& node = plan.grid[i];
    node.placement = std::move(nodes[i].placement);
    if (node.row == entered.hotspot.row && node.column == entered.hotspot.column)
      plan.hotspot = node.placement;
  }

  std::vector<SurfacePoint> others;
  const auto alternative = [&](TreatmentAlternative a, const SurfacePoint& at) {
    a.pulse = skin.position(at);
    if (on_face(head, a.pulse)) return;
    plan.treatment_alternatives.push_back(std::move(a));
    others.push_back(at);
  };
  for (const double mm : {50.0, 55.0, 60.0})
    alternative({TreatmentRule::forward, mm, "", {}, 0}, forward_site(mm).at(1).on_skin);
  const bool left = treated == Side::left;
  const Landmark* f = find(plan.landmarks, left ? "F3" : "F4");
  const Landmark* af = find(plan.landmarks, left ? "AF3" : "AF4");
  alternative({TreatmentRule::landmark, 0, f->name, {}, 0}, f->on_skin);
  alternative({TreatmentRule::landmark, 0, f->name + "-" + af->name, {}, 0},
              skin.closest(0.5 * (f->at + af->at)));
  const std::vector<double> distances = shortest_distances(skin, site, others);
  for (size_t i = 0; i < distances.size(); ++i)
    plan.treatment_alternatives[i].tape_from_treatment_mm = distances[i];

  plan.lines.push_back(line_of("midline", tapes.midline));
  plan.lines.push_back(line_of("coronal", tapes.coronal));
  plan.lines.push_back(line_of("circumference", side_tape(skin, tapes, true)));
  plan.lines.push_back(line_of("circumference", side_tape(skin, tapes, false)));
  plan.lines.push_back({"lateral",
                        tapes.coronal.line_between(half_mm, half_mm + way * entered.search.lateral_mm),
                        entered.search.lateral_mm});
  plan.lines.push_back(line_of("anterior", anterior));
  return plan;
}

}  // namespace scalpmark::geometry
