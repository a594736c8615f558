#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "geometry/base/shared.h"
#include "geometry/plan/brim_heights.h"
#include "geometry/plan/date.h"
#include "geometry/plan/tape_readings.h"

namespace scalpmark::geometry {

/// A spot of the search grid; as a hotspot, the one that answers.
struct GridPosition {
  int row = 0;     ///< -1, 0, 1; +1 is forward
  int column = 0;  ///< -1, 0, 1; +1 is outward, away from the midline

  friend bool operator==(const GridPosition&, const GridPosition&) = default;
};

/// What was seen of the relaxed hand after a pulse.
enum class SeenAnswer { none, thumb, index, other };

/// One pulse as it was logged.
struct LoggedPulse {
  std::optional<GridPosition> spot;  ///< none: at the treatment site
  int output_percent = 0;            ///< of the stimulator's most, as it shows it
  SeenAnswer answer = SeenAnswer::none;
  std::optional<TimeOfDay> at;
  std::optional<SeenAnswer> corrected_from;  ///< what was noted first, where that was corrected later

  friend bool operator==(const LoggedPulse&, const LoggedPulse&) = default;
};

/// What was seen and measured at one visit, as entered; nothing is worked out here.
struct Visit {
  Date date;
  std::string by;                        ///< initials; empty unless somebody typed them
  std::vector<LoggedPulse> pulses;       ///< in the order given
  std::optional<int> threshold_percent;  ///< as it was written down
  TapeReadings site_tape, edge_tape;     ///< to the day's two marks; none or two and more of each
  BrimHeights brim;
  bool marked_anew = false;  ///< the marks were drawn anew: what comes from then on has them for reference
  std::string remarks;

  friend bool operator==(const Visit&, const Visit&) = default;
};

/// In the order entered. Copies of a case share them: a course may have forty visits of 200 pulses.
using Visits = std::vector<Shared<Visit>>;

/// More visits, and more pulses at one, than any course has.
inline constexpr std::size_t most_visits = 400, most_pulses = 1000;

/// The visits dated before the one entered before them. Two on one day are in order.
[[nodiscard]] std::vector<std::size_t> out_of_order(const Visits& visits);

}  // namespace scalpmark::geometry
