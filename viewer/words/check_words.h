#pragma once

#include "geometry/base/message.h"
#include "geometry/hands/check.h"

namespace scalpmark::viewer {

/// A check in one sentence for staff: the verdict, what it rests on, what to do.
[[nodiscard]] geometry::Message check_sentence(const geometry::Check& check);

}  // namespace scalpmark::viewer
