#pragma once

#include <string>

#include "geometry/head/head.h"
#include "geometry/plan/case.h"

namespace scalpmark::viewer {

/// What to check when the cap is on; empty where this head takes no cap (its skin ends too soon).
[[nodiscard]] std::string cap_note(const geometry::Head& head, const geometry::CapSettings& cap);

}  // namespace scalpmark::viewer
