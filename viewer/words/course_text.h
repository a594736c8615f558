#pragma once

#include <string>

#include "geometry/answers/course.h"

namespace scalpmark::viewer {

/// A course of visits as a technician reads it on a terminal: a line a visit, then limits and drift. Plain
/// text, lines of at most 80 characters.
[[nodiscard]] std::string course_text(const geometry::Course& course, const geometry::Visits& visits);

}  // namespace scalpmark::viewer
