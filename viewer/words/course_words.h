#pragma once

#include "geometry/answers/course.h"
#include "geometry/base/message.h"

namespace scalpmark::viewer {

/// What the visits of a stretch show of a drift, with how often such a finding is wrong; says so where they
/// show none, and where they are too few to.
[[nodiscard]] geometry::Message drift_sentence(const geometry::CourseStretch& stretch);
/// The same of the coil's angle; empty where it shows none.
[[nodiscard]] geometry::Message angle_drift_sentence(const geometry::CourseStretch& stretch);
/// The stretch's limits and which of its visits they come from; says so where there are none.
[[nodiscard]] geometry::Message limits_sentence(const geometry::CourseStretch& stretch);

}  // namespace scalpmark::viewer
