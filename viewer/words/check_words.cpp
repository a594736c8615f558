#include "viewer/words/check_words.h"

#include <cmath>
#include <vector>

namespace scalpmark::viewer {

using geometry::Check;
using geometry::Message;
using geometry::number;
using geometry::Verdict;

namespace {

constexpr double least_move_mm = 0.5, least_turn_deg = 0.5;  // less rounds to nothing

Message to_midline(double deg) {
  const auto by = number(std::abs(deg), 0);
  return std::lround(deg) < 0 ? Message::of("%1 degrees away from the midline", by)
                              : Message::of("%1 degrees to the midline", by);
}

Message how_coil_stands(const Check& c) {
  const Message stands = to_midline(c.angle_deg);
  const auto off = number(std::abs(c.angle_error_deg), 0);
  if (std::abs(c.angle_error_deg) < least_turn_deg)
    return Message::of("the coil stands at %1, as wanted", stands);
  return c.angle_error_deg < 0
             ? Message::of("the coil stands at %1, %2 degrees too far away from the midline", stands, off)
             : Message::of("the coil stands at %1, %2 degrees too far toward the midline", stands, off);
}

Message pulse_goes(const Check& c, const LengthInWords& length) {
  return Message::of("the pulse goes %1 from the site", length(c.pulse_off_mm));
}

Message turn(const Check& c) {
  const auto by = number(std::abs(c.angle_error_deg), 0);
  return c.angle_error_deg > 0 ? Message::of("turned %1 degrees away from the midline", by)
                               : Message::of("turned %1 degrees toward the midline", by);
}

}  // namespace

Message move_in_words(const Check& c, const LengthInWords& length) {
  std::vector<Message> parts;
  if (std::abs(c.forward_mm) >= least_move_mm)
    parts.push_back(c.forward_mm < 0 ? Message::of("%1 forward", length(-c.forward_mm))
                                     : Message::of("%1 backward", length(c.forward_mm)));
  if (std::abs(c.outward_mm) >= least_move_mm)
    parts.push_back(c.outward_mm < 0 ? Message::of("%1 away from the midline", length(-c.outward_mm))
                                     : Message::of("%1 toward the midline", length(c.outward_mm)));
  if (std::abs(c.angle_error_deg) >= least_turn_deg) parts.push_back(turn(c));
  if (parts.empty()) return {};
  Message all = parts.front();
  for (std::size_t i = 1; i < parts.size(); ++i) all = Message::of("%1, %2", all, parts[i]);
  return all;
}

Message check_sentence(const Check& c, const LengthInWords& length) {
  const Message pulse = pulse_goes(c, length), stands = how_coil_stands(c);
  const auto allowed = length(c.limits.pulse_mm);
  const auto angle_allowed = number(c.limits.angle_deg);
  switch (c.verdict) {
    case Verdict::good:
      return Message::of("The marks agree with the plan: laid by them, %1, and %2.", pulse, stands);
    case Verdict::pulse_off:
      return Message::of("Move the coil: %1; then draw both marks new. As they are, %2, and %3 are allowed.",
                         move_in_words(c, length), pulse, allowed);
    case Verdict::angle_off:
      return Message::of(
          "Turn the coil over the site mark: %1; then draw the edge mark new. As it is, %2, and %3 degrees are allowed.",
          turn(c), stands, angle_allowed);
    case Verdict::both_off:
      return Message::of(
          "Move and turn the coil: %1; then draw both marks new. As they are, %2 (%3 allowed), and %4 (%5 degrees allowed).",
          move_in_words(c, length), pulse, allowed, stands, angle_allowed);
  }
  return {};
}

Message by_hand_sentence(const geometry::Tolerance& t, const LengthInWords& length) {
  const geometry::Spread& spread = t.placements > 0 ? t.sampled : t.first_order;
  if (t.placements == 0) return Message::of("By hand, expect about %1.", length(spread.mean_mm));
  return Message::of("By hand, expect about %1: half of the trials lie within %2, 95 of 100 within %3.",
                     length(spread.mean_mm), length(t.half_mm), length(t.most_mm));
}

}  // namespace scalpmark::viewer
