#pragma once

#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// The way from the point where a placement's pulse was wanted to where it goes, straight, seen in the coil's
/// face, mm.
struct PulseShift {
  double forward_mm = 0;  ///< along the parasagittal direction; backward is negative
  double inward_mm = 0;   ///< toward the midline; outward is negative
  double front_mm = 0;    ///< along the coil's front axis; toward the handle is negative
  double beside_mm = 0;   ///< square to the front axis, to its right; to its left is negative
};
[[nodiscard]] PulseShift pulse_shift(const Placement& placement);

/// Less than this between wanted and real pulse is nothing that a pencil mark could show, mm.
inline constexpr double least_shift_mm = 1;
[[nodiscard]] inline bool is_shifted(const Placement& placement) {
  return placement.wanted_to_pulse_mm > least_shift_mm;
}

/// More than this is another site, and a plan warns of it, mm: half as much again as a step of the search
/// grid. Ours, no source.
inline constexpr double far_shift_mm = 15;

}  // namespace scalpmark::geometry
