#pragma once

#include "geometry/coil/coil.h"
#include "geometry/coil/mark_rule.h"

namespace scalpmark::geometry {

/// A coil and how it is held: all that laying it on a head asks of a case. mm and degrees.
struct CoilSetup {
  Coil model;
  double angle_deg = 45;              ///< from forward to the front axis, positive toward the midline
  double centre_to_edge_mm = 60;      ///< along the front axis
  double lift_mm = 0;                 ///< for cap and hair, on top of what keeps the coil out of the head
  MarkRule laid_by = MarkRule::drop;  ///< how its edge is brought over a mark

  friend bool operator==(const CoilSetup&, const CoilSetup&) = default;
};

}  // namespace scalpmark::geometry
