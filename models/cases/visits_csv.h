#pragma once

#include <string>
#include <string_view>

#include "geometry/plan/visit.h"

namespace scalpmark::models {

// Visits and pulses as tables for a spreadsheet (RFC 4180, UTF-8, decimal point). The names of columns have
// their units. Initials and remarks are written as csv_text() has them. `visit` counts the visits from 1 and
// is what ties the two tables together.

/// One row a visit: date, by, threshold, tapes, brim, whether marked anew, remarks.
[[nodiscard]] std::string visits_csv(const geometry::Visits& visits);
/// One row a pulse: visit, time, spot (both cells empty at the treatment site), output, answer.
[[nodiscard]] std::string pulses_csv(const geometry::Visits& visits);

/// A table's text and its file's name for sentences.
struct NamedTable {
  std::string text, name;
};

/// The visits with those of a table of visits after them, and with the pulses of a table of pulses added to
/// theirs. Numbers in the table of pulses are those of the table of visits, or of `visits` where no such
/// table is given. Columns may stand in any order, and those that are not needed may be missing. All or
/// nothing: refuses (ModelError, naming the file and the line) an unknown column, a missing one, a value as
/// read_visits() refuses it, a number given twice or that is no visit's, and too many of either.
[[nodiscard]] geometry::Visits with_tables(const geometry::Visits& visits, const NamedTable* table_of_visits,
                                           const NamedTable* table_of_pulses);

}  // namespace scalpmark::models
