#pragma once

#include <nlohmann/json.hpp>

#include "geometry/base/message.h"

namespace scalpmark::viewer {

/// A message for a page, which says it in its own language: "pattern" and "parts", each text, a number
/// ("value", "decimals", "padded") or another message.
[[nodiscard]] nlohmann::ordered_json message_json(const geometry::Message& message);

}  // namespace scalpmark::viewer
