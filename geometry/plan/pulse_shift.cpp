#include "geometry/plan/pulse_shift.h"

#include <Eigen/Geometry>

namespace scalpmark::geometry {

PulseShift pulse_shift(const Placement& placement) {
  const Eigen::Vector3d way = placement.pulse - placement.wanted;
  return {way.dot(placement.forward), way.dot(placement.inward), way.dot(placement.front),
          way.dot(placement.front.cross(placement.normal))};
}

}  // namespace scalpmark::geometry
