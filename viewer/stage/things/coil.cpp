// The coil where it lies: translucent casing with drawn edges, windings inside.
#include "viewer/stage/things/things.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

ShowThing show_coil;

Part show_coil(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::coil;
  part.pickable = false;
  const Shown& shown = now.shown;
  if (!shown.has(Thing::coil)) return part;
  const geometry::Placement& placement = now.placement;
  CoilBody body;
  body.coil = now.the_case.coil.model;
  body.origin = placement.pulse + placement.lift_mm * placement.normal;
  body.right = placement.front.cross(placement.normal);
  body.front = placement.front;
  body.normal = placement.normal;
  // Colours are read off the map of gaps; nothing tints them.
  body.filled = !(shown.has(Thing::gaps) && shown.gaps);
  for (auto& rim : rims(body)) part.lines.push_back({std::move(rim), 1.3, Role::casing, 0});
  if (shown.has(Thing::angle) || shown.has(Thing::edge_marks)) {
    if (const auto& mark = body.coil.front_mark) {
      const Vector3d middle = body.origin + mark->centre.x() * body.right + mark->centre.y() * body.front;
      part.lines.push_back(
          {{middle - mark->length_mm / 2 * body.right, middle + mark->length_mm / 2 * body.right},
           2.4,
           Role::front_axis,
           1});
    }
    part.spots.push_back({placement.edge, 3.2, Role::front_axis, 1});
  }
  if (body.filled)
    around.legend.push_back({LegendRow::Sample::coil, Shape::dot, Role::windings,
                             words(Words::tr("Coil and windings")), at_coil_in_legend});
  else
    around.legend.push_back({LegendRow::Sample::line, Shape::dot, Role::casing,
                             words(Words::tr("Coil's outline")), at_coil_in_legend});
  part.coil = std::move(body);
  return part;
}

}  // namespace scalpmark::viewer
