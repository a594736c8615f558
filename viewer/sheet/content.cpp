#include "viewer/sheet/content.h"

#include <array>
#include <cmath>
#include <ctime>
#include <optional>

#include "geometry/error.h"
#include "geometry/landmarks.h"
#include "geometry/shortest_path.h"
#include "geometry/tolerance.h"
#include "viewer/stage/captions.h"
#include "viewer/stage/cortex.h"
#include "viewer/stage/numbers.h"
#include "viewer/tolerance_text.h"

namespace scalpmark::viewer {

using geometry::MarkRule;
using geometry::Placement;

namespace {

constexpr std::array rules{MarkRule::tape, MarkRule::drop, MarkRule::nearest};

const char* name_of(MarkRule rule) {
  switch (rule) {
    case MarkRule::tape:
      return "tape";
    case MarkRule::drop:
      return "drop";
    case MarkRule::nearest:
      return "nearest";
  }
  return "";
}

std::string how(MarkRule rule, double reach_mm) {
  switch (rule) {
    case MarkRule::tape:
      return "run a tape " + in_cm(reach_mm) + " along the skin from the pulse point";
    case MarkRule::drop:
      return "look straight down past the coil's edge";
    case MarkRule::nearest:
      return "mark the skin nearest to the edge";
  }
  return "";
}

std::string capital(std::string text) {
  if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
    text.front() = static_cast<char>(text.front() - 'a' + 'A');
  return text;
}

/// From the edge in the air to the skin at the mark, straight.
std::optional<double> gap_mm(const Placement& p, MarkRule rule) {
  const auto& mark = p.edge_mark.by(rule);
  if (!mark) return {};
  return (*mark - p.edge).norm();
}

/// "1.0 cm forward", "1.0 cm toward the midline"; empty for none.
std::string steps(int count, double pitch_mm, const char* positive, const char* negative) {
  if (count == 0) return "";
  return in_cm(std::abs(count) * pitch_mm) + " " + (count > 0 ? positive : negative);
}

std::string node_in_words(const geometry::Case& c) {
  const std::string row = steps(c.hotspot.row, c.search.pitch_mm, "forward", "backward");
  const std::string column = steps(c.hotspot.column, c.search.pitch_mm, "outward", "toward the midline");
  if (row.empty() && column.empty()) return "the start itself";
  return row + (row.empty() || column.empty() ? "" : ", ") + column;
}

std::string site_in_words(const geometry::TreatmentSettings& t) {
  return t.rule == geometry::TreatmentRule::forward
             ? in_cm(t.distance_mm) + " forward of the hotspot"
             : "over " + geometry::canonical_label(t.label).value_or(t.label);
}

std::string alternative_in_words(const geometry::TreatmentAlternative& a) {
  if (a.rule == geometry::TreatmentRule::forward) return in_cm(a.distance_mm) + " forward of the hotspot";
  const auto dash = a.label.find('-');
  if (dash == std::string::npos) return a.label;
  return "half way between " + a.label.substr(0, dash) + " and " + a.label.substr(dash + 1);
}

/// A table of names and values, without headings.
SheetTable pairs(std::string title, std::vector<std::vector<std::string>> rows) {
  return {std::move(title), {{"", 0.44, false}, {"", 0.56, false}}, std::move(rows), ""};
}

SheetTable measures(const geometry::Case& c, const geometry::Plan& plan) {
  SheetTable t{"Measures", {{"cm", 0.5, false}, {"tape", 0.25, true}, {"this head", 0.25, true}}, {}, ""};
  const auto row = [&](const char* name, const std::optional<double>& tape, double head) {
    t.rows.push_back({name, tape ? cm(*tape) : "not given", cm(head)});
  };
  row("Nasion to inion", c.tape_mm.nasion_inion_mm, plan.tapes.nasion_inion_mm);
  row("Tragus to tragus", c.tape_mm.tragus_tragus_mm, plan.tapes.tragus_tragus_mm);
  row("Around the head", c.tape_mm.circumference_mm, plan.tapes.circumference_mm);
  return t;
}

SheetTable tape_distances(const geometry::Case& c, const geometry::Plan& plan) {
  SheetTable t{"Find them again with a tape",
               {{"cm along the skin from", 0.36, false},
                {"vertex", 0.14, true},
                {"nasion", 0.14, true},
                {"left tragus", 0.18, true},
                {"right tragus", 0.18, true}},
               {},
               std::string("Edge marks by the ") + name_of(c.coil.mark_rule) +
                   " rule. Two tapes find a point, a third proves it."};
  const auto row = [&](const std::string& name, const std::optional<geometry::TapeFrom>& from) {
    if (from)
      t.rows.push_back({name, cm(from->vertex_mm), cm(from->nasion_mm), cm(from->left_tragus_mm),
                        cm(from->right_tragus_mm)});
    else
      t.rows.push_back({name, "off the head", "", "", ""});
  };
  row("Hotspot, pulse point", plan.hotspot.pulse_tape);
  row("Hotspot, edge mark", plan.hotspot.edge_mark_tape);
  row("Treatment site, pulse point", plan.treatment.pulse_tape);
  row("Treatment site, edge mark", plan.treatment.edge_mark_tape);
  return t;
}

SheetTable under_the_coil(const geometry::Head& head, const geometry::Plan& plan) {
  SheetTable t{"Under the coil, on the template's brain",
               {{"", 0.23, false}, {"", 0.77, false}},
               {},
               std::string("All this ") + geometry::cortex_caution + "."};
  if (head.cortex() == nullptr) return t;
  const auto row = [&](const char* name, const std::optional<geometry::CortexHit>& hit) {
    t.rows.push_back({name, hit ? in_mm(hit->depth_mm) + " from skin to cortex; " +
                                      shares_in_words(hit->areas) + "; " + shares_in_words(hit->gyri)
                                : "no cortex straight below"});
  };
  row("Treatment site", plan.treatment.cortex);
  row("Hotspot", plan.hotspot.cortex);
  return t;
}

/// Along the skin from the chosen rule's mark to those of all rules, in their order; empty for one off the
/// head.
std::array<std::optional<double>, 3> from_chosen(const geometry::Head& head, MarkRule chosen,
                                                 const Placement& p) {
  std::array<std::optional<double>, 3> away;
  const auto& from = p.edge_mark.by(chosen);
  if (!from) return away;
  std::vector<geometry::SurfacePoint> to;
  std::vector<size_t> whose;
  for (size_t i = 0; i < rules.size(); ++i)
    if (const auto& mark = p.edge_mark.by(rules[i])) {
      to.push_back(head.skin().closest(*mark));
      whose.push_back(i);
    }
  const auto mm = geometry::shortest_distances(head.skin(), head.skin().closest(*from), to);
  for (size_t i = 0; i < whose.size(); ++i) away[whose[i]] = mm[i];
  return away;
}

SheetTable three_rules(const geometry::Head& head, const geometry::Case& c, const geometry::Plan& plan) {
  SheetTable t{
      "The three marking rules",
      {{"rule", 0.11, false},
       {"what staff do", 0.39, false},
       {"hotspot: cm from the chosen mark", 0.15, true},
       {"edge to skin", 0.1, true},
       {"treatment: cm from the chosen mark", 0.15, true},
       {"edge to skin", 0.1, true}},
      {},
      "A mark made by one rule and used by another moves the pulse by about as much. Keep to the chosen "
      "rule at every visit."};
  const auto hotspot = from_chosen(head, c.coil.mark_rule, plan.hotspot);
  const auto treatment = from_chosen(head, c.coil.mark_rule, plan.treatment);
  const auto text = [](const std::optional<double>& mm) { return mm ? cm(*mm) : std::string("none"); };
  for (size_t i = 0; i < rules.size(); ++i) {
    const MarkRule rule = rules[i];
    const bool chosen = rule == c.coil.mark_rule;
    const auto away = [&](const std::optional<double>& mm) { return chosen && mm ? "chosen" : text(mm); };
    t.rows.push_back({name_of(rule), how(rule, c.coil.centre_to_edge_mm), away(hotspot[i]),
                      text(gap_mm(plan.hotspot, rule)), away(treatment[i]),
                      text(gap_mm(plan.treatment, rule))});
  }
  return t;
}

SheetTable alternatives(const geometry::Plan& plan) {
  SheetTable t{"Other treatment sites in use",
               {{"site", 0.75, false}, {"cm from the site", 0.25, true}},
               {},
               ""};
  for (const auto& a : plan.treatment_alternatives)
    t.rows.push_back({capital(alternative_in_words(a)), cm(a.tape_from_treatment_mm)});
  return t;
}

/// How far off hands could put the pulse, and what would help; empty where that cannot be worked out.
std::string by_hand(const geometry::Head& head, const geometry::Case& c, const geometry::Plan& plan) {
  try {
    const auto t = geometry::tolerance(head, c, plan, c.errors, {.placements = 1000});
    return "By hand: " + tolerance_sentence(t) + " " + t.habit;
  } catch (const geometry::GeometryError&) {
    return "";  // no edge mark to lay a coil on: the warnings say so
  }
}

/// What the user is to know before any pulse: Rossi et al. 2021, Clin Neurophysiol 132:269-306 (memory).
std::vector<std::string> caution_sentences() {
  return {
      "A licensed prescriber decides site, threshold and dose; the device's instructions and local codes "
      "come "
      "first.",
      "Before any pulse, ask about metal or implants in or near the head, pacemakers and stimulators.",
      "Ask about seizures, drugs that lower the seizure threshold, and pregnancy.",
      "Ear protection for patient and staff.", "Know what to do in a seizure."};
}

}  // namespace

SheetContent sheet_content(const models::CaseFile& kept, const geometry::Head& head,
                           const std::string& description, const geometry::Plan& plan,
                           const std::string& date) {
  const geometry::Case& c = kept.entered;
  SheetContent s;
  s.label = c.label.empty() ? "Unnamed case" : c.label;
  s.date = date;
  s.head = capital(description) + ".";
  s.head_note =
      kept.head.kind == models::HeadKind::generic
          ? "A drawing, not the patient: where they differ, the tape decides."
          : "The distances hold for this head alone, and as far as its four points were placed well.";
  s.measures = measures(c, plan);
  const bool left = c.side == geometry::Side::left;
  s.search = pairs(
      "Search",
      {{"Side", left ? "left" : "right"},
       {"Vertex toward ear", in_cm(c.search.lateral_mm)},
       {c.search.anterior_mm < 0 ? "Then backward" : "Then forward", in_cm(std::abs(c.search.anterior_mm))},
       {"Grid step",
        in_cm(c.search.pitch_mm) +
            (c.search.grid_on == geometry::GridOn::edge_marks ? ", on edge marks" : ", on pulse points")},
       {"Hotspot", node_in_words(c)}});
  const auto gap = [&](const Placement& p) {
    const auto mm = gap_mm(p, c.coil.mark_rule);
    return mm ? in_cm(*mm) : std::string("the mark falls off the head");
  };
  s.coil = pairs("Coil", {{"Model", capital(c.coil_model.title)},
                          {"Angle", in_degrees(c.coil.angle_deg) + " to the midline"},
                          {"Centre to front edge", in_cm(c.coil.centre_to_edge_mm)},
                          {"Marking rule", std::string(name_of(c.coil.mark_rule)) + ": " +
                                               how(c.coil.mark_rule, c.coil.centre_to_edge_mm)},
                          {"Lift for cap and hair", in_cm(c.coil.lift_mm)}});
  s.treatment = pairs("Treatment", {{"Site", site_in_words(c.treatment)},
                                    {"Gap, edge to mark", gap(plan.treatment)},
                                    {"Gap at the hotspot", gap(plan.hotspot)}});
  s.treatment.note = by_hand(head, c, plan);
  s.cortex = under_the_coil(head, plan);
  s.tapes = tape_distances(c, plan);
  s.rules = three_rules(head, c, plan);
  s.alternatives = alternatives(plan);
  s.warnings = plan.warnings;
  s.cautions = caution_sentences();
  s.not_this = caution_text();
  return s;
}

std::string date_today() {
  static constexpr std::array months{"January", "February", "March",     "April",   "May",      "June",
                                     "July",    "August",   "September", "October", "November", "December"};
  const std::time_t now = std::time(nullptr);
  std::tm here{};
  localtime_r(&now, &here);
  return std::to_string(here.tm_mday) + " " + months[static_cast<size_t>(here.tm_mon)] + " " +
         std::to_string(here.tm_year + 1900);
}

}  // namespace scalpmark::viewer
