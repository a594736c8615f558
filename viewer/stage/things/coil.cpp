// The coil where it lies: translucent casing with drawn edges, windings inside. Tried by hand it is hollow,
// with broken edges, and a headline says so.
#include <algorithm>
#include <utility>

#include "viewer/stage/things/things.h"
#include "viewer/words/in_hand_words.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

ShowThing show_coil;

namespace {

/// A closed line as strokes with gaps between them.
void add_strokes(const std::vector<Vector3d>& rim, Part& part) {
  constexpr double stroke_mm = 7, gap_mm = 5;
  Line stroke{{}, 1.6, Role::casing, 0};
  double left_mm = stroke_mm;
  bool drawn = true;
  for (std::size_t i = 1; i < rim.size(); ++i) {
    Vector3d at = rim[i - 1];
    if (drawn && stroke.points.empty()) stroke.points.push_back(at);
    for (double to_go = (rim[i] - at).norm(); to_go > 0;) {
      const double go = std::min(left_mm, to_go);
      at += go / to_go * (rim[i] - at);
      to_go -= go;
      left_mm -= go;
      if (drawn) stroke.points.push_back(at);
      if (left_mm > 0) continue;
      if (drawn) part.lines.push_back(std::exchange(stroke, {{}, 1.6, Role::casing, 0}));
      drawn = !drawn;
      left_mm = drawn ? stroke_mm : gap_mm;
      if (drawn) stroke.points.push_back(at);
    }
  }
  if (drawn && stroke.points.size() > 1) part.lines.push_back(std::move(stroke));
}

/// A line printed on the casing: over the middle of its front edge and down it.
void add_print(const CoilBody& body, const geometry::FrontMark& mark, Part& part) {
  constexpr double back_mm = 18, print_px = 3, over_casing_mm = 1.5;
  double top_mm = 0;
  for (const auto& each : body.coil.parts)
    if (each.name != "handle") top_mm = std::max(top_mm, each.top_mm);
  const auto at = [&](double forward_mm, double high_mm) -> Vector3d {
    return body.origin + forward_mm * body.front + high_mm * body.normal;
  };
  const double edge_mm = mark.centre.y();
  part.lines.push_back({{at(edge_mm - back_mm, top_mm), at(edge_mm, top_mm), at(edge_mm, 0)},
                        print_px,
                        Role::front_axis,
                        over_casing_mm});
}

}  // namespace

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
  body.filled = !(shown.has(Thing::gaps) && shown.gaps) && !shown.in_hand;
  body.solid = shown.practise != nullptr;
  if (shown.in_hand) {
    for (const auto& rim : rims(body)) add_strokes(rim, part);
    around.headline = in_hand_headline();
  } else {
    for (auto& rim : rims(body)) part.lines.push_back({std::move(rim), 1.3, Role::casing, 0});
  }
  if (shown.has(Thing::angle) || shown.has(Thing::edge_marks) || body.solid) {
    if (const auto& mark = body.coil.front_mark) {
      const Vector3d middle = body.origin + mark->centre.x() * body.right + mark->centre.y() * body.front;
      part.lines.push_back(
          {{middle - mark->length_mm / 2 * body.right, middle + mark->length_mm / 2 * body.right},
           2.4,
           Role::front_axis,
           1});
    }
    if (body.solid && body.coil.front_mark) add_print(body, *body.coil.front_mark, part);
    if (!body.solid) part.spots.push_back({placement.edge, 3.2, Role::front_axis, 1});
  }
  if (body.filled)
    around.legend.push_back({LegendRow::Sample::coil, Shape::dot, Role::windings,
                             words(Words::tr("Coil and windings")), at_coil_in_legend,
                             body.coil.windings.size() > 1 ? 2 : 1});
  else
    around.legend.push_back({LegendRow::Sample::line, Shape::dot, Role::casing,
                             words(Words::tr("Coil's outline")), at_coil_in_legend});
  part.coil = std::move(body);
  return part;
}

}  // namespace scalpmark::viewer
