#include "viewer/words/field_words.h"

#include <cmath>

namespace scalpmark::viewer {

using geometry::CoilField;
using geometry::CoilMoved;
using geometry::Message;
using geometry::MovedRatio;
using geometry::Number;

namespace {

/// A strongest place further off the coil's axis than this, mm, is one of a ring around it.
constexpr double off_axis_mm = 15;
/// Where the field is looked at on a head without a brain.
constexpr double sheet_depth_mm = 20;

/// Lengths in cm and shares in whole percent: a model is told no more closely than that.
Number rounded_cm(double mm) {
  return {std::abs(mm) < 0.5 ? 0.0 : mm / 10, 1, true};
}

long percent(double share) {
  return std::lround(100 * share);
}

}  // namespace

std::optional<double> ratio_of(const std::vector<MovedRatio>& moved, CoilMoved how, double by) {
  for (const MovedRatio& m : moved)
    if (m.moved == how && m.by == by) return m.ratio;
  return {};
}

Message round_head_sentence(const CoilField& field) {
  return Message::of(
      "In a round model head (radius %1 cm; the skin around the coil lies off it by %2 mm on average).",
      rounded_cm(field.round.radius_mm), Number{field.round.misfit_mm, 1, true});
}

Message patch_sentence(const CoilField& field) {
  const geometry::FieldMap& map = field.map;
  Message where = Message::of("on the template's brain");
  if (!field.sheet.of_brain) {
    const Message depth = Message::of("%1 cm", geometry::number(sheet_depth_mm / 10));
    where = Message::of("on a sphere %1 under its skin", depth);
  }
  return Message::of(
      "In it the field is strongest %1 cm from the pulse point (%2), and has more than 71 % of that over %3 "
      "cm\u00b2, more than half over %4 cm\u00b2.",
      rounded_cm(map.from_pulse_mm), where, std::lround(map.seven_tenths.area_cm2),
      std::lround(map.half.area_cm2));
}

Message field_remark(const CoilField& field) {
  return Message::of(
      "Strongest %1 cm from the pulse point; over 71 % of that on %2 cm\u00b2, over half on %3 cm\u00b2.",
      rounded_cm(field.map.from_pulse_mm), std::lround(field.map.seven_tenths.area_cm2),
      std::lround(field.map.half.area_cm2));
}

Message size_of_patch(double cm2) {
  // What is seen of each, measured or taken as usual by us: a coin of 2.6 cm, a walnut of 3.5 cm, a hen's egg
  // of 5.7 by 4.4 cm, a playing card of 8.8 by 6.3 cm, a palm of 9 by 9 cm. Half way between two, in
  // proportion, the larger begins.
  if (cm2 < 7.2) return Message::of("a large coin");
  if (cm2 < 13.8) return Message::of("a walnut");
  if (cm2 < 33) return Message::of("a hen's egg");
  if (cm2 < 67) return Message::of("a playing card");
  return Message::of("the palm of a hand");
}

bool is_ring(const geometry::FieldMap& map) {
  return map.from_axis_mm > off_axis_mm;
}

Message field_line_sentence(const geometry::FieldMap& map) {
  if (is_ring(map))
    return Message::of(
        "It is strongest around the coil's axis, %1 cm away from it, not under its centre, and its line runs "
        "around the axis.",
        rounded_cm(map.from_axis_mm));
  const long deg = std::lround(map.from_front_deg);
  // To a degree is as closely as the angle is told.
  if (std::abs(deg) <= 1)
    return Message::of(
        "Its line there runs along the coil's front axis; in which direction the current runs along it depends on the device.");
  return deg > 0 ? Message::of(
                       "Its line there runs %1 degrees to the right of the coil's front axis; in which "
                       "direction the current runs along it depends on the device.",
                       deg)
                 : Message::of(
                       "Its line there runs %1 degrees to the left of the coil's front axis; in which "
                       "direction the current runs along it depends on the device.",
                       -deg);
}

Message gap_loss_sentence(const std::vector<MovedRatio>& moved) {
  const auto one = ratio_of(moved, CoilMoved::gap, 1), five = ratio_of(moved, CoilMoved::gap, 5),
             ten = ratio_of(moved, CoilMoved::gap, 10);
  if (!one || !five || !ten || !(*one > 0)) return {};
  return Message::of(
      "A gap of %4 leaves %1 % of it, one of %5 %2 %: each %6 more asks for about %3 % more of the output in "
      "use (in people about 3 % of the device's full output were measured, Stokes et al. 2005).",
      percent(*five), percent(*ten), percent(1 / *one - 1), Message::of("%1 mm", 5), Message::of("%1 mm", 10),
      Message::of("%1 mm", 1));
}

Message field_caution() {
  return Message::of(
      "Not this patient's field: no dose, no depth reached and no effect follow from it. Training and "
      "illustration only.");
}

std::vector<Message> field_sentences(const CoilField& field, const std::vector<MovedRatio>& moved) {
  std::vector<Message> all{round_head_sentence(field), patch_sentence(field), field_line_sentence(field.map)};
  if (Message gap = gap_loss_sentence(moved); !gap.empty()) all.push_back(std::move(gap));
  return all;
}

}  // namespace scalpmark::viewer
