// Tags A, B, ... at places that fit a mark's tapes alike.
#include "viewer/stage/things/things.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_places;

namespace {

constexpr int places_legend = 25;
/// The letter must be read across the room; it is what staff choose by.
constexpr double letter_px = 19;

}  // namespace

Part show_places(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::places;
  if (!now.shown.has(Thing::places)) return part;
  for (const PlaceShown& place : now.shown.places) {
    Mark mark = now.mark(Thing::places, "place " + place.tag, Shape::tag, Role::todays, place.at,
                         now.plan.axes.right);
    Label label;
    label.text = place.tag;
    label.clear_px = reach_px(Shape::tag) + 2;
    label.may_go_far = true;
    label.priority = label_priority::tag;
    label.bold = true;
    label.size_px = letter_px;
    mark.label = label;
    part.marks.push_back(std::move(mark));
  }
  if (!part.marks.empty())
    around.legend.push_back({LegendRow::Sample::shape, Shape::tag, Role::todays,
                             words(Words::tr("Places that fit today's tapes")), places_legend});
  return part;
}

}  // namespace scalpmark::viewer
