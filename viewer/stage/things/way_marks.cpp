// The marks of a way to mark where the coil lies: bars along its edge on the skin, beside the site mark. A
// line along the edge is drawn as one.
#include "viewer/stage/things/things.h"
#include "viewer/words/tolerance_words.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_way_marks;

namespace {

constexpr int way_legend_place = 41;
constexpr double way_line_px = 3, way_over_skin_mm = 1.6;

const geometry::WayTried* chosen_way(const Shown& shown) {
  if (!shown.tolerance || shown.tolerance->ways.empty()) return nullptr;
  for (const auto& w : shown.tolerance->ways)
    if (w.way == shown.marking_way) return &w;
  return &shown.tolerance->ways.back();
}

}  // namespace

Part show_way_marks(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::way_marks;
  if (!now.shown.has(Thing::way_marks)) return part;
  const geometry::WayTried* way = chosen_way(now.shown);
  if (way == nullptr) return part;
  const geometry::Placement& p = now.plan.treatment;
  const Eigen::Vector3d along_front = p.normal.cross(p.front);
  Label label;
  label.text = words(way_name(way->way));
  label.clear_px = 7;
  label.may_go_far = true;
  label.priority = label_priority::trials + 2;
  label.role = Role::edge_mark;
  if (way->way == geometry::MarkingWay::front_line && way->marks.size() == 2) {
    Line line{way->marks, way_line_px, Role::edge_mark, way_over_skin_mm};
    for (const auto& at : way->marks) line.normals.push_back(now.normal_at(at));
    line.label = label;
    part.lines.push_back(std::move(line));
  } else {
    for (size_t i = 0; i < way->marks.size(); ++i) {
      const bool at_side = way->way == geometry::MarkingWay::front_and_side && i == 1;
      Mark mark = now.mark(Thing::way_marks, "way mark " + std::to_string(i + 1), Shape::bar, Role::edge_mark,
                           way->marks[i], at_side ? p.front : along_front);
      if (i + 1 == way->marks.size()) mark.label = label;
      part.marks.push_back(std::move(mark));
    }
  }
  around.legend.push_back({LegendRow::Sample::shape, Shape::bar, Role::edge_mark,
                           words(Words::tr("Marks of the way chosen")), way_legend_place});
  return part;
}

}  // namespace scalpmark::viewer
