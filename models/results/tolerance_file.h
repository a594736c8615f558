#pragma once

#include <filesystem>
#include <string>

#include "geometry/base/message.h"
#include "geometry/hands/tolerance.h"

namespace scalpmark::models {

/// A tolerance as JSON (format scalpmark-tolerance, version 1; models/schema/tolerance.schema.json). Lengths
/// are written to 0.001 mm. `plan` and `errors` are what it was worked out from, `habit`
/// the sentence on what would shrink it most.
[[nodiscard]] std::string tolerance_json(const geometry::Tolerance& tolerance, const geometry::Plan& plan,
                                         const geometry::HandErrors& errors,
                                         const geometry::ToleranceOptions& options,
                                         const geometry::Message& habit);
/// Whole or not at all.
void write_tolerance(const std::filesystem::path& file, const geometry::Tolerance& tolerance,
                     const geometry::Plan& plan, const geometry::HandErrors& errors,
                     const geometry::ToleranceOptions& options, const geometry::Message& habit);

}  // namespace scalpmark::models
