#pragma once

#include <string>
#include <string_view>

#include "geometry/coil/coil.h"

namespace scalpmark::models {

/// A coil from its data file (format scalpmark-coil, version 1; models/schema/coil.schema.json). Refuses
/// (ModelError, naming file and key): what strict_json.h refuses, a part whose outline has fewer than three
/// points, runs clockwise or crosses itself, whose top is not above its underside, or which reaches below the
/// flat face; a winding whose outside diameter is not larger than the inside.
[[nodiscard]] geometry::Coil parse_coil(std::string_view json, const std::string& name);

}  // namespace scalpmark::models
