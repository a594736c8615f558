// The cap the marks are made on: a thin veil over the skin, its brim, and its arrow down the nose.
#include <Eigen/Geometry>

#include "viewer/stage/things/things.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

ShowThing show_cap;

namespace {

constexpr int at_cap_in_legend = 75;
/// So thin that skin, marks and tapes are read through it.
constexpr double cap_opacity = 0.34;
constexpr double brim_px = 2.6, arrow_px = 3;
constexpr double cap_over_skin_mm = 1.5;  ///< as the tape lines
/// The arrow's barbs reach this far back and to either side, mm.
constexpr double barb_back_mm = 7, barb_aside_mm = 5;

}  // namespace

Part show_cap(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::cap;
  part.pickable = false;
  if (!now.shown.has(Thing::cap) || !now.shown.cap) return part;
  const geometry::CapVeil& cap = *now.shown.cap;
  part.body = Body{cap.cloth, Role::cloth, 0.6, 0.4, cap_opacity};
  part.lines.push_back({cap.brim, brim_px, Role::cap, cap_over_skin_mm});
  part.lines.push_back({cap.arrow, arrow_px, Role::cap, cap_over_skin_mm});
  if (cap.arrow.size() > 1) {
    const Vector3d tip = cap.arrow.back();
    const Vector3d down = (tip - cap.arrow[cap.arrow.size() - 2]).normalized();
    const Vector3d aside = now.normal_at(tip).cross(down).normalized();
    for (const double way : {-barb_aside_mm, barb_aside_mm})
      part.lines.push_back(
          {{tip - barb_back_mm * down + way * aside, tip}, arrow_px, Role::cap, cap_over_skin_mm});
  }
  around.legend.push_back({LegendRow::Sample::line, Shape::dot, Role::cap,
                           words(Words::tr("Cap: brim, and arrow down the nose")), at_cap_in_legend});
  return part;
}

}  // namespace scalpmark::viewer
