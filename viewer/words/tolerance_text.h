#pragma once

#include <string>

#include "geometry/hands/tolerance.h"

namespace scalpmark::viewer {

/// A tolerance as a technician reads it on a terminal: how far off, what it comes from, the habit that would
/// help, what it rests on. Plain text, lines of at most 80 characters.
[[nodiscard]] std::string tolerance_text(const geometry::Tolerance& tolerance,
                                         const geometry::HandErrors& errors);

}  // namespace scalpmark::viewer
