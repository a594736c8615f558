#pragma once

namespace scalpmark::geometry {

/// A side of the patient.
enum class Side { left, right };

[[nodiscard]] constexpr Side other(Side side) {
  return side == Side::left ? Side::right : Side::left;
}

/// The way along the head's left-right axis that leads to that side: -1 left, +1 right.
[[nodiscard]] constexpr double way_to(Side side) {
  return side == Side::left ? -1 : 1;
}

}  // namespace scalpmark::geometry
