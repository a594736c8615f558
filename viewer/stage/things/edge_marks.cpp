// The coil's edge marks where it lies: a bar for each marking rule along the coil's edge, the chosen rule's
// strong and the others faint; a sight line from the edge in the air to each mark; the tape line from the
// pulse point; and the pulse point itself.
#include "geometry/plan/pulse_shift.h"
#include "viewer/stage/things/things.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::MarkRule;

ShowThing show_edge_marks;

namespace {

std::string label_of(MarkRule rule, bool chosen, const std::string& gap) {
  switch (rule) {
    case MarkRule::tape:
      return words(chosen ? Words::tr("Edge mark, tape rule: edge %1 above this mark")
                          : Words::tr("tape rule: edge %1 above this mark"),
                   {gap});
    case MarkRule::drop:
      return words(chosen ? Words::tr("Edge mark, drop rule: edge %1 above this mark")
                          : Words::tr("drop rule: edge %1 above this mark"),
                   {gap});
    case MarkRule::nearest:
      return words(chosen ? Words::tr("Edge mark, nearest rule: edge %1 above this mark")
                          : Words::tr("nearest rule: edge %1 above this mark"),
                   {gap});
  }
  return "";
}

/// Of a mark that one rule drew and over which the coil is laid by another: which, a heading beside the head
/// says (things/wanted), so that the label is short enough to find room.
std::string label_of_both(const std::string& gap) {
  return words(Words::tr("Edge mark, edge %1 above it"), {gap});
}

void add_mark(const Showing& now, MarkRule rule, Part& part) {
  const geometry::Placement& placement = now.placement;
  const auto& at = placement.edge_mark.by(rule);
  if (!at || !now.shown.has_mark(rule)) return;
  const bool chosen = rule == now.the_case.coil.laid_by;
  Mark mark = now.mark(Thing::edge_marks, std::string("edge mark ") + key_of(rule), Shape::bar,
                       chosen ? Role::edge_mark : Role::edge_mark_by_other_rule, *at,
                       placement.normal.cross(placement.front));
  Label label;
  const std::string gap = small_length((*at - placement.edge).norm());
  label.text = chosen && geometry::is_shifted(placement) ? label_of_both(gap) : label_of(rule, chosen, gap);
  if (now.shown.brief) label.text = words(Words::tr("Edge mark"));
  label.clear_px = 7;
  label.may_go_far = true;
  label.priority = chosen ? label_priority::edge_mark : label_priority::other_mark;
  label.bold = chosen;
  if (chosen) label.aside = words(Words::tr("edge mark, edge %1 above it"), {gap});
  if (!chosen) label.role = Role::quiet_text;
  if (chosen || now.shown.names_all) mark.label = label;
  part.marks.push_back(std::move(mark));
  if (chosen)
    part.lines.push_back({{placement.edge, *at}, 1.6, Role::edge_mark, 0.5});
  else
    part.lines.push_back({{placement.edge, *at}, 1.2, Role::sight_by_other_rule, 0.5, true});
}

/// The straight way between two skin points, laid on the skin.
std::vector<Eigen::Vector3d> on_the_skin(const Showing& now, const Eigen::Vector3d& from,
                                         const Eigen::Vector3d& to) {
  constexpr int corners = 24;
  const geometry::Surface& skin = now.head.skin();
  std::vector<Eigen::Vector3d> line;
  for (int i = 0; i <= corners; ++i)
    line.push_back(skin.position(skin.closest(from + (to - from) * i / corners)));
  return line;
}

}  // namespace

Part show_edge_marks(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::edge_marks;
  if (!now.shown.has(Thing::edge_marks)) return part;
  const MarkRule chosen = now.the_case.coil.laid_by;
  // Faint bars first, then the chosen one, then the pulse point.
  for (const MarkRule rule : {MarkRule::drop, MarkRule::nearest, MarkRule::tape})
    if (rule != chosen) add_mark(now, rule, part);
  add_mark(now, chosen, part);
  if (!geometry::is_shifted(now.placement))
    part.lines.push_back({now.placement.tape_line, 1.6, Role::edge_tape, 1.6});
  else if (now.placement.mark)
    part.lines.push_back(
        {on_the_skin(now, now.placement.wanted, *now.placement.mark), 1.6, Role::edge_tape, 1.6});
  if (!now.is_in_hotspot_ring(now.placement.pulse))
    part.marks.push_back(now.mark(Thing::edge_marks, "pulse", Shape::disc, Role::pulse, now.placement.pulse,
                                  now.placement.front));
  const auto explain = [&](Shape shape, Role role, const std::string& text) {
    around.legend.push_back({LegendRow::Sample::shape, shape, role, text, at_edge_marks_in_legend});
  };
  explain(Shape::disc, Role::pulse, words(Words::tr("Pulse point")));
  explain(Shape::bar, Role::edge_mark, words(Words::tr("Edge mark, chosen rule")));
  explain(Shape::bar, Role::edge_mark_by_other_rule, words(Words::tr("Edge mark, other rules")));
  return part;
}

}  // namespace scalpmark::viewer
