#pragma once

#include <string>

#include "geometry/head/head.h"

namespace scalpmark::tests {

/// A file of build/reference (scripts/reference-data).
[[nodiscard]] std::string reference_file(const std::string& name);

/// The template MRI head with the published fiducials (standard_1005.elc: Nz, Iz, LPA, RPA), read once.
[[nodiscard]] const geometry::Head& template_head();

}  // namespace scalpmark::tests
