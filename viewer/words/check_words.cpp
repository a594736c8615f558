#include "viewer/words/check_words.h"

#include <cmath>

namespace scalpmark::viewer {

using geometry::Check;
using geometry::Message;
using geometry::number;
using geometry::Verdict;

namespace {

Message where_pulse_lands(const Check& c) {
  return Message::of("the pulse lands %1 mm from the treatment site", number(c.pulse_off_mm));
}

/// "3.2 mm forward and 1 mm away from the midline"
Message offset(const Check& c) {
  const auto ahead = number(std::abs(c.forward_mm)), aside = number(std::abs(c.outward_mm));
  const Message along =
      c.forward_mm < 0 ? Message::of("%1 mm backward", ahead) : Message::of("%1 mm forward", ahead);
  const Message across = c.outward_mm < 0 ? Message::of("%1 mm toward the midline", aside)
                                          : Message::of("%1 mm away from the midline", aside);
  return Message::of("%1 and %2", along, across);
}

Message how_coil_stands(const Check& c) {
  const auto stands = number(c.angle_deg, 0), off = number(std::abs(c.angle_error_deg)),
             planned = number(c.planned_deg, 0);
  return c.angle_error_deg < 0
             ? Message::of("the coil stands at %1 degrees to the midline, %2 less than the %3 planned",
                           stands, off, planned)
             : Message::of("the coil stands at %1 degrees to the midline, %2 more than the %3 planned",
                           stands, off, planned);
}

}  // namespace

Message check_sentence(const Check& c) {
  const Message pulse = where_pulse_lands(c), angle = how_coil_stands(c);
  const auto pulse_limit = number(c.limits.pulse_mm), angle_limit = number(c.limits.angle_deg);
  switch (c.verdict) {
    case Verdict::good:
      return Message::of("Good: %1, and %2.", pulse, angle);
    case Verdict::pulse_off:
      return Message::of(
          "Pulse off: %1 (%2), more than the %3 mm allowed; measure again and make both marks new.", pulse,
          offset(c), pulse_limit);
    case Verdict::angle_off:
      return c.angle_error_deg > 0
                 ? Message::of(
                       "Angle off: %1, over the %2 degrees allowed; turn the front edge away from the midline and make the edge mark new.",
                       angle, angle_limit)
                 : Message::of(
                       "Angle off: %1, over the %2 degrees allowed; turn the front edge toward the midline and make the edge mark new.",
                       angle, angle_limit);
    case Verdict::both_off:
      return Message::of(
          "Pulse and angle off: %1 (%2), more than the %3 mm allowed, and %4, over the %5 degrees allowed; measure again and make both marks new.",
          pulse, offset(c), pulse_limit, angle, angle_limit);
  }
  return {};
}

}  // namespace scalpmark::viewer
