#pragma once

#include <QString>
#include <vector>

#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::window {

/// A tape as it was entered, and the same one on the head in force.
struct TapeBeside {
  QString name;
  double entered_mm = 0, here_mm = 0;
};

/// Those that differ by more than a tape reads wrong: the head is not the one that was measured, or a reading
/// is off.
[[nodiscard]] std::vector<TapeBeside> tapes_that_differ(const geometry::Case& the_case,
                                                        const geometry::Plan& plan);

}  // namespace scalpmark::window
