#pragma once

#include "geometry/plan/case.h"

namespace scalpmark::geometry {

/// The case on that side: a treatment at F3 becomes one at F4.
void lay_on_side(Case& the_case, Side side);

}  // namespace scalpmark::geometry
