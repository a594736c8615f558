// The skin under the coil coloured by the gap over it, as far as the scale goes (gap_colours.h), unlit so
// that colours can be compared with the scale; a thin line at every 10 mm; a wedge where the coil touches;
// the gap under the middle of each wing in figures. Beside the head the scale, with what the gap is under
// each wing and what is hit.
#include <algorithm>

#include "viewer/stage/scene/gap_colours.h"
#include "viewer/stage/things/things.h"
#include "viewer/words/coil_words.h"
#include "viewer/words/contact_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

ShowThing show_gaps;

namespace {

constexpr double over_map_mm = 8;
constexpr double middle_px = 2.6, middle_halo_px = 4;
/// Touches this near to each other are one wedge.
constexpr double one_touch_mm = 6;
/// A centre this far off the skin has its gap written beside it.
constexpr double clear_mm = 0.5;
/// From one tick of the scale to the next: a centimetre, half an inch.
constexpr double tick_mm = 10, tick_inch_mm = 12.7;
constexpr int touch_priority = label_priority::touch, middle_priority = 85;

Label label(const std::string& text, double clear_px, int priority, bool bold) {
  Label label;
  label.text = text;
  label.clear_px = clear_px;
  label.may_go_far = true;
  label.priority = priority;
  label.bold = bold;
  return label;
}

void add_touches(const Showing& now, const geometry::Contact& contact, Part& part) {
  for (const auto& touch : contact.touches) {
    const auto known = [&](const Wedge& c) { return (c.at - touch.skin).norm() < one_touch_mm; };
    if (std::any_of(part.wedges.begin(), part.wedges.end(), known)) continue;
    part.wedges.push_back({touch.skin, now.normal_at(touch.skin), over_map_mm,
                           label(touches(touch.region), wedge_height_px + 3, touch_priority, true)});
  }
}

void add_middle(const Showing& now, const Vector3d& at, const std::string& text, Part& part) {
  const Vector3d normal = now.normal_at(at);
  part.spots.push_back({at, middle_halo_px, Role::halo, over_map_mm - 0.2, normal,
                        label(text, middle_px + 3, middle_priority, false)});
  part.spots.push_back({at, middle_px, Role::construction, over_map_mm, normal});
}

void add_middles(const Showing& now, const GapsShown& gaps, Part& part) {
  const geometry::Contact& contact = gaps.contact;
  for (const auto& wing : contact.wings) {
    if (!wing.centre_mm || gaps.map.corners.empty()) continue;
    // A round coil's middle is the pulse point.
    if (contact.wings.size() < 2) continue;
    const auto& middle = *std::min_element(
        gaps.map.corners.begin(), gaps.map.corners.end(), [&](const auto& a, const auto& b) {
          return (a.at - wing.centre).squaredNorm() < (b.at - wing.centre).squaredNorm();
        });
    add_middle(now, middle.skin, words(wing_name(wing.wing)) + " " + small_length(*wing.centre_mm), part);
  }
  if (contact.lift_mm >= clear_mm)
    add_middle(now, contact.pose.pulse, words(Words::tr("centre %1"), {small_length(contact.lift_mm)}), part);
}

GapScale scale(const geometry::Contact& contact) {
  GapScale scale{words(Words::tr("Gap under the coil, %1", "mm or inches"), {small_unit()}),
                 words(Words::tr("touches; a line every %1"), {rough_length(10)}),
                 {},
                 {}};
  const double step_mm = length_unit() == LengthUnit::centimetre ? tick_mm : tick_inch_mm;
  for (double mm = 0; mm <= gap_scale_top_mm; mm += step_mm) scale.ticks.push_back({mm, rough_number(mm)});
  for (const auto& wing : contact.wings)
    scale.rows.push_back(
        {words(Words::tr("%1 %2 to %3", "a part of the coil and its gaps in mm"),
               {words(wing_name(wing.wing)), small_number(wing.least_mm), small_length(wing.most_mm)})});
  if (geometry::on_wings(contact))
    scale.rows.push_back({words(Words::tr("rests on its wings, centre clear")), true});
  for (const auto& hit : contact.hits) scale.rows.push_back({hits(hit.region), true});
  return scale;
}

}  // namespace

Part show_gaps(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::gaps;
  part.pickable = false;
  if (!now.shown.has(Thing::gaps)) return part;
  around.with_column = true;
  if (!now.shown.gaps) return part;
  part.gaps = now.shown.gaps;
  add_touches(now, part.gaps->contact, part);
  add_middles(now, *part.gaps, part);
  GapScale rows = scale(part.gaps->contact);
  if (!rows.rows.empty()) around.gap_scale = std::move(rows);
  return part;
}

}  // namespace scalpmark::viewer
