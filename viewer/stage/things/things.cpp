#include "viewer/stage/things/things.h"

#include <algorithm>
#include <array>

namespace scalpmark::viewer {

#define SCALPMARK_DECLARED(thing) ShowThing thing;
SCALPMARK_THINGS_SHOWN(SCALPMARK_DECLARED)
#undef SCALPMARK_DECLARED

namespace {

#define SCALPMARK_LISTED(thing) &(thing),
constexpr std::array all{SCALPMARK_THINGS_SHOWN(SCALPMARK_LISTED)};
#undef SCALPMARK_LISTED

void leave_out_labels(Part& part) {
  for (auto& mark : part.marks) mark.label.reset();
  for (auto& spot : part.spots) spot.label.reset();
  for (auto& wedge : part.wedges) wedge.label.reset();
  for (auto& line : part.lines) {
    line.label.reset();
    for (auto& tick : line.ticks) tick.label.reset();
  }
  part.words.clear();
}

}  // namespace

Scene show(const geometry::Head& head, const geometry::Case& the_case, const geometry::Plan& plan,
           const Shown& shown, CalmNormals& normals) {
  const geometry::Placement& placement = placement_shown(plan, shown);
  const Showing now{head, the_case, plan, shown, placement, normals};
  Scene scene{head.skin(), plan.axes, placement};
  for (ShowThing* thing : all) scene.parts.push_back(thing(now, scene.around));
  auto& legend = scene.around.legend;
  if (!shown.has(Thing::legend)) legend.clear();
  std::stable_sort(legend.begin(), legend.end(),
                   [](const LegendRow& a, const LegendRow& b) { return a.place < b.place; });
  if (!shown.has(Thing::labels))
    for (auto& part : scene.parts)
      if (part.thing != Thing::labels) leave_out_labels(part);  // notes keep theirs
  return scene;
}

Scene show(const geometry::Head& head, const geometry::Case& the_case, const geometry::Plan& plan,
           const Shown& shown) {
  CalmNormals normals;
  return show(head, the_case, plan, shown, normals);
}

}  // namespace scalpmark::viewer
