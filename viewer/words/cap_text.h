#pragma once

#include <string>

#include "geometry/hands/cap_today.h"

namespace scalpmark::viewer {

/// How today's cap sits and what to do, as a technician reads it on a terminal: lines of at most 80
/// characters.
[[nodiscard]] std::string cap_text(const geometry::CapToday& today);

}  // namespace scalpmark::viewer
