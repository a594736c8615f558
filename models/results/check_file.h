#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "geometry/hands/cap_today.h"
#include "geometry/hands/check.h"
#include "geometry/hands/find_by_tapes.h"
#include "geometry/head/head.h"

namespace scalpmark::models {

/// What was asked and what came of it.
struct CheckFound {
  std::optional<geometry::FoundMark> site, edge;  ///< empty for a mark that was not measured
  geometry::CheckLimits limits;
  std::optional<geometry::Check> check;   ///< empty where a mark was not taken
  std::optional<geometry::CapToday> cap;  ///< empty where no brim heights were given
};

/// Whether both marks are known well enough for a verdict (FoundMark::is_sure).
[[nodiscard]] bool is_sure(const CheckFound& found);

/// A check of today's marks as JSON (format scalpmark-check, version 1; models/schema/check.schema.json).
/// Lengths are written to 0.001 mm, directions from the planned pulse: forward, and toward the midline. The
/// verdict, which is that of the marks whatever the cap says, is `agrees` or `move` where the marks are sure,
/// else `unsure`.
[[nodiscard]] std::string check_json(const geometry::Head& head, const CheckFound& found);
/// Whole or not at all.
void write_check(const std::filesystem::path& file, const geometry::Head& head, const CheckFound& found);

}  // namespace scalpmark::models
