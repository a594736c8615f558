#include "models/cases/settings_json.h"

#include "geometry/head/landmarks.h"
#include "models/coils/coil_library.h"
#include "models/files/error.h"

namespace scalpmark::models {

namespace g = geometry;

namespace {

constexpr std::array<Choice<g::Side>, 2> sides{{{"left", g::Side::left}, {"right", g::Side::right}}};
constexpr std::array<Choice<g::GridOn>, 2> grids{
    {{"edge_marks", g::GridOn::edge_marks}, {"pulse_points", g::GridOn::pulse_points}}};
constexpr std::array<Choice<g::MarkRule>, 3> mark_rules{
    {{"tape", g::MarkRule::tape}, {"drop", g::MarkRule::drop}, {"nearest", g::MarkRule::nearest}}};
constexpr std::array<Choice<g::TreatmentRule>, 2> treatment_rules{
    {{"forward", g::TreatmentRule::forward}, {"landmark", g::TreatmentRule::landmark}}};

template <class Value, std::size_t count>
std::string_view name_of(Value value, const std::array<Choice<Value>, count>& choices) {
  for (const auto& choice : choices)
    if (choice.value == value) return choice.name;
  throw ModelError(Message::of("A setting to be written is none of its choices; set it again."));
}

void read_coil(const JsonGroup& top, g::Case& entered) {
  const JsonGroup group =
      top.group("coil", {"model", "angle_deg", "centre_to_edge_mm", "lift_mm", "mark_rule"});
  if (group.has("model")) {
    std::string model;
    group.text("model", model);
    try {
      entered.coil_model = coil(model);
    } catch (const ModelError&) {
      std::string known;
      for (const auto& shipped : coils()) known += (known.empty() ? "" : ", ") + shipped.model;
      group.refuse("model",
                   Message::of("must be a coil that ships (%1), but is %2", known, group.shown("model")));
    }
  }
  group.number("angle_deg", g::ranges::angle_deg, Message::of("degrees"), entered.coil.angle_deg);
  group.number("centre_to_edge_mm", g::ranges::centre_to_edge_mm, Message::of("mm"),
               entered.coil.centre_to_edge_mm);
  group.number("lift_mm", g::ranges::lift_mm, Message::of("mm"), entered.coil.lift_mm);
  group.choice("mark_rule", mark_rules, entered.coil.mark_rule);
}

void read_treatment(const JsonGroup& top, g::Case& entered) {
  const JsonGroup group = top.group("treatment", {"rule", "distance_mm", "label"});
  g::TreatmentSettings& treatment = entered.treatment;
  group.choice("rule", treatment_rules, treatment.rule);
  if (treatment.rule == g::TreatmentRule::forward) {
    if (group.has("label"))
      group.refuse("label", Message::of("belongs to the rule landmark, but the rule is forward"));
    group.number("distance_mm", g::ranges::distance_mm, Message::of("mm"), treatment.distance_mm);
    return;
  }
  if (group.has("distance_mm"))
    group.refuse("distance_mm", Message::of("belongs to the rule forward, but the rule is landmark"));
  group.require({"label"});
  group.text("label", treatment.label);
  const auto label = g::canonical_label(treatment.label);
  if (!label)
    group.refuse("label",
                 Message::of("must be a position of the 10-20, 10-10 or 10-5 system such as F3, but is %1",
                             group.shown("label")));
  treatment.label = *label;
}

void read_errors(const JsonGroup& top, g::HandErrors& errors) {
  const JsonGroup group = top.group("errors", {"fiducial_mm", "tape_mm", "mark_mm", "angle_deg", "tilt_deg",
                                               "cap_shift_mm", "other_rule_percent"});
  group.number("fiducial_mm", g::ranges::error_mm, Message::of("mm"), errors.fiducial_mm);
  group.number("tape_mm", g::ranges::error_mm, Message::of("mm"), errors.tape_mm);
  group.number("mark_mm", g::ranges::error_mm, Message::of("mm"), errors.mark_mm);
  group.number("angle_deg", g::ranges::error_deg, Message::of("degrees"), errors.angle_deg);
  group.number("tilt_deg", g::ranges::error_deg, Message::of("degrees"), errors.tilt_deg);
  group.number("cap_shift_mm", g::ranges::error_mm, Message::of("mm"), errors.cap_shift_mm);
  group.number("other_rule_percent", g::ranges::percent, Message::of("percent"), errors.other_rule_percent);
}

}  // namespace

nlohmann::ordered_json errors_json(const g::HandErrors& errors) {
  return {{"fiducial_mm", errors.fiducial_mm},
          {"tape_mm", errors.tape_mm},
          {"mark_mm", errors.mark_mm},
          {"angle_deg", errors.angle_deg},
          {"tilt_deg", errors.tilt_deg},
          {"cap_shift_mm", errors.cap_shift_mm},
          {"other_rule_percent", errors.other_rule_percent}};
}

void read_settings(const JsonGroup& top, g::Case& entered) {
  top.choice("side", sides, entered.side);
  if (top.has("search")) {
    const JsonGroup group = top.group("search", {"lateral_mm", "anterior_mm", "pitch_mm", "grid_on"});
    group.number("lateral_mm", g::ranges::lateral_mm, Message::of("mm"), entered.search.lateral_mm);
    group.number("anterior_mm", g::ranges::anterior_mm, Message::of("mm"), entered.search.anterior_mm);
    group.number("pitch_mm", g::ranges::pitch_mm, Message::of("mm"), entered.search.pitch_mm);
    group.choice("grid_on", grids, entered.search.grid_on);
  }
  if (top.has("coil")) read_coil(top, entered);
  if (top.has("hotspot")) {
    const JsonGroup group = top.group("hotspot", {"row", "column"});
    group.whole_number("row", g::ranges::node, entered.hotspot.row);
    group.whole_number("column", g::ranges::node, entered.hotspot.column);
  }
  if (top.has("treatment")) read_treatment(top, entered);
  if (top.has("errors")) read_errors(top, entered.errors);
}

void write_settings(const g::Case& entered, nlohmann::ordered_json& top) {
  top["side"] = name_of(entered.side, sides);
  top["search"] = {{"lateral_mm", entered.search.lateral_mm},
                   {"anterior_mm", entered.search.anterior_mm},
                   {"pitch_mm", entered.search.pitch_mm},
                   {"grid_on", name_of(entered.search.grid_on, grids)}};
  top["coil"] = {{"model", entered.coil_model.model},
                 {"angle_deg", entered.coil.angle_deg},
                 {"centre_to_edge_mm", entered.coil.centre_to_edge_mm},
                 {"lift_mm", entered.coil.lift_mm},
                 {"mark_rule", name_of(entered.coil.mark_rule, mark_rules)}};
  top["hotspot"] = {{"row", entered.hotspot.row}, {"column", entered.hotspot.column}};
  auto& treatment = top["treatment"];
  treatment["rule"] = name_of(entered.treatment.rule, treatment_rules);
  if (entered.treatment.rule == g::TreatmentRule::forward)
    treatment["distance_mm"] = entered.treatment.distance_mm;
  else
    treatment["label"] = entered.treatment.label;
  // Defaults that come from the literature may be bettered; a case keeps only what its user changed.
  if (!(entered.errors == g::HandErrors{})) top["errors"] = errors_json(entered.errors);
}

}  // namespace scalpmark::models
