#pragma once

#include "geometry/base/message.h"
#include "geometry/plan/case.h"

namespace scalpmark::viewer {

/// "tape", "drop", "nearest": a marking rule's name within a sentence.
[[nodiscard]] geometry::Message rule_name(geometry::MarkRule rule);

}  // namespace scalpmark::viewer
