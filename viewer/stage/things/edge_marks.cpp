// The coil's edge marks where it lies: a bar for each marking rule along the coil's edge, the chosen rule's
// strong and the others faint; a sight line from the edge in the air to each mark; the tape line from the
// pulse point; and the pulse point itself.
#include "viewer/stage/things/things.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::MarkRule;

ShowThing show_edge_marks;

namespace {

constexpr int legend_place = 40;

std::string label_of(MarkRule rule, bool chosen, const std::string& gap) {
  switch (rule) {
    case MarkRule::tape:
      return words(chosen ? Words::tr("Edge mark, tape rule: %1 under the edge")
                          : Words::tr("tape rule: %1 under the edge"),
                   {gap});
    case MarkRule::drop:
      return words(chosen ? Words::tr("Edge mark, drop rule: %1 under the edge")
                          : Words::tr("drop rule: %1 under the edge"),
                   {gap});
    case MarkRule::nearest:
      return words(chosen ? Words::tr("Edge mark, nearest rule: %1 under the edge")
                          : Words::tr("nearest rule: %1 under the edge"),
                   {gap});
  }
  return "";
}

void add_mark(const Showing& now, MarkRule rule, Part& part) {
  const geometry::Placement& placement = now.placement;
  const auto& at = placement.edge_mark.by(rule);
  if (!at || !now.shown.has_mark(rule)) return;
  const bool chosen = rule == now.entered.coil.laid_by;
  Mark mark = now.mark(Thing::edge_marks, std::string("edge mark ") + key_of(rule), Shape::bar,
                       chosen ? Role::edge_mark : Role::edge_mark_by_other_rule, *at,
                       placement.normal.cross(placement.front));
  Label label;
  label.text = label_of(rule, chosen, in_mm((*at - placement.edge).norm()));
  label.clear_px = 7;
  label.may_go_far = true;
  label.priority = chosen ? 98 : 70;
  label.bold = chosen;
  if (!chosen) label.role = Role::quiet_text;
  mark.label = label;
  part.marks.push_back(std::move(mark));
  if (chosen)
    part.lines.push_back({{placement.edge, *at}, 1.6, Role::edge_mark, 0.5});
  else
    part.lines.push_back({{placement.edge, *at}, 1.2, Role::sight_by_other_rule, 0.5, true});
}

}  // namespace

Part show_edge_marks(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::edge_marks;
  if (!now.shown.has(Thing::edge_marks)) return part;
  const MarkRule chosen = now.entered.coil.laid_by;
  // Faint bars first, then the chosen one, then the pulse point.
  for (const MarkRule rule : {MarkRule::drop, MarkRule::nearest, MarkRule::tape})
    if (rule != chosen) add_mark(now, rule, part);
  add_mark(now, chosen, part);
  part.lines.push_back({now.placement.tape_line, 1.6, Role::edge_tape, 1.6});
  part.marks.push_back(now.mark(Thing::edge_marks, "pulse", Shape::disc, Role::pulse, now.placement.pulse,
                                now.placement.front));
  const auto explain = [&](Shape shape, Role role, const std::string& text) {
    around.legend.push_back({LegendRow::Sample::shape, shape, role, text, legend_place});
  };
  explain(Shape::disc, Role::pulse, words(Words::tr("Pulse point")));
  explain(Shape::bar, Role::edge_mark, words(Words::tr("Edge mark, chosen rule")));
  explain(Shape::bar, Role::edge_mark_by_other_rule, words(Words::tr("Edge mark, other rules")));
  return part;
}

}  // namespace scalpmark::viewer
