// The coil's angle, lying on the skin: the midline direction (forward) through the pulse point, the front
// axis, and the arc between them with its degrees.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "viewer/stage/things/things.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

ShowThing show_angle;

namespace {

constexpr double line_mm = 46, arc_corner_every_mm = 2;
constexpr double arc_mm = 34, corner_every_deg = 3;
constexpr double reach_of_drop_mm = 80;
constexpr double arc_line_px = 2, arc_halo_px = 3.6, line_lift_mm = 2.2, halo_lift_mm = 1.9;

/// From the coil's face straight down onto the skin, so that the angle on the skin is the coil's.
Vector3d dropped(const Showing& now, double angle_deg, double along_mm) {
  const geometry::Placement& placement = now.placement;
  const geometry::Surface& skin = now.head.skin();
  const double a = angle_deg * std::numbers::pi / 180;
  const Vector3d way = std::cos(a) * placement.forward + std::sin(a) * placement.inward;
  const Vector3d above = placement.pulse + along_mm * way + reach_of_drop_mm / 2 * placement.normal;
  if (const auto hit = skin.ray_hit(above, -placement.normal, reach_of_drop_mm))
    return skin.position(hit->point);
  return skin.position(skin.closest(placement.pulse + along_mm * way));
}

}  // namespace

Part show_angle(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::angle;
  if (!now.shown.has(Thing::angle)) return part;
  const double angle_deg = now.placement.angle_deg;
  std::vector<Vector3d> forward, front, arc;
  for (double mm = 0; mm <= line_mm; mm += arc_corner_every_mm) {
    forward.push_back(dropped(now, 0, mm));
    front.push_back(dropped(now, angle_deg, mm));
  }
  const int steps = std::max(2, static_cast<int>(std::abs(angle_deg) / corner_every_deg));
  for (int i = 0; i <= steps; ++i) arc.push_back(dropped(now, angle_deg * i / steps, arc_mm));
  for (const auto* line : {&forward, &front, &arc})
    part.lines.push_back({*line, arc_halo_px, Role::halo, halo_lift_mm});
  part.lines.push_back({std::move(forward), arc_line_px, Role::angle, line_lift_mm});
  part.lines.push_back({std::move(front), arc_line_px, Role::front_axis, line_lift_mm});
  part.lines.push_back({std::move(arc), arc_line_px, Role::angle, line_lift_mm});

  Label label;
  label.text = in_degrees(angle_deg);
  label.clear_px = 5;
  label.priority = label_priority::angle;
  label.may_go_far = true;
  label.bold = true;
  label.size_px = 16;
  part.words.push_back({dropped(now, angle_deg / 2, arc_mm), now.placement.normal, label});

  around.legend.push_back({LegendRow::Sample::line, Shape::dot, Role::angle,
                           words(Words::tr("Forward (midline direction)")), at_angle_in_legend});
  around.legend.push_back({LegendRow::Sample::line, Shape::dot, Role::front_axis,
                           words(Words::tr("Front axis of the coil")), at_angle_in_legend});
  return part;
}

}  // namespace scalpmark::viewer
