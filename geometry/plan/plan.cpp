#include "geometry/plan/plan.h"

#include <Eigen/Geometry>

namespace scalpmark::geometry {

Side side_of(const Placement& placement) {
  return placement.forward.cross(placement.normal).dot(placement.inward) > 0 ? Side::left : Side::right;
}

}  // namespace scalpmark::geometry
