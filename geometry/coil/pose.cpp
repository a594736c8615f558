#include "geometry/coil/pose.h"

#include <Eigen/Geometry>

#include "geometry/base/angles.h"
#include "geometry/coil/underside.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

CoilPose tilted(const CoilPose& pose, const Tilt& tilt) {
  const Eigen::Quaterniond turn(Eigen::AngleAxisd(radians(tilt.roll_deg), pose.front) *
                                Eigen::AngleAxisd(radians(tilt.pitch_deg), pose.right()));
  return {pose.pulse, turn * pose.normal, turn * pose.front};
}

double clearing_lift(const Surface& skin, const Coil& coil, const CoilPose& pose) {
  double lift = 0;
  for (const Underside& underside : undersides(coil))
    if (const auto rise = highest_rise(skin, underside, pose, lift)) lift = rise->mm;
  return lift;
}

}  // namespace scalpmark::geometry
