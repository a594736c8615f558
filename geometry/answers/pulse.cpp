#include "geometry/answers/pulse.h"

#include <cstddef>

#include "geometry/base/error.h"

namespace scalpmark::geometry {

void check_pulses(const std::vector<Pulse>& pulses) {
  for (std::size_t i = 0; i < pulses.size(); ++i)
    if (!ranges::output_percent.holds(pulses[i].output_percent))
      throw GeometryError(Message::of(
          "The output of pulse %1 is %2 %; it must be from %3 to %4 %; correct it.", i + 1,
          pulses[i].output_percent, number(ranges::output_percent.low), number(ranges::output_percent.high)));
}

}  // namespace scalpmark::geometry
