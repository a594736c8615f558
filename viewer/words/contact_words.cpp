#include "viewer/words/contact_words.h"

#include <cmath>

#include "viewer/words/numbers.h"

namespace scalpmark::viewer {

using geometry::Contact;
using geometry::EightWays;
using geometry::Message;
using geometry::number;
using geometry::Obstacle;
using geometry::Region;
using geometry::Wing;
using geometry::WingGap;

namespace {

/// Where a round model head's field is looked at.
constexpr double field_depth_mm = 20;

Message roll(double deg) {
  return deg > 0 ? Message::of("tilted by %1 degrees, its right side down", number(deg))
                 : Message::of("tilted by %1 degrees, its left side down", number(-deg));
}

Message pitch(double deg) {
  return deg > 0 ? Message::of("tilted by %1 degrees, its front edge up", number(deg))
                 : Message::of("tilted by %1 degrees, its front edge down", number(-deg));
}

Message tilt(const geometry::Tilt& t) {
  if (t.pitch_deg == 0) return roll(t.roll_deg);
  if (t.roll_deg == 0) return pitch(t.pitch_deg);
  return Message::of("%1, and %2", roll(t.roll_deg), pitch(t.pitch_deg));
}

/// "2 mm forward and outward"; "0.1 mm" where no way can be told.
Message moved(double mm, const EightWays& way) {
  const Message along = way.forward > 0 ? Message::of("forward") : Message::of("backward");
  const Message across = way.outward > 0 ? Message::of("outward") : Message::of("toward the midline");
  if (way.forward == 0 && way.outward == 0) return Message::verbatim(small_length(mm));
  if (way.outward == 0) return Message::of("%1 %2", small_length(mm), along);
  if (way.forward == 0) return Message::of("%1 %2", small_length(mm), across);
  return Message::of("%1 %2 and %3", small_length(mm), along, across);
}

/// What lies deeper follows the field, which goes the other way than the axis.
Message field_askew_sentence(const geometry::FieldAskew& field) {
  const Message where = moved(field.moved_mm, field.way);
  const long percent = std::lround(100 * field.left);
  const Message deep = Message::of("%1 cm", number(field_depth_mm / 10));
  // The strongest place lies a little aside of the coil's centre, and a small tilt can bring it nearer.
  if (percent >= 100)
    return Message::of(
        "In a round model head its field is then strongest, %2 under the skin, %1 from where it is with the coil held flat, and all of it is left at that place.",
        where, deep);
  return Message::of(
      "In a round model head its field is then strongest, %3 under the skin, %1 from where it is with the coil held flat, and %2 % of it is left at that place.",
      where, percent, deep);
}

void say_askew(const Contact& c, const std::optional<geometry::FieldAskew>& field,
               std::vector<Message>& all) {
  const geometry::AskewAxis& axis = *c.askew;
  all.push_back(Message::of("With the coil %1, its axis meets the skin %2 from the pulse point.",
                            tilt(c.tilt), moved(axis.skin_moved_mm, axis.skin_way)));
  if (field)
    all.push_back(field_askew_sentence(*field));
  else if (axis.cortex && axis.cortex_moved_mm > 0)
    all.push_back(Message::of(
        "It meets the cortex %1 from where it would with the coil held flat (on the template; a person's own brain differs).",
        moved(axis.cortex_moved_mm, axis.cortex_way)));
}

void say_rest(const Contact& c, std::vector<Message>& all) {
  const std::string clear = small_length(c.lift_mm);
  if (c.rests_on_wings)
    all.push_back(Message::of("The coil rests on both wings; its centre is %1 clear of the skin.", clear));
  else if (on_centre(c))
    all.push_back(Message::of("The coil rests on its centre."));
  else if (on_wings(c) && !c.touches.empty())
    all.push_back(
        Message::of("The coil rests on its wings, first on its %1; its centre is %2 clear of the skin.",
                    part_name(c.touches.front().part), clear));
  else if (c.hits.empty() && !c.touches.empty())
    all.push_back(
        Message::of("The coil rests on its %1, away from its centre; its centre is %2 clear of the skin.",
                    part_name(c.touches.front().part), clear));
  if (rocks(c))
    all.push_back(*c.rock_deg > 0
                      ? Message::of("Tilted by %1 degrees, its right side down, it would rest on both wings.",
                                    number(*c.rock_deg))
                      : Message::of("Tilted by %1 degrees, its left side down, it would rest on both wings.",
                                    number(-*c.rock_deg)));
}

Message hit(const Obstacle& o) {
  constexpr double worth_saying_mm = 0.1;
  if (o.raises_mm < worth_saying_mm)
    return Message::of("The %1 hits %2; watch out there.", part_name(o.part), region_name(o.region));
  return Message::of(
      "The %1 hits %2, which holds the coil %3 further off; turn the coil, or ask the prescriber about the site.",
      part_name(o.part), region_name(o.region), small_length(o.raises_mm));
}

Message gap(const WingGap& w) {
  const Message wing = wing_name(w.wing);
  const std::string least = small_length(w.least_mm), most = small_length(w.most_mm);
  return w.centre_mm ? Message::of("Under the %1 the gap is %2 to %3, %4 under its middle.", wing, least,
                                   most, small_length(*w.centre_mm))
                     : Message::of("Under the %1 the gap is %2 to %3.", wing, least, most);
}

}  // namespace

Message region_name(Region region) {
  switch (region) {
    case Region::scalp:
      return Message::of("the scalp");
    case Region::left_ear:
      return Message::of("the left ear");
    case Region::right_ear:
      return Message::of("the right ear");
    case Region::face:
      return Message::of("the brow or face");
  }
  return {};
}

Message wing_name(Wing wing) {
  switch (wing) {
    case Wing::left:
      return Message::of("left wing");
    case Wing::right:
      return Message::of("right wing");
    case Wing::whole:
      return Message::of("coil");
  }
  return {};
}

Message part_name(const std::string& part) {
  if (part == "casing") return Message::of("casing");
  if (part == "bridge") return Message::of("bridge");
  if (part == "handle") return Message::of("handle");
  if (part == "left wing") return Message::of("left wing");
  if (part == "right wing") return Message::of("right wing");
  return Message::verbatim(part);
}

std::vector<Message> contact_sentences(const Contact& c, const std::optional<geometry::FieldAskew>& field) {
  std::vector<Message> all;
  if (c.askew) say_askew(c, field, all);
  say_rest(c, all);
  for (const Obstacle& o : c.hits) all.push_back(hit(o));
  for (const WingGap& w : c.wings) all.push_back(gap(w));
  if (c.presses_cap_mm >= geometry::touching_mm)
    all.push_back(Message::of("A cap of %1 would be pressed in by %2; enter its thickness for cap and hair.",
                              small_length(c.cap_mm), small_length(c.presses_cap_mm)));
  return all;
}

}  // namespace scalpmark::viewer
