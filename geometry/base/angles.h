#pragma once

#include <cmath>
#include <numbers>

namespace scalpmark::geometry {

using std::numbers::pi;

[[nodiscard]] constexpr double radians(double deg) {
  return deg * pi / 180;
}

[[nodiscard]] constexpr double degrees(double rad) {
  return rad * 180 / pi;
}

/// The same direction within -180 to 180 degrees.
[[nodiscard]] inline double wrapped_deg(double deg) {
  return std::remainder(deg, 360);
}

}  // namespace scalpmark::geometry
