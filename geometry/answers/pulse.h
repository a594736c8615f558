#pragma once

#include <vector>

#include "geometry/base/ranges.h"

namespace scalpmark::geometry {

/// One pulse as it was logged: the output in whole percent, as the stimulator shows it, and whether an answer
/// that counts was seen. Which of them count (thumb, index finger, both) is settled before.
struct Pulse {
  int output_percent = 0;
  bool answered = false;

  friend bool operator==(const Pulse&, const Pulse&) = default;
};

/// Refuses (GeometryError) an output that is not from 1 to 100 %, and names the pulse by its number.
void check_pulses(const std::vector<Pulse>& pulses);

}  // namespace scalpmark::geometry
