#pragma once

namespace scalpmark::geometry {

/// How far a coil's face is out of tangent, degrees.
struct Tilt {
  double roll_deg = 0;   ///< about the front axis; positive lowers the coil's right side
  double pitch_deg = 0;  ///< about the coil's left-right axis; positive raises the front edge
};

}  // namespace scalpmark::geometry
