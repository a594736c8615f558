#pragma once

#include <string>

#include "geometry/hands/with_strips.h"

namespace scalpmark::viewer {

/// A tolerance as a technician reads it on a terminal: how far off, what it comes from, the habit that would
/// help, what strips of paper gain, what it rests on. Plain text, lines of at most 80 characters.
[[nodiscard]] std::string tolerance_text(const geometry::Tolerance& tolerance,
                                         const geometry::HandErrors& errors,
                                         const geometry::WithStrips& strips);

}  // namespace scalpmark::viewer
