#pragma once

#include <Eigen/Core>
#include <array>
#include <vector>

#include "geometry/coil/coil.h"
#include "geometry/coil/contact.h"
#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// The skin straight below a coil as a mesh, each corner with the gap over it; for drawing.
struct GapMap {
  struct Corner {
    Eigen::Vector2d at{0, 0};       ///< in the coil's frame
    Eigen::Vector3d skin{0, 0, 0};  ///< in the head's frame
    double gap_mm = 0;              ///< along the coil's normal, to the lowest underside over it
  };
  std::vector<Corner> corners;
  std::vector<std::array<int, 3>> triangles;
};

/// The gaps under a coil that rests as `contact` says, at places `step_mm` apart (1 to 10), by rays; those
/// next to the coil's rim are moved onto it, so that the map ends where the coil does. Past the head, and
/// where the skin falls away too steeply to be seen from the coil, there is none. Refuses (GeometryError) a
/// step out of range.
[[nodiscard]] GapMap gap_map(const Surface& skin, const Coil& coil, const Contact& contact,
                             double step_mm = 2);

}  // namespace scalpmark::geometry
