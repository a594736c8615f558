#pragma once

#include "geometry/coil/pose.h"
#include "geometry/field/round_head.h"
#include "geometry/field/sphere_field.h"

namespace scalpmark::geometry {

/// How deep and how wide, as Deng, Lisanby and Peterchev 2013 (Brain Stimul 6:1-13) define it (memory): in a
/// round head whose brain begins 15 mm under the skin (their 85 and 70 mm), the deepest that the field still
/// has half of its strongest value in the brain, and the volume that has as much, divided by that depth.
struct DepthAndSpread {
  double half_depth_mm = 0;  ///< under the brain's surface
  double spread_cm2 = 0;
};
inline constexpr double deng_brain_depth_mm = 15;
/// A tenth of a second or so.
[[nodiscard]] DepthAndSpread depth_and_spread(const SphereField& field, const RoundHead& round,
                                              const CoilPose& pose);

}  // namespace scalpmark::geometry
