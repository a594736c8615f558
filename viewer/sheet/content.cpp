#include "viewer/sheet/content.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "geometry/base/error.h"
#include "geometry/hands/choose_tapes.h"
#include "geometry/hands/tolerance.h"
#include "geometry/hands/with_strips.h"
#include "geometry/head/landmarks.h"
#include "geometry/paths/shortest_path.h"
#include "geometry/plan/pulse_shift.h"
#include "models/cases/demo_case.h"
#include "viewer/sheet/cap_note.h"
#include "viewer/sheet/field_lines.h"
#include "viewer/sheet/find_again_table.h"
#include "viewer/sheet/visit_tables.h"
#include "viewer/stage/things/surroundings.h"
#include "viewer/words/answer_words.h"
#include "viewer/words/cortex_words.h"
#include "viewer/words/data_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/shift_words.h"
#include "viewer/words/site_words.h"
#include "viewer/words/strips_words.h"
#include "viewer/words/tolerance_words.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::MarkRule;
using geometry::Placement;

namespace {

constexpr std::array rules{MarkRule::tape, MarkRule::drop, MarkRule::nearest};

std::string rule_in_words(MarkRule rule) {
  return words(geometry::in_words(rule));
}

std::string how(MarkRule rule, double reach_mm) {
  switch (rule) {
    case MarkRule::tape:
      return words(Words::tr("run a tape %1 along the skin from the pulse point"), {tape_length(reach_mm)});
    case MarkRule::drop:
      return words(Words::tr("look straight down past the coil's edge"));
    case MarkRule::nearest:
      return words(Words::tr("mark the skin nearest to the edge"));
  }
  return "";
}

std::string how_laid(MarkRule rule) {
  switch (rule) {
    case MarkRule::tape:
      return words(Words::tr("its centre where a tape from the mark ends"));
    case MarkRule::drop:
      return words(Words::tr("look straight down past its edge at the mark"));
    case MarkRule::nearest:
      return words(Words::tr("its edge as near to the mark as it goes"));
  }
  return "";
}

std::string side_in_words(geometry::Side side) {
  return side == geometry::Side::left ? words(Words::tr("left")) : words(Words::tr("right"));
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

/// A table of names and values, without headings.
SheetTable pairs(std::string title, std::vector<std::vector<std::string>> rows) {
  return {std::move(title), {{"", 0.44, false}, {"", 0.56, false}}, std::move(rows), ""};
}

SheetTable measures(const geometry::Case& c, const geometry::Plan& plan, const std::string& note) {
  SheetTable t{words(Words::tr("Measures")),
               {{tape_unit(), 0.5, false},
                {words(Words::tr("tape", "what the tape measure gave")), 0.25, true},
                {words(Words::tr("this head")), 0.25, true}},
               {},
               note};
  const auto row = [&](const QString& name, const std::optional<double>& tape, double head) {
    t.rows.push_back(
        {words(name), tape ? tape_number(*tape) : words(Words::tr("not given")), tape_number(head)});
  };
  row(Words::tr("Nasion to inion"), c.tape_mm.nasion_inion_mm, plan.tapes.nasion_inion_mm);
  row(Words::tr("Tragus to tragus"), c.tape_mm.tragus_tragus_mm, plan.tapes.tragus_tragus_mm);
  row(Words::tr("Around the head"), c.tape_mm.circumference_mm, plan.tapes.circumference_mm);
  return t;
}

/// The marks and their tape distances, those in bold that find each best, and how closely they do.
SheetTable tape_distances(const geometry::Head& head, const geometry::Case& c, const geometry::Plan& plan) {
  SheetTable t{
      words(Words::tr("Find them again with a tape")),
      {{words(Words::tr("%1 along the skin from", "cm or inches"), {tape_unit()}), 0.32, false},
       {words(Words::tr("vertex")), 0.12, true},
       {words(Words::tr("nasion")), 0.12, true},
       {words(Words::tr("left tragus")), 0.15, true},
       {words(Words::tr("right tragus")), 0.15, true},
       {words(Words::tr("found within")), 0.14, true}},
      {},
      words(Words::tr("Edge marks by the %1 rule. In bold: the two or three tapes that find each mark "
                      "best on this head, and how closely they do, 95 times of 100, where each is "
                      "read within %2 (typical error)."),
            {rule_in_words(c.coil.laid_by), small_length(geometry::FindOptions().reading_mm)})};
  struct Row {
    QString name;
    std::optional<geometry::TapeFrom> from;
    std::optional<Eigen::Vector3d> at;
  };
  const std::vector<Row> rows{
      {Words::tr("Hotspot, pulse point"), plan.hotspot.pulse_tape, plan.hotspot.pulse},
      {Words::tr("Hotspot, edge mark"), plan.hotspot.edge_mark_tape, plan.hotspot.mark},
      {Words::tr("Treatment site, pulse point"), plan.treatment.pulse_tape, plan.treatment.pulse},
      {Words::tr("Treatment site, edge mark"), plan.treatment.edge_mark_tape, plan.treatment.mark}};
  std::vector<geometry::SurfacePoint> marks;
  for (const Row& row : rows)
    if (row.from && row.at) marks.push_back(head.skin().closest(*row.at));
  const std::vector<geometry::ChosenTapes> chosen = geometry::choose_tapes(head, marks);
  std::size_t next = 0;
  bool any_alike = false;
  for (const Row& row : rows) {
    if (!row.from || !row.at) {
      t.rows.push_back({words(row.name), words(Words::tr("off the head")), "", "", "", ""});
      continue;
    }
    const geometry::ChosenTapes& best = chosen[next++];
    any_alike = any_alike || best.places > 1;
    const std::array is_best{best.vertex, best.nasion, best.left_tragus, best.right_tragus};
    for (std::size_t i = 0; i < is_best.size(); ++i)
      if (is_best[i]) t.bold.insert({t.rows.size(), i + 1});
    t.rows.push_back({words(row.name), tape_number(row.from->vertex_mm), tape_number(row.from->nasion_mm),
                      tape_number(row.from->left_tragus_mm), tape_number(row.from->right_tragus_mm),
                      best.places > 1 ? words(Words::tr("%1 *", "a length, with a footnote"),
                                              {tape_number(best.spread_mm)})
                                      : tape_number(best.spread_mm)});
  }
  if (any_alike) t.note += words(Words::tr(" * These tapes fit another place as well; measure all four."));
  return t;
}

SheetTable under_the_coil(bool with_brain, const geometry::Plan& plan) {
  SheetTable t{
      words(Words::tr("Under the coil, on the template's brain")),
      {{"", 0.27, false}, {"", 0.73, false}},
      {},
      words(Words::tr(
          "All this on the template; a person's own brain differs. The first depth is to the nearest cortex, "
          "the second the middle of those over a patch of 1 cm around. Which muscle answers at the hotspot "
          "only the twitch can say."))};
  if (!with_brain) return t;
  const auto row = [&](const QString& name, const std::optional<geometry::CortexHit>& hit) {
    t.rows.push_back({words(name), hit ? words(Words::tr("%1 from skin to cortex; %2; %3"),
                                               {depth_in_words(*hit), regions_in_words(hit->areas),
                                                regions_in_words(hit->gyri)})
                                       : words(Words::tr("no cortex under the pulse point"))});
  };
  row(Words::tr("Treatment site"), plan.treatment.cortex);
  row(Words::tr("Hotspot"), plan.hotspot.cortex);
  return t;
}

/// Along the skin from the chosen rule's mark to each rule's, in their order; empty for one off the head.
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
      words(Words::tr("The three marking rules")),
      {{words(Words::tr("rule")), 0.11, false},
       {words(Words::tr("what staff do")), 0.39, false},
       {words(Words::tr("hotspot: %1 from the chosen mark", "cm or inches"), {tape_unit()}), 0.15, true},
       {words(Words::tr("gap, %1", "a unit"), {small_unit()}), 0.1, true},
       {words(Words::tr("treatment: %1 from the chosen mark", "cm or inches"), {tape_unit()}), 0.15, true},
       {words(Words::tr("gap, %1", "a unit"), {small_unit()}), 0.1, true}},
      {},
      words(Words::tr(
          "A mark drawn by one rule and laid over by another moves the pulse by about as much. Keep to the chosen "
          "rule at every visit."))};
  const auto hotspot = from_chosen(head, c.coil.laid_by, plan.hotspot);
  const auto treatment = from_chosen(head, c.coil.laid_by, plan.treatment);
  const auto text = [](const std::optional<double>& mm) {
    return mm ? tape_number(*mm) : words(Words::tr("none", "no edge mark"));
  };
  for (size_t i = 0; i < rules.size(); ++i) {
    const MarkRule rule = rules[i];
    const bool chosen = rule == c.coil.laid_by;
    const auto away = [&](const std::optional<double>& mm) {
      return chosen && mm ? words(Words::tr("chosen")) : text(mm);
    };
    const auto gap = [&](const Placement& p) {
      const auto mm = gap_mm(p, rule);
      return mm ? small_number(*mm) : words(Words::tr("none", "no edge mark"));
    };
    t.rows.push_back({rule_in_words(rule), how(rule, c.coil.centre_to_edge_mm), away(hotspot[i]),
                      gap(plan.hotspot), away(treatment[i]), gap(plan.treatment)});
  }
  return t;
}

