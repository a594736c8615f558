#include "viewer/sheet/views.h"

#include <Eigen/Geometry>
#include <cmath>
#include <set>
#include <utility>

#include "geometry/check.h"
#include "viewer/picture.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

/// Printed 88 mm wide: 300 dots to the inch.
constexpr PictureSize printed{1040, 800};
/// Text of 14 pixels in a picture 800 high comes out at about 7 points.
constexpr double text_ratio = 1.9;

/// Half way between front and the side, a little from above, where coil and face are both seen.
Gaze front_and_side(const geometry::HeadAxes& axes, geometry::Side side) {
  const Vector3d aside = side == geometry::Side::left ? Vector3d(-axes.right) : axes.right;
  const Vector3d way = (axes.front + aside + 0.45 * std::sqrt(2.0) * axes.up).normalized();
  return {way, (axes.up - axes.up.dot(way) * way).normalized()};
}

/// A small picture shows the few landmarks that staff look for, and the chosen rule's mark; the sheet's
/// tables say the rest.
geometry::Plan with_few_marks(geometry::Plan plan, geometry::MarkRule rule) {
  static const std::set<std::string> kept{"Nz", "Iz", "Cz", "Fpz", "Fz", "F3", "F4", "C3", "C4", "T7", "T8"};
  std::erase_if(plan.landmarks, [](const geometry::Landmark& l) { return !kept.contains(l.name); });
  auto& marks = plan.treatment.edge_mark;
  if (rule != geometry::MarkRule::tape) marks.tape.reset();
  if (rule != geometry::MarkRule::drop) marks.drop.reset();
  if (rule != geometry::MarkRule::nearest) marks.nearest.reset();
  return plan;
}

}  // namespace

std::vector<SheetView> sheet_views(const geometry::Head& head, const geometry::Case& entered,
                                   const geometry::Plan& whole) {
  const geometry::Plan plan = with_few_marks(whole, entered.coil.mark_rule);
  const geometry::Side side = geometry::side_of(plan.treatment);
  const bool left = side == geometry::Side::left;
  Picture picture(printed);
  picture.stage().set_pixel_ratio(text_ratio * Picture::pixel_ratio());
  std::vector<SheetView> views;
  const auto draw = [&](std::string caption, const Gaze& gaze, std::set<Thing> things,
                        const geometry::Plan& drawn) {
    Shown shown;
    shown.things = std::move(things);
    shown.caution = false;  // the sheet says it in print
    picture.stage().show(head, entered, drawn, shown);
    picture.stage().look(gaze);
    views.push_back({std::move(caption), printed.width, printed.height, picture.draw()});
  };
  // From the side the vertex lies on the skyline, among the hotspot's and the site's labels.
  geometry::Plan aside = plan;
  std::erase_if(aside.landmarks, [](const geometry::Landmark& l) { return l.name == "Cz"; });
  using enum Thing;
  draw(left ? "The patient's left side" : "The patient's right side",
       gaze(left ? View::left : View::right, plan.axes, plan.treatment),
       {skin, landmarks, tapes, hotspot, treatment, coil, edge_marks, labels}, aside);
  draw("From above", gaze(View::above, plan.axes, plan.treatment),
       {skin, landmarks, grid, hotspot, treatment, coil, angle, edge_marks, labels}, plan);
  draw(left ? "From the front and the left" : "From the front and the right", front_and_side(plan.axes, side),
       {skin, hotspot, treatment, coil, angle, edge_marks, labels}, plan);
  return views;
}

}  // namespace scalpmark::viewer
