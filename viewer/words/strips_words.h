#pragma once

#include "geometry/base/message.h"
#include "geometry/hands/with_strips.h"

namespace scalpmark::viewer {

/// What strips of paper gain over a tape that is read, on average; or that they gain nothing here.
[[nodiscard]] geometry::Message strips_sentence(const geometry::WithStrips& strips);

}  // namespace scalpmark::viewer