/// How long the tape to each of the nine marks must be for the coil laid over it to have its pulse where it
/// is wanted; without rows where it makes no difference.
SheetTable tapes_to_draw(const geometry::Case& c, const geometry::Plan& plan) {
  SheetTable t{words(Words::tr("Tape for each search mark")),
               {{words(Words::tr("%1 along the skin", "cm or inches"), {tape_unit()}), 0.31, false},
                {words(Words::tr("toward the midline")), 0.23, true},
                {words(Words::tr("middle")), 0.23, true},
                {words(Words::tr("outward")), 0.23, true}},
               {},
               ""};
  if (std::none_of(plan.grid.begin(), plan.grid.end(),
                   [](const auto& spot) { return geometry::is_shifted(spot.placement); }))
    return t;
  for (const int row : {1, 0, -1}) {
    std::vector<std::string> cells{words(row > 0   ? Words::tr("forward")
                                         : row < 0 ? Words::tr("backward")
                                                   : Words::tr("middle"))};
    for (const int column : {-1, 0, 1})
      for (const auto& spot : plan.grid) {
        if (spot.row != row || spot.column != column) continue;
        const auto& tape = spot.placement.tape_to_draw_mm;
        cells.push_back(words(Words::tr("%1 (%2 off)", "a tape to draw, and how far off without it"),
                              {tape ? tape_number(*tape) : words(Words::tr("none", "no edge mark")),
                               tape_number(spot.placement.wanted_to_pulse_mm)}));
      }
    t.rows.push_back(std::move(cells));
  }
  t.note =
      words(Words::tr("Drawn at these lengths, the marks put the laid coil's pulse on the point measured. In "
                      "brackets how far off it lands with marks drawn by the %1 rule at %2 and the coil laid "
                      "by the %3 rule."),
            {rule_in_words(c.search.drawn_by), tape_length(c.coil.centre_to_edge_mm),
             rule_in_words(c.coil.laid_by)});
  return t;
}

