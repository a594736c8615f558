#pragma once

#include <optional>
#include <span>
#include <variant>

#include "geometry/base/message.h"
#include "geometry/base/ranges.h"
#include "geometry/plan/case.h"

namespace scalpmark::geometry {

enum class Unit { mm, degrees, percent, grid_rows, grid_columns };

/// A number of a case: declared here once, with what it may be. The reader, the writer and the check of a
/// case go through this list; the case schema is held against it by a test.
struct Setting {
  const char* group;  ///< of the case file: "search"
  const char* key;    ///< in the group: "lateral_mm"
  Range range;
  Unit unit;
  std::variant<double*, std::optional<double>*, int*> (*in)(Case&);
};

/// Its unit in a sentence.
[[nodiscard]] Message unit_of(const Setting& setting);

/// All of them, in the order of the case file.
[[nodiscard]] std::span<const Setting> settings();

/// Refuses (GeometryError, naming it, its range and what it is) a setting out of its range, and a treatment
/// label that is none. Hand errors are looked at by tolerance().
void check_settings(const Case& the_case);

}  // namespace scalpmark::geometry
