#pragma once

#include <vector>

#include "geometry/coil/coil.h"
#include "geometry/coil/contact.h"
#include "geometry/coil/tilt.h"
#include "geometry/field/coil_field.h"

namespace scalpmark::geometry {

/// What is left of the field at the place where it was to be strongest, when the coil is not where it was
/// meant. 1: all. Only the part along the way it was to have is counted, so that a coil that is turned leaves
/// the cosine.
[[nodiscard]] double field_left(const CoilField& meant, const SphereField& now);

/// How the coil is off.
enum class CoilMoved {
  gap,    ///< lifted along its normal, mm
  roll,   ///< its right side down, degrees, clear of the head
  pitch,  ///< its front edge up, degrees, clear of the head
  ahead,  ///< slid over the round head along its front axis, mm
  aside,  ///< slid over the round head to its right, mm
  turn    ///< about its own axis, degrees
};

struct MovedRatio {
  CoilMoved moved = CoilMoved::gap;
  double by = 0;     ///< mm or degrees
  double ratio = 1;  ///< field_left()
};

/// What a coil that is off leaves of the field: 1, 2, 5 and 10 mm of gap, tilts of 5, 10 and 15 degrees,
/// slips of 5 and 10 mm, turns of 10, 20 and 45 degrees.
[[nodiscard]] std::vector<MovedRatio> moved_ratios(const Surface& skin, const Coil& coil,
                                                   const CoilField& meant);

/// Where a coil held askew has its strongest place.
struct FieldAskew {
  FieldThere strongest;
  double moved_mm = 0;  ///< from where it is with the coil held as meant, straight
  EightWays way;
  double left = 1;  ///< field_left()
};
[[nodiscard]] FieldAskew field_askew(const Surface& skin, const Coil& coil, const CoilField& meant,
                                     const Tilt& tilt);

}  // namespace scalpmark::geometry
