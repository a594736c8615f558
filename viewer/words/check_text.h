#pragma once

#include <string>

#include "geometry/head/head.h"
#include "models/results/check_file.h"

namespace scalpmark::viewer {

/// A check as a technician reads it on a terminal: how the cap sits where that was measured, each mark with
/// the places that fit its tapes, then where the pulse goes. Plain text, lines of at most 80 characters.
[[nodiscard]] std::string check_text(const models::CheckFound& found, const geometry::Head& head);

}  // namespace scalpmark::viewer
