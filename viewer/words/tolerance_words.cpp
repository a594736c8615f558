#include "viewer/words/tolerance_words.h"

#include <algorithm>
#include <cmath>

#include "viewer/words/numbers.h"

namespace scalpmark::viewer {

using geometry::Cause;
using geometry::Message;
using geometry::Number;

namespace {

Message habit_against(Cause cause, geometry::MarkRule rule) {
  switch (cause) {
    case Cause::fiducials:
      return Message::of(
          "have a second person feel for the nasion, the inion and both tragi before the tape is laid");
    case Cause::tape:
      return Message::of("read every tape twice, to the millimetre");
    case Cause::marks:
      return Message::of("use a sharp pencil and lay the coil's edge on the middle of its mark");
    case Cause::angle:
      return Message::of(
          "draw the edge mark as a line along the coil's edge, and lay the whole edge on it, so that the angle is kept");
    case Cause::rule:
      return Message::of("make the edge mark and lay the coil by the same rule (%1) at every visit",
                         in_words(rule));
    case Cause::cap:
      return Message::of("check the cap's brim and arrow against the nasion each time it is put on");
    case Cause::tilt:
      return Message::of(
          "look at the coil from the front and from the side, and close the gap on both sides alike");
    case Cause::sight:
      return Message::of("look at every mark past the coil with one eye, straight down the coil's axis");
  }
  return {};
}

Message assumption_of(Cause cause, const geometry::HandErrors& e) {
  const auto size = [](double value) { return geometry::number(value); };
  switch (cause) {
    case Cause::fiducials:
      return Message::of(
          "each of the four points is felt for to %1 mm, chosen to fit what is published of positions found by hand",
          size(e.fiducial_mm));
    case Cause::tape:
      return Message::of("a tape is read to %1 mm, common practice", size(e.tape_mm));
    case Cause::marks:
      return Message::of("a pencil mark is off by %1 mm, a guess", size(e.mark_mm));
    case Cause::angle:
      return Message::of(
          "the eye alone holds the coil's angle to %1 degrees, as was found with cap and marks",
          size(e.angle_deg));
    case Cause::rule:
      return Message::of("in %1 of 100 trials another rule is used, a guess", size(e.other_rule_percent));
    case Cause::cap:
      return Message::of(
          "the cap put on again has slid by %1 mm forward or back and %2 mm to a side and turned by %3 degrees, all guesses",
          size(e.cap_forward_mm), size(e.cap_side_mm), size(e.cap_turn_deg));
    case Cause::tilt:
      return Message::of(
          "the coil tilts by %1 degrees to a side and by as much to front or handle, as was found with cap and marks",
          size(e.tilt_deg));
    case Cause::sight:
      return Message::of("the eye is off the coil's axis by %1 degrees, a guess", size(e.sight_deg));
  }
  return {};
}

}  // namespace

Message cause_name(Cause cause) {
  switch (cause) {
    case Cause::fiducials:
      return Message::of("Finding the four points");
    case Cause::tape:
      return Message::of("Reading the tape");
    case Cause::marks:
      return Message::of("Pencil marks");
    case Cause::angle:
      return Message::of("Coil's angle");
    case Cause::rule:
      return Message::of("Another marking rule");
    case Cause::cap:
      return Message::of("Cap put on again");
    case Cause::tilt:
      return Message::of("Coil's tilt");
    case Cause::sight:
      return Message::of("Look past the coil");
  }
  return {};
}

Message tolerance_sentence(const geometry::Tolerance& t) {
  return Message::of("Half of the trials lie within %1 of the site, 95 of 100 within %2.",
                     tape_length(t.half_mm), tape_length(t.most_mm));
}

Message largest_share_sentence(const geometry::Tolerance& t, const geometry::HandErrors& errors) {
  if (t.causes.empty() || !(t.causes.front().share > 0)) return {};
  const geometry::CauseShare& most = t.causes.front();
  return Message::of("Largest share, %1 %: %2. That follows from the assumption that %3.",
                     std::lround(100 * most.share), cause_name(most.cause),
                     assumption_of(most.cause, errors));
}

Message depth_sentence(const geometry::Tolerance& t) {
  const geometry::DepthSpread& d = t.at_depth;
  const geometry::Spread& spread = t.placements > 0 ? d.sampled : d.first_order;
  const Message whose = d.of_brain ? Message::of("on the template's brain") : Message::of("assumed");
  const auto off = tape_length(spread.mean_mm), down = rough_length(d.depth_mm);
  return d.of_field
             ? Message::of(
                   "At the cortex, %1 under the skin (%2), the place where the field is strongest in a round model head is %3 off on average.",
                   down, whose, off)
             : Message::of("At the cortex, %1 under the skin (%2), %3 on average.", down, whose, off);
}

Message field_left_sentence(const geometry::Tolerance& t) {
  if (!t.field_left) return {};
  return Message::of(
      "Of the field at the wanted place, in a round model head, half of the trials leave at least %1 %, 95 of 100 at least %2 %.",
      std::lround(100 * t.field_left->median), std::lround(100 * t.field_left->worst));
}

Message way_name(geometry::MarkingWay way) {
  switch (way) {
    case geometry::MarkingWay::front:
      return Message::of("Site mark and one front mark");
    case geometry::MarkingWay::front_line:
      return Message::of("Front mark as a line along the edge");
    case geometry::MarkingWay::front_and_side:
      return Message::of("Front mark and side mark");
    case geometry::MarkingWay::corners:
      return Message::of("A mark at both front corners");
  }
  return {};
}

Message best_way_sentence(const geometry::Tolerance& t) {
  if (t.ways.empty()) return {};
  const geometry::WayTried& best = t.ways.back();
  return Message::of(
      "Best way to mark on this head, with these errors: %1 (%2 and %3 degrees off on average).",
      way_name(best.way), tape_length(best.mean_mm), std::lround(best.angle_mean_deg));
}

Message left_out_sentence(const geometry::Tolerance& t) {
  Message names;
  for (const geometry::MarkingWay way : geometry::all_marking_ways)
    if (std::none_of(t.ways.begin(), t.ways.end(), [&](const auto& w) { return w.way == way; }))
      names = names.empty() ? way_name(way) : Message::of("%1; %2", names, way_name(way));
  return names.empty() ? names : Message::of("Left out, as their marks fall off this head: %1.", names);
}

Message habit_sentence(const geometry::Tolerance& t) {
  if (!t.to_halve || !(t.first_order.mean_mm > 0))
    return Message::of("No error is entered, so no habit would change anything.");
  // By the share that first order gives, of the average that is shown beside it.
  const double now_mm = t.placements > 0 ? t.sampled.mean_mm : t.first_order.mean_mm;
  return Message::of("The habit that would help most: %1 (half that error, and %2 on average become %3).",
                     habit_against(t.to_halve->cause, t.rule), tape_length(now_mm),
                     tape_length(now_mm * t.to_halve->halved_mm / t.first_order.mean_mm));
}

}  // namespace scalpmark::viewer
