// The line along which an eye sees the coil's edge over the skin, from the eye past the edge to the skin.
#include <cmath>

#include "geometry/base/angles.h"
#include "viewer/stage/things/things.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

ShowThing show_sight;

namespace {

constexpr int legend_place = 42;
constexpr double sight_px = 2, lid_px = 2.5, pupil_px = 5;
/// The eye, from beside: lids from its corner, the front of the eyeball between them, the pupil in it; mm.
constexpr double eye_mm = 22, lids_deg = 30, front_at_mm = 17, pupil_deg = 9;

/// Square to the line of sight, in the plane in which that leans off the coil's axis.
Vector3d across_sight(const geometry::LineOfSight& sight, const geometry::Placement& coil) {
  const Vector3d way = (sight.eye - sight.skin).normalized();
  Vector3d lean = way - way.dot(coil.normal) * coil.normal;
  constexpr double no_lean = 1e-3;
  if (lean.norm() < no_lean) lean = coil.front;
  return (lean - lean.dot(way) * way).normalized();
}

/// As it is drawn in every sketch of rays: it looks along the line of sight.
std::vector<Line> eye_of(const geometry::LineOfSight& sight, const geometry::Placement& coil) {
  const Vector3d looks = (sight.skin - sight.eye).normalized(), across = across_sight(sight, coil);
  const auto at = [&](double mm, double deg) -> Vector3d {
    const double a = geometry::radians(deg);
    return sight.eye + mm * (std::cos(a) * looks + std::sin(a) * across);
  };
  const auto arc = [&](double deg) {
    constexpr int pieces = 8;
    std::vector<Vector3d> points;
    for (int i = 0; i <= pieces; ++i) points.push_back(at(front_at_mm, deg * (2.0 * i / pieces - 1)));
    return points;
  };
  return {{{sight.eye, at(eye_mm, lids_deg)}, lid_px, Role::text, 0.5},
          {{sight.eye, at(eye_mm, -lids_deg)}, lid_px, Role::text, 0.5},
          {arc(lids_deg), lid_px, Role::text, 0.5},
          {arc(pupil_deg), pupil_px, Role::text, 0.5}};
}

}  // namespace

Part show_sight(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::sight;
  if (!now.shown.has(Thing::sight) || !now.shown.sight) return part;
  const geometry::LineOfSight& sight = *now.shown.sight;
  const Vector3d looks = (sight.skin - sight.eye).normalized();
  part.lines.push_back(
      {{sight.eye + front_at_mm * looks, sight.edge, sight.skin}, sight_px, Role::edge_mark, 0.5});
  for (Line& line : eye_of(sight, now.placement)) part.lines.push_back(std::move(line));
  Label label;
  label.text = words(Words::tr("eye"));
  label.may_go_far = true;
  label.priority = label_priority::start;
  part.words.push_back({sight.eye, -looks, label});
  around.legend.push_back({LegendRow::Sample::line, Shape::dot, Role::edge_mark,
                           words(Words::tr("Line of sight past the edge")), legend_place});
  return part;
}

}  // namespace scalpmark::viewer
