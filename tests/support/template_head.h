#pragma once

#include <string>

#include "geometry/head/head.h"
#include "geometry/plan/case.h"

namespace scalpmark::tests {

/// A file of build/reference (scripts/reference-data).
[[nodiscard]] std::string reference_file(const std::string& name);

/// The template MRI head with the published fiducials (standard_1005.elc: Nz, Iz, LPA, RPA), read once.
[[nodiscard]] const geometry::Head& template_head();

/// A 70 mm figure-of-eight on it, marks drawn and laid by one rule.
[[nodiscard]] geometry::Case template_case(geometry::MarkRule rule = geometry::MarkRule::tape,
                                           geometry::Side side = geometry::Side::left);

}  // namespace scalpmark::tests
