#pragma once

#include <string>
#include <vector>

#include "geometry/coil/coil.h"

namespace scalpmark::models {

/// The coils that ship (models/data/coils/*.json, compiled in).
[[nodiscard]] const std::vector<geometry::Coil>& coils();

/// Refuses (ModelError) a model that does not ship, naming those that do.
[[nodiscard]] const geometry::Coil& coil(const std::string& model);

}  // namespace scalpmark::models
