#include "geometry/answers/spot_answers.h"

#include <cstddef>

#include "geometry/base/error.h"

namespace scalpmark::geometry {

void check_spots(const std::vector<SpotAnswers>& spots) {
  constexpr int most_pulses = 1000;
  constexpr std::size_t most_spots = 100;
  if (spots.size() > most_spots)
    throw GeometryError(
        Message::of("There are %1 spots, more than %2; leave some out.", spots.size(), most_spots));
  for (std::size_t i = 0; i < spots.size(); ++i) {
    const SpotAnswers& s = spots[i];
    if (s.pulses < 0 || s.pulses > most_pulses || s.answers < 0 || s.answers > s.pulses)
      throw GeometryError(Message::of(
          "Spot %1 has %2 answers to %3 pulses; there are at most %4 pulses and no more answers; correct it.",
          i + 1, s.answers, s.pulses, most_pulses));
    if (!s.at_mm.allFinite())
      throw GeometryError(Message::of("The place of spot %1 is no number; correct it.", i + 1));
  }
}

}  // namespace scalpmark::geometry
