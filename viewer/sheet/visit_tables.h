#pragma once

#include <vector>

#include "geometry/plan/plan.h"
#include "viewer/sheet/content.h"

namespace scalpmark::viewer {

/// What the last visit with pulses says of spot and threshold; no rows without one.
[[nodiscard]] SheetTable answers_table(const geometry::Case& the_case, const geometry::Plan& plan);

/// The visits so far, as entered, in tables that each fit a page; none without visits.
[[nodiscard]] std::vector<SheetTable> visits_tables(const geometry::Visits& visits);

}  // namespace scalpmark::viewer
