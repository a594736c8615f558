#pragma once

#include <filesystem>
#include <string>

#include "geometry/answers/course.h"

namespace scalpmark::models {

/// A course as a table (RFC 4180, decimal point): one row a visit in the order entered, with date and
/// initials as entered, where the coil laid by its marks put the pulse (mm from the plan's treatment site, to
/// 0.1), its angle from the case's (degrees, toward the midline positive), and whether it lies outside the
/// limits of its stretch. Cells are empty where the marks are not known well enough.
[[nodiscard]] std::string course_csv(const geometry::Course& course, const geometry::Visits& visits);
/// Whole or not at all.
void write_course(const std::filesystem::path& file, const geometry::Course& course,
                  const geometry::Visits& visits);

}  // namespace scalpmark::models
