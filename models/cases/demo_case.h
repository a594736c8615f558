#pragma once

#include "models/cases/case_file.h"

namespace scalpmark::models {

/// The case for trying things out that ships with the program (models/demo/bench-head.json, compiled in).
[[nodiscard]] CaseFile demo_case();
/// Whether a case is still that one: by its label, which whoever makes a case of their own of it changes.
[[nodiscard]] bool is_demo(const geometry::Case& the_case);

}  // namespace scalpmark::models
