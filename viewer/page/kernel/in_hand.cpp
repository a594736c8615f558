#include "viewer/page/kernel/in_hand.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;
using geometry::MarkRule;

Part coil_in_hand(const geometry::Head& head, const geometry::CoilSetup& setup,
                  const geometry::Placement& placement) {
  Part part;
  part.thing = Thing::edge_marks;
  const auto mark = [&](std::string name, Shape shape, Role role, const Vector3d& at, const Vector3d& along) {
    part.marks.push_back(
        make_mark(Thing::edge_marks, std::move(name), shape, role, at, calm_normal(head.skin(), at), along));
  };
  const Vector3d right = placement.normal.cross(placement.front);
  const auto add = [&](MarkRule rule) {
    const auto& at = placement.edge_mark.by(rule);
    if (!at) return;
    const bool chosen = rule == setup.laid_by;
    mark(key_of(rule), Shape::bar, chosen ? Role::edge_mark : Role::edge_mark_by_other_rule, *at, right);
    part.lines.push_back(chosen ? Line{{placement.edge, *at}, 1.6, Role::edge_mark, 0.5}
                                : Line{{placement.edge, *at}, 1.2, Role::sight_by_other_rule, 0.5, true});
  };
  for (const MarkRule rule : geometry::all_mark_rules)
    if (rule != setup.laid_by) add(rule);
  add(setup.laid_by);
  part.lines.push_back({placement.tape_line, 1.6, Role::edge_tape, 1.6});
  mark("pulse", Shape::disc, Role::pulse, placement.pulse, placement.front);
  return part;
}

}  // namespace scalpmark::viewer
