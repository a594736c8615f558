#pragma once

#include "geometry/coil/coil_setup.h"
#include "geometry/head/head.h"
#include "geometry/plan/placement.h"

namespace scalpmark::geometry {

/// A coil laid by two marks.
struct LaidOnMarks {
  SurfacePoint pulse;
  double angle_deg = 0;  ///< of the front axis as laid, from forward, positive toward the midline
};

/// Lays the coil the way staff lay it by a site mark and an edge mark: its edge over the edge mark, turned
/// until its centre line, looked at straight down the coil's normal, runs over the site mark. So the pulse
/// point and the angle are those for which the coil's edge mark, by the rule it is laid by, falls on
/// `edge_mark`, and `site` lies in the plane of the coil's normal and front axis. The setup's own angle does
/// not count. The angle is found by the secant method to 0.01 degrees; the pulse point for each angle by
/// pulse_for_mark. Refuses (GeometryError) marks that no placement of the coil fits.
[[nodiscard]] LaidOnMarks lay_on_marks(const Head& head, const CoilSetup& setup, Side side,
                                       const SurfacePoint& site, const SurfacePoint& edge_mark);

/// A coil that was drawn for and laid over its edge mark alone, laid again by its wanted point and its edge
/// mark.
[[nodiscard]] LaidCoil lay_on_both(const Head& head, const CoilSetup& setup, Side side, const LaidCoil& drawn,
                                   TapeDistances tapes);

}  // namespace scalpmark::geometry
