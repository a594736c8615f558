#pragma once

#include <optional>

namespace scalpmark::geometry {

/// What a tape read from a mark, or from the note of a lost one, along the skin, mm; any two or more of the
/// four.
struct TapeReadings {
  std::optional<double> vertex_mm, nasion_mm, left_tragus_mm, right_tragus_mm;

  friend bool operator==(const TapeReadings&, const TapeReadings&) = default;
};

/// How many of the four were read.
[[nodiscard]] inline int count_of(const TapeReadings& readings) {
  return readings.vertex_mm.has_value() + readings.nasion_mm.has_value() +
         readings.left_tragus_mm.has_value() + readings.right_tragus_mm.has_value();
}

}  // namespace scalpmark::geometry
