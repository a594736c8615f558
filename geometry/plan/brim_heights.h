#pragma once

#include <optional>

namespace scalpmark::geometry {

/// How high the brim is over the four points that are felt for, mm along the tape from each toward the
/// vertex (the midline tape over nasion and inion, the coronal tape over the tragi). Empty: not measured, or
/// the brim lies below the point.
struct BrimHeights {
  std::optional<double> nasion_mm, left_tragus_mm, right_tragus_mm, inion_mm;

  friend bool operator==(const BrimHeights&, const BrimHeights&) = default;
};

/// How many of the four were read.
[[nodiscard]] inline int count_of(const BrimHeights& heights) {
  return heights.nasion_mm.has_value() + heights.left_tragus_mm.has_value() +
         heights.right_tragus_mm.has_value() + heights.inion_mm.has_value();
}

}  // namespace scalpmark::geometry
