#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "geometry/base/message.h"
#include "geometry/hands/tolerance.h"
#include "geometry/hands/with_strips.h"

namespace scalpmark::models {

/// A tolerance as JSON (format scalpmark-tolerance, version 1; models/schema/tolerance.schema.json). Lengths
/// are written to 0.001 mm. `plan` and `errors` are what it was worked out from, `habit`
/// the sentence on what would shrink it most, `strips` what strips of paper make of it.
[[nodiscard]] std::string tolerance_json(const geometry::Tolerance& tolerance, const geometry::Plan& plan,
                                         const geometry::HandErrors& errors,
                                         const geometry::ToleranceOptions& options,
                                         const geometry::Message& habit,
                                         const std::optional<geometry::WithStrips>& strips = {});
/// Whole or not at all.
void write_tolerance(const std::filesystem::path& file, const geometry::Tolerance& tolerance,
                     const geometry::Plan& plan, const geometry::HandErrors& errors,
                     const geometry::ToleranceOptions& options, const geometry::Message& habit,
                     const std::optional<geometry::WithStrips>& strips = {});

}  // namespace scalpmark::models
