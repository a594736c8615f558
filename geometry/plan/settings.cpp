#include "geometry/plan/settings.h"

#include <cmath>
#include <string>
#include <string_view>

#include "geometry/base/error.h"
#include "geometry/base/text.h"
#include "geometry/head/landmarks.h"

namespace scalpmark::geometry {

namespace {

using Place = std::variant<double*, std::optional<double>*, int*>;

constexpr Setting all[] = {
    {"tape_mm", "nasion_inion", ranges::nasion_inion_mm, "mm",
     [](Case& c) -> Place { return &c.tape_mm.nasion_inion_mm; }},
    {"tape_mm", "tragus_tragus", ranges::tragus_tragus_mm, "mm",
     [](Case& c) -> Place { return &c.tape_mm.tragus_tragus_mm; }},
    {"tape_mm", "circumference", ranges::circumference_mm, "mm",
     [](Case& c) -> Place { return &c.tape_mm.circumference_mm; }},
    {"search", "lateral_mm", ranges::lateral_mm, "mm", [](Case& c) -> Place { return &c.search.lateral_mm; }},
    {"search", "anterior_mm", ranges::anterior_mm, "mm",
     [](Case& c) -> Place { return &c.search.anterior_mm; }},
    {"search", "pitch_mm", ranges::pitch_mm, "mm", [](Case& c) -> Place { return &c.search.pitch_mm; }},
    {"coil", "angle_deg", ranges::angle_deg, "degrees", [](Case& c) -> Place { return &c.coil.angle_deg; }},
    {"coil", "centre_to_edge_mm", ranges::centre_to_edge_mm, "mm",
     [](Case& c) -> Place { return &c.coil.centre_to_edge_mm; }},
    {"coil", "lift_mm", ranges::lift_mm, "mm", [](Case& c) -> Place { return &c.coil.lift_mm; }},
    {"hotspot", "row", ranges::node, "(grid rows from the start)",
     [](Case& c) -> Place { return &c.hotspot.row; }},
    {"hotspot", "column", ranges::node, "(grid columns from the start)",
     [](Case& c) -> Place { return &c.hotspot.column; }},
    {"treatment", "distance_mm", ranges::distance_mm, "mm",
     [](Case& c) -> Place { return &c.treatment.distance_mm; }},
    {"errors", "fiducial_mm", ranges::error_mm, "mm", [](Case& c) -> Place { return &c.errors.fiducial_mm; }},
    {"errors", "tape_mm", ranges::error_mm, "mm", [](Case& c) -> Place { return &c.errors.tape_mm; }},
    {"errors", "mark_mm", ranges::error_mm, "mm", [](Case& c) -> Place { return &c.errors.mark_mm; }},
    {"errors", "angle_deg", ranges::error_deg, "degrees",
     [](Case& c) -> Place { return &c.errors.angle_deg; }},
    {"errors", "tilt_deg", ranges::error_deg, "degrees", [](Case& c) -> Place { return &c.errors.tilt_deg; }},
    {"errors", "cap_shift_mm", ranges::error_mm, "mm",
     [](Case& c) -> Place { return &c.errors.cap_shift_mm; }},
    {"errors", "other_rule_percent", ranges::percent, "percent",
     [](Case& c) -> Place { return &c.errors.other_rule_percent; }},
};

std::optional<double> value_at(const Place& place) {
  if (const auto* number = std::get_if<double*>(&place)) return **number;
  if (const auto* maybe = std::get_if<std::optional<double>*>(&place)) return **maybe;
  return **std::get_if<int*>(&place);
}

}  // namespace

std::span<const Setting> settings() {
  return all;
}

void check_settings(const Case& entered) {
  Case own = entered;
  const bool forward = entered.treatment.rule == TreatmentRule::forward;
  for (const Setting& s : all) {
    const std::string_view group = s.group;
    if (group == "errors" || (group == "treatment" && !forward)) continue;
    const std::optional<double> value = value_at(s.in(own));
    if (!value || s.range.holds(*value)) continue;
    throw GeometryError(std::string(s.group) + "." + s.key + " must be from " + to_text(s.range.low) +
                        " to " + to_text(s.range.high) + " " + s.unit +
                        (std::isfinite(*value) ? ", but is " + to_text(*value, 3) : ", but is not a number") +
                        "; correct it.");
  }
  if (!forward && !canonical_label(entered.treatment.label))
    throw GeometryError(
        "treatment.label is \"" + entered.treatment.label +
        "\", which is not a position of the 10-20, 10-10 or 10-5 system; write one such as F3.");
}

}  // namespace scalpmark::geometry
