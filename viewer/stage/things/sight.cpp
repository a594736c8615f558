// The line along which an eye sees the coil's edge over the skin, from the eye past the edge to the skin.
#include "viewer/stage/things/things.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_sight;

namespace {

constexpr int legend_place = 42;
constexpr double sight_px = 2, eye_px = 6;

}  // namespace

Part show_sight(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::sight;
  if (!now.shown.has(Thing::sight) || !now.shown.sight) return part;
  const geometry::LineOfSight& sight = *now.shown.sight;
  part.lines.push_back({{sight.eye, sight.edge, sight.skin}, sight_px, Role::edge_mark, 0.5});
  Spot eye{sight.eye, eye_px, Role::text};
  eye.normal = (sight.eye - sight.skin).normalized();
  Label label;
  label.text = words(Words::tr("eye"));
  label.may_go_far = true;
  label.priority = label_priority::start;
  eye.label = label;
  part.spots.push_back(std::move(eye));
  around.legend.push_back({LegendRow::Sample::line, Shape::dot, Role::edge_mark,
                           words(Words::tr("Line of sight past the edge")), legend_place});
  return part;
}

}  // namespace scalpmark::viewer
