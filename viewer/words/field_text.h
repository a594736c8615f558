#pragma once

#include <string>

#include "geometry/plan/case.h"
#include "models/results/field_file.h"

namespace scalpmark::viewer {

/// A coil's field as the terminal says it. `where`: "on the treatment site".
[[nodiscard]] std::string field_text(const geometry::CoilField& field, const geometry::Case& the_case,
                                     const models::FieldAsked& asked, const std::string& where);

}  // namespace scalpmark::viewer