SheetTable alternatives(const geometry::Plan& plan) {
  SheetTable t{words(Words::tr("Other treatment sites in use")),
               {{words(Words::tr("site")), 0.75, false},
                {words(Words::tr("%1 from the site", "cm or inches"), {tape_unit()}), 0.25, true}},
               {},
               ""};
  for (const auto& a : plan.treatment_alternatives)
    t.rows.push_back({capital(other_site_in_words(a)), tape_number(a.tape_from_treatment_mm)});
  return t;
}

/// What the user is to know before any pulse: Rossi et al. 2021, Clin Neurophysiol 132:269-306 (memory).
std::vector<std::string> caution_sentences() {
  return {
      words(Words::tr(
          "A licensed prescriber decides site, threshold and dose; the device's instructions and local "
          "codes come first.")),
      words(Words::tr(
          "Before any pulse, ask about metal or implants in or near the head, pacemakers and stimulators.")),
      words(Words::tr("Ask about seizures, drugs that lower the seizure threshold, and pregnancy.")),
      words(Words::tr("Ear protection for patient and staff.")),
      words(Words::tr("Know what to do in a seizure."))};
}

}  // namespace

SheetContent sheet_content(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                           const geometry::Plan& plan, const std::string& date,
                           const std::shared_ptr<const geometry::Tolerance>& by_hand) {
  const geometry::Case& c = case_file.the_case;
  const geometry::Head& head = loaded.head;
  SheetContent s;
  s.label = c.label.empty() ? words(Words::tr("Unnamed case")) : c.label;
  s.date = date;
  s.head = models::is_demo(c)
               ? words(Words::tr("Demo case, not a real person: %1."), {words(loaded.description)})
               : capital(words(loaded.description)) + ".";
  s.head_note =
      case_file.head.kind == models::HeadKind::generic
          ? words(Words::tr("A drawing, not the patient: where they differ, the tape decides."))
          : words(Words::tr(
                "The distances hold for this head alone, and as far as its four points were placed well."));
  s.find_again = find_again_table(plan);
  s.measures = measures(c, plan, cap_note(head, c.cap));
  s.search =
      pairs(words(Words::tr("Search")),
            {{words(Words::tr("Side")), side_in_words(c.side)},
             {words(Words::tr("Vertex toward ear")), tape_length(c.search.lateral_mm)},
             {words(c.search.anterior_mm < 0 ? Words::tr("Then backward") : Words::tr("Then forward")),
              tape_length(std::abs(c.search.anterior_mm))},
             {words(Words::tr("Grid step")),
              words(c.search.grid_on == geometry::GridOn::edge_marks ? Words::tr("%1, on edge marks")
                                                                     : Words::tr("%1, on pulse points"),
                    {tape_length(c.search.pitch_mm)})},
             {words(Words::tr("Edge marks drawn by")),
              rule_in_words(c.search.drawn_by) + ": " + how(c.search.drawn_by, c.coil.centre_to_edge_mm)},
             {words(Words::tr("Hotspot")), hotspot_in_words(c)}});
  s.search.note = shift_sentence(plan.hotspot, c.search.drawn_by, c.coil);
  const auto gap = [&](const Placement& p) {
    const auto mm = gap_mm(p, c.coil.laid_by);
    return mm ? small_length(*mm) : words(Words::tr("the mark falls off the head"));
  };
  s.coil = pairs(words(Words::tr("Coil")),
                 {{words(Words::tr("Model")), capital(coil_text(c.coil.model.title))},
                  {words(Words::tr("Angle")), coil_angle(c.coil.angle_deg)},
                  {words(Words::tr("Centre to front edge")), tape_length(c.coil.centre_to_edge_mm)},
                  {words(Words::tr("Laid over a mark by")),
                   rule_in_words(c.coil.laid_by) + ": " + how_laid(c.coil.laid_by)},
                  {words(Words::tr("Cap and hair")), tape_length(c.coil.lift_mm)}});
  s.treatment = pairs(
      words(Words::tr("Treatment")),
      {{words(Words::tr("Side")), side_in_words(geometry::side_of(plan.treatment))},
       {words(Words::tr("Site")), site_in_words(c)},
       {words(Words::tr("Edge mark drawn by")),
        rule_in_words(c.treatment.drawn_by) + ": " + how(c.treatment.drawn_by, c.coil.centre_to_edge_mm)},
       {words(Words::tr("Gap at the site")), gap(plan.treatment)},
       {words(Words::tr("Gap at the hotspot")), gap(plan.hotspot)}});
  if (by_hand)
    s.treatment.note =
        words(Words::tr("By hand: %1 %2 %3"),
              {words(tolerance_sentence(*by_hand)), words(largest_share_sentence(*by_hand, c.errors)),
               words(habit_sentence(*by_hand))}) +
        " " + words(strips_sentence(geometry::with_strips(head, c, plan, c.errors)));
  s.cortex = under_the_coil(loaded.cortex != nullptr, plan);
  s.field = field_lines(head, c, plan);
  s.tapes = tape_distances(head, c, plan);
  s.to_draw = tapes_to_draw(c, plan);
  s.rules = three_rules(head, c, plan);
  s.alternatives = alternatives(plan);
  s.answers = answers_table(c, plan);
  s.visits = visits_tables(c.visits);
  for (const geometry::Message& warning : plan.warnings) s.warnings.push_back(words(warning));
  s.cautions = caution_sentences();
  s.not_this = caution_text();
  return s;
}

std::shared_ptr<const geometry::Tolerance> off_by_hand(const geometry::Head& head,
                                                       const geometry::Case& the_case,
                                                       const geometry::Plan& plan) {
  try {
    return std::make_shared<const geometry::Tolerance>(geometry::tolerance(
        head, the_case, plan, the_case.errors, {.placements = 1000, .compare_ways = false}));
  } catch (const geometry::GeometryError&) {
    return {};
  }
}

}  // namespace scalpmark::viewer
