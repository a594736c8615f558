#include "viewer/sheet/views.h"

#include <Eigen/Geometry>
#include <cmath>
#include <set>
#include <utility>

#include "geometry/hands/check.h"
#include "viewer/picture/picture.h"
#include "viewer/words/words.h"

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
const std::set<std::string> few_landmarks{"Nz", "Iz", "Cz", "Fpz", "Fz", "F3", "F4", "C3", "C4", "T7", "T8"};

}  // namespace

struct SheetViews::Parts {
  geometry::Head head;
  geometry::Case the_case;
  geometry::Plan plan;
  std::shared_ptr<const geometry::Tolerance> by_hand;
  Display display;  // goes last
  Picture picture{display, printed};
};

SheetViews::SheetViews(const geometry::Head& head, const geometry::Case& the_case, const geometry::Plan& plan,
                       std::shared_ptr<const geometry::Tolerance> by_hand)
    : parts_(new Parts{head, the_case, plan, std::move(by_hand), {}}) {
  parts_->picture.stage().set_pixel_ratio(text_ratio * Picture::pixel_ratio());
}

SheetViews::~SheetViews() = default;

SheetView SheetViews::draw(int which) {
  Parts& p = *parts_;
  const geometry::Side side = geometry::side_of(p.plan.treatment);
  const bool left = side == geometry::Side::left;
  const auto draw = [&](std::string caption, const Gaze& gaze, std::set<Thing> things,
                        std::set<std::string> landmarks) {
    Shown shown;
    shown.things = std::move(things);
    shown.landmarks = std::move(landmarks);
    shown.only_rule = p.the_case.coil.laid_by;
    shown.brief = true;
    shown.tolerance = p.by_hand;
    shown.caution = false;  // the sheet says it in print
    p.picture.stage().show(p.head, p.the_case, p.plan, shown);
    p.picture.stage().look(gaze);
    return SheetView{std::move(caption), printed.width, printed.height, p.picture.draw()};
  };
  using enum Thing;
  switch (which) {
    case 0: {
      // From the side the vertex lies on the skyline, among the hotspot's and the site's labels.
      std::set<std::string> but_vertex = few_landmarks;
      but_vertex.erase("Cz");
      return draw(words(left ? Words::tr("The patient's left side") : Words::tr("The patient's right side")),
                  gaze(left ? View::left : View::right, p.plan.axes, p.plan.treatment),
                  {skin, landmarks, tapes, hotspot, treatment, coil, edge_marks, wanted, labels}, but_vertex);
    }
    case 1:
      return draw(words(Words::tr("From above")), gaze(View::above, p.plan.axes, p.plan.treatment),
                  {skin, landmarks, grid, hotspot, treatment, coil, angle, edge_marks, wanted, labels},
                  few_landmarks);
    default:
      return draw(words(left ? Words::tr("From the front and the patient's left")
                             : Words::tr("From the front and the patient's right")),
                  front_and_side(p.plan.axes, side),
                  {skin, hotspot, treatment, tolerance, coil, angle, edge_marks, labels}, few_landmarks);
  }
}

std::vector<SheetView> sheet_views(const geometry::Head& head, const geometry::Case& the_case,
                                   const geometry::Plan& plan,
                                   std::shared_ptr<const geometry::Tolerance> by_hand) {
  SheetViews drawer(head, the_case, plan, std::move(by_hand));
  std::vector<SheetView> views;
  views.reserve(SheetViews::count);
  for (int i = 0; i < SheetViews::count; ++i) views.push_back(drawer.draw(i));
  return views;
}

}  // namespace scalpmark::viewer
