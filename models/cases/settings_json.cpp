#include "models/cases/settings_json.h"

#include "geometry/head/landmarks.h"
#include "geometry/plan/settings.h"
#include "models/coils/coil_library.h"
#include "models/files/error.h"

namespace scalpmark::models {

namespace g = geometry;

namespace {

constexpr std::array<Choice<g::Side>, 2> sides{{{"left", g::Side::left}, {"right", g::Side::right}}};
constexpr std::array<Choice<g::GridOn>, 2> grids{
    {{"edge_marks", g::GridOn::edge_marks}, {"pulse_points", g::GridOn::pulse_points}}};
constexpr std::array<Choice<g::MarkRule>, 3> mark_rules{
    {{g::key_of(g::MarkRule::tape), g::MarkRule::tape},
     {g::key_of(g::MarkRule::drop), g::MarkRule::drop},
     {g::key_of(g::MarkRule::nearest), g::MarkRule::nearest}}};
constexpr std::array<Choice<g::TreatmentRule>, 2> treatment_rules{
    {{"forward", g::TreatmentRule::forward}, {"landmark", g::TreatmentRule::landmark}}};

constexpr std::array<Choice<g::CountedAnswers>, 3> counted_answers{
    {{"thumb", g::CountedAnswers::thumb},
     {"index", g::CountedAnswers::index},
     {"both", g::CountedAnswers::thumb_or_index}}};
constexpr std::array<Choice<g::CountingBy>, 2> counting_rules{
    {{"5_of_10", g::CountingBy::five_of_ten}, {"4_of_8", g::CountingBy::four_of_eight}}};
constexpr std::string_view cap_shift_key = "cap_shift_mm";

template <class Value, std::size_t count>
std::string_view key_among(Value value, const std::array<Choice<Value>, count>& choices) {
  for (const auto& choice : choices)
    if (choice.value == value) return choice.name;
  throw ModelError(Message::of("A setting to be written has no such choice; set it again."));
}

/// The numbers of a group, each as the list of settings says.
void read_numbers(const JsonGroup& group, std::string_view name, g::Case& the_case) {
  for (const g::Setting& s : g::settings()) {
    if (s.group != name || !group.has(s.key)) continue;
    const auto place = s.in(the_case);
    if (const auto* number = std::get_if<double*>(&place)) {
      group.number(s.key, s.range, g::unit_of(s), **number);
    } else if (const auto* maybe = std::get_if<std::optional<double>*>(&place)) {
      double mm = 0;
      group.number(s.key, s.range, g::unit_of(s), mm);
      **maybe = mm;
    } else {
      group.whole_number(s.key, s.range, **std::get_if<int*>(&place));
    }
  }
}

/// The same the other way; what was not measured is not written.
void write_numbers(const g::Case& the_case, std::string_view name, nlohmann::ordered_json& group) {
  g::Case own = the_case;
  for (const g::Setting& s : g::settings()) {
    if (s.group != name) continue;
    const auto place = s.in(own);
    if (const auto* number = std::get_if<double*>(&place)) {
      group[s.key] = **number;
    } else if (const auto* maybe = std::get_if<std::optional<double>*>(&place)) {
      if (**maybe) group[s.key] = ***maybe;
    } else {
      group[s.key] = **std::get_if<int*>(&place);
    }
  }
}

/// A group of the case; its keys are these, its numbers', and these.
JsonGroup group_of(const JsonGroup& top, std::string_view name, std::vector<std::string_view> keys,
                   std::initializer_list<std::string_view> after) {
  for (const g::Setting& s : g::settings())
    if (s.group == name) keys.emplace_back(s.key);
  keys.insert(keys.end(), after);
  return top.group(name, keys);
}

void read_coil(const JsonGroup& top, int version, g::Case& the_case) {
  const JsonGroup group = group_of(top, "coil", {"model"}, {version == 1 ? "mark_rule" : "laid_by"});
  if (group.has("model")) {
    std::string model;
    group.text("model", model);
    try {
      the_case.coil.model = coil(model);
    } catch (const ModelError&) {
      std::string known;
      for (const auto& shipped : coils()) known += (known.empty() ? "" : ", ") + shipped.model;
      group.refuse("model",
                   Message::of("must be a coil that ships (%1), but is %2", known, group.shown("model")));
    }
  }
  read_numbers(group, "coil", the_case);
  if (version > 1) {
    group.choice("laid_by", mark_rules, the_case.coil.laid_by);
    return;
  }
  g::MarkRule rule = g::MarkRule::tape;
  group.choice("mark_rule", mark_rules, rule);
  g::use_one_rule(the_case, rule);
}

void read_treatment(const JsonGroup& top, int version, g::Case& the_case) {
  const JsonGroup group = version == 1 ? top.group("treatment", {"rule", "distance_mm", "label"})
                                       : top.group("treatment", {"rule", "distance_mm", "label", "drawn_by"});
  if (version > 1) group.choice("drawn_by", mark_rules, the_case.treatment.drawn_by);
  g::TreatmentSettings& treatment = the_case.treatment;
  group.choice("rule", treatment_rules, treatment.rule);
  if (treatment.rule == g::TreatmentRule::forward) {
    if (group.has("label"))
      group.refuse("label", Message::of("belongs to the rule landmark, but the rule is forward"));
    read_numbers(group, "treatment", the_case);
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

void read_answers(const JsonGroup& top, g::Case& the_case) {
  const JsonGroup group = group_of(top, "answers", {"counted", "rule"}, {});
  group.choice("counted", counted_answers, the_case.answers.counted);
  group.choice("rule", counting_rules, the_case.answers.rule);
  read_numbers(group, "answers", the_case);
  if (the_case.answers.fine_percent > the_case.answers.step_percent)
    group.refuse(group.has("fine_percent") ? "fine_percent" : "step_percent",
                 Message::of("makes the fine step (%1) larger than the other (%2)",
                             the_case.answers.fine_percent, the_case.answers.step_percent));
}

/// Before a cap's slides and its turn were told apart there was one number for both slides. The turn is taken
/// to stand to it as it does by default, so that of marks on the skin, with no cap at all, nothing comes of
/// it.
void read_errors(const JsonGroup& top, g::Case& the_case) {
  const JsonGroup group = group_of(top, "errors", {}, {cap_shift_key});
  read_numbers(group, "errors", the_case);
  if (!group.has(cap_shift_key)) return;
  g::HandErrors& errors = the_case.errors;
  for (const char* key : {"cap_forward_mm", "cap_side_mm", "cap_turn_deg"})
    if (group.has(key))
      group.refuse(cap_shift_key,
                   Message::of("is an older word for what %1 says too; keep one of them", key));
  const g::HandErrors usual;
  double mm = 0;
  group.number(cap_shift_key, g::ranges::error_mm, Message::of("mm"), mm);
  errors.cap_turn_deg = usual.cap_turn_deg / usual.cap_forward_mm * mm;
  errors.cap_forward_mm = errors.cap_side_mm = mm;
}

}  // namespace

std::string_view file_word(g::CountedAnswers counted) {
  return key_among(counted, counted_answers);
}

std::string_view file_word(g::CountingBy rule) {
  return key_among(rule, counting_rules);
}

nlohmann::ordered_json errors_json(const g::HandErrors& errors) {
  g::Case the_case;
  the_case.errors = errors;
  nlohmann::ordered_json out;
  write_numbers(the_case, "errors", out);
  return out;
}

void read_settings(const JsonGroup& top, int version, g::Case& the_case) {
  top.choice("side", sides, the_case.side);
  if (version == 1) g::use_one_rule(the_case, g::MarkRule::tape);
  if (top.has("tape_mm")) read_numbers(group_of(top, "tape_mm", {}, {}), "tape_mm", the_case);
  if (top.has("search")) {
    const JsonGroup group = version == 1 ? group_of(top, "search", {}, {"grid_on"})
                                         : group_of(top, "search", {}, {"grid_on", "drawn_by"});
    read_numbers(group, "search", the_case);
    group.choice("grid_on", grids, the_case.search.grid_on);
    if (version > 1) group.choice("drawn_by", mark_rules, the_case.search.drawn_by);
  }
  if (top.has("coil")) read_coil(top, version, the_case);
  if (top.has("hotspot")) {
    read_numbers(version == 1 ? top.group("hotspot", {"row", "column"}) : group_of(top, "hotspot", {}, {}),
                 "hotspot", the_case);
    the_case.hotspot_awaited = false;
  }
  if (top.has("treatment")) read_treatment(top, version, the_case);
  if (top.has("cap")) read_numbers(group_of(top, "cap", {}, {}), "cap", the_case);
  if (top.has("answers")) read_answers(top, the_case);
  if (top.has("errors")) read_errors(top, the_case);
}

void write_settings(const g::Case& the_case, nlohmann::ordered_json& top) {
  top["tape_mm"] = nlohmann::ordered_json::object();
  write_numbers(the_case, "tape_mm", top["tape_mm"]);
  top["side"] = key_among(the_case.side, sides);
  write_numbers(the_case, "search", top["search"]);
  top["search"]["grid_on"] = key_among(the_case.search.grid_on, grids);
  top["search"]["drawn_by"] = g::key_of(the_case.search.drawn_by);
  top["coil"]["model"] = the_case.coil.model.model;
  write_numbers(the_case, "coil", top["coil"]);
  top["coil"]["laid_by"] = g::key_of(the_case.coil.laid_by);
  if (!(the_case.hotspot_awaited && the_case.hotspot == g::GridPosition{}))
    write_numbers(the_case, "hotspot", top["hotspot"]);
  auto& treatment = top["treatment"];
  treatment["rule"] = key_among(the_case.treatment.rule, treatment_rules);
  if (the_case.treatment.rule == g::TreatmentRule::forward)
    write_numbers(the_case, "treatment", treatment);
  else
    treatment["label"] = the_case.treatment.label;
  treatment["drawn_by"] = g::key_of(the_case.treatment.drawn_by);
  write_numbers(the_case, "cap", top["cap"]);
  top["answers"]["counted"] = key_among(the_case.answers.counted, counted_answers);
  top["answers"]["rule"] = key_among(the_case.answers.rule, counting_rules);
  write_numbers(the_case, "answers", top["answers"]);
  // Defaults that come from the literature may be bettered; a case keeps only what its user changed.
  if (!(the_case.errors == g::HandErrors{})) top["errors"] = errors_json(the_case.errors);
}

}  // namespace scalpmark::models
