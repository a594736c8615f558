#pragma once

#include <string>

#include "geometry/coil/contact.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::viewer {

/// "touches the left ear"; "touches here" on the scalp, which is where a coil is to rest.
[[nodiscard]] std::string touches(geometry::Region region);

/// "hits the left ear".
[[nodiscard]] std::string hits(geometry::Region region);

}  // namespace scalpmark::viewer
