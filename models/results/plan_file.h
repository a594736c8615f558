#pragma once

#include <filesystem>
#include <string>

#include "geometry/plan/plan.h"

namespace scalpmark::models {

/// A plan as JSON (format scalpmark-plan, version 1; models/schema/plan.schema.json). Lengths are written to
/// 0.001 mm.
[[nodiscard]] std::string plan_json(const geometry::Plan& plan);
/// Whole or not at all.
void write_plan(const std::filesystem::path& file, const geometry::Plan& plan);

}  // namespace scalpmark::models
