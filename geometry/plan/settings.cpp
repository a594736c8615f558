#include "geometry/plan/settings.h"

#include <cmath>
#include <string>
#include <string_view>

#include "geometry/base/error.h"
#include "geometry/head/landmarks.h"

namespace scalpmark::geometry {

namespace {

using Place = std::variant<double*, std::optional<double>*, int*>;

constexpr Setting all[] = {
    {"tape_mm", "nasion_inion", ranges::nasion_inion_mm, Unit::mm,
     [](Case& c) -> Place { return &c.tape_mm.nasion_inion_mm; }},
    {"tape_mm", "tragus_tragus", ranges::tragus_tragus_mm, Unit::mm,
     [](Case& c) -> Place { return &c.tape_mm.tragus_tragus_mm; }},
    {"tape_mm", "circumference", ranges::circumference_mm, Unit::mm,
     [](Case& c) -> Place { return &c.tape_mm.circumference_mm; }},
    {"search", "lateral_mm", ranges::lateral_mm, Unit::mm,
     [](Case& c) -> Place { return &c.search.lateral_mm; }},
    {"search", "anterior_mm", ranges::anterior_mm, Unit::mm,
     [](Case& c) -> Place { return &c.search.anterior_mm; }},
    {"search", "pitch_mm", ranges::pitch_mm, Unit::mm, [](Case& c) -> Place { return &c.search.pitch_mm; }},
    {"coil", "angle_deg", ranges::angle_deg, Unit::degrees,
     [](Case& c) -> Place { return &c.coil.angle_deg; }},
    {"coil", "centre_to_edge_mm", ranges::centre_to_edge_mm, Unit::mm,
     [](Case& c) -> Place { return &c.coil.centre_to_edge_mm; }},
    {"coil", "lift_mm", ranges::lift_mm, Unit::mm, [](Case& c) -> Place { return &c.coil.lift_mm; }},
    {"hotspot", "row", ranges::spot, Unit::grid_rows, [](Case& c) -> Place { return &c.hotspot.row; }},
    {"hotspot", "column", ranges::spot, Unit::grid_columns,
     [](Case& c) -> Place { return &c.hotspot.column; }},
    {"hotspot", "forward_mm", ranges::hotspot_off_mm, Unit::mm,
     [](Case& c) -> Place { return &c.hotspot_off_grid.forward_mm; }},
    {"hotspot", "outward_mm", ranges::hotspot_off_mm, Unit::mm,
     [](Case& c) -> Place { return &c.hotspot_off_grid.outward_mm; }},
    {"treatment", "distance_mm", ranges::distance_mm, Unit::mm,
     [](Case& c) -> Place { return &c.treatment.distance_mm; }},
    {"cap", "brim_over_nasion_mm", ranges::brim_over_nasion_mm, Unit::mm,
     [](Case& c) -> Place { return &c.cap.brim_over_nasion_mm; }},
    {"answers", "step_percent", ranges::output_step_percent, Unit::percent,
     [](Case& c) -> Place { return &c.answers.step_percent; }},
    {"answers", "fine_percent", ranges::output_step_percent, Unit::percent,
     [](Case& c) -> Place { return &c.answers.fine_percent; }},
    {"errors", "fiducial_mm", ranges::error_mm, Unit::mm,
     [](Case& c) -> Place { return &c.errors.fiducial_mm; }},
    {"errors", "tape_mm", ranges::error_mm, Unit::mm, [](Case& c) -> Place { return &c.errors.tape_mm; }},
    {"errors", "mark_mm", ranges::error_mm, Unit::mm, [](Case& c) -> Place { return &c.errors.mark_mm; }},
    {"errors", "angle_deg", ranges::error_deg, Unit::degrees,
     [](Case& c) -> Place { return &c.errors.angle_deg; }},
    {"errors", "tilt_deg", ranges::error_deg, Unit::degrees,
     [](Case& c) -> Place { return &c.errors.tilt_deg; }},
    {"errors", "cap_forward_mm", ranges::error_mm, Unit::mm,
     [](Case& c) -> Place { return &c.errors.cap_forward_mm; }},
    {"errors", "cap_side_mm", ranges::error_mm, Unit::mm,
     [](Case& c) -> Place { return &c.errors.cap_side_mm; }},
    {"errors", "cap_turn_deg", ranges::error_deg, Unit::degrees,
     [](Case& c) -> Place { return &c.errors.cap_turn_deg; }},
    {"errors", "other_rule_percent", ranges::percent, Unit::percent,
     [](Case& c) -> Place { return &c.errors.other_rule_percent; }},
    {"errors", "sight_deg", ranges::error_deg, Unit::degrees,
     [](Case& c) -> Place { return &c.errors.sight_deg; }},
};

std::optional<double> value_at(const Place& place) {
  if (const auto* number = std::get_if<double*>(&place)) return **number;
  if (const auto* maybe = std::get_if<std::optional<double>*>(&place)) return **maybe;
  return **std::get_if<int*>(&place);
}

}  // namespace

Message unit_of(const Setting& setting) {
  switch (setting.unit) {
    case Unit::mm:
      return Message::of("mm");
    case Unit::degrees:
      return Message::of("degrees");
    case Unit::percent:
      return Message::of("percent");
    case Unit::grid_rows:
      return Message::of("(grid rows from the start)");
    case Unit::grid_columns:
      return Message::of("(grid columns from the start)");
  }
  return {};
}

std::span<const Setting> settings() {
  return all;
}

void check_settings(const Case& the_case) {
  Case own = the_case;
  const bool forward = the_case.treatment.rule == TreatmentRule::forward;
  for (const Setting& s : all) {
    const std::string_view group = s.group;
    if (group == "errors" || (group == "treatment" && !forward)) continue;
    const std::optional<double> value = value_at(s.in(own));
    if (!value || s.range.holds(*value)) continue;
    const std::string name = std::string(s.group) + "." + s.key;
    if (!std::isfinite(*value))
      throw GeometryError(Message::of("%1 must be from %2 to %3 %4, but is not a number; correct it.", name,
                                      number(s.range.low), number(s.range.high), unit_of(s)));
    throw GeometryError(Message::of("%1 must be from %2 to %3 %4, but is %5; correct it.", name,
                                    number(s.range.low), number(s.range.high), unit_of(s),
                                    number(*value, 3)));
  }
  if (the_case.answers.fine_percent > the_case.answers.step_percent)
    throw GeometryError(
        Message::of("The fine step (%1 %) is larger than the step (%2 %); make answers.fine_percent smaller.",
                    the_case.answers.fine_percent, the_case.answers.step_percent));
  if (!forward && !canonical_label(the_case.treatment.label))
    throw GeometryError(Message::of(
        "treatment.label is \"%1\", which is not a position of the 10-20, 10-10 or 10-5 system; write one such as F3.",
        the_case.treatment.label));
}

}  // namespace scalpmark::geometry
