#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace scalpmark::models {

/// A row of a table with the line of its file on which it begins, from 1.
struct CsvRow {
  std::size_t line = 0;
  std::vector<std::string> cells;
};

/// A table as comma-separated values (RFC 4180): its first row names the columns.
struct CsvTable {
  std::vector<std::string> columns;
  std::vector<CsvRow> rows;  ///< each with as many cells as there are columns; blank lines are left out
};

/// Reads a table; lines may end in CR LF or LF alone, and a byte order mark is passed over. `name` is the
/// file's, for sentences. Refuses (ModelError, naming the line): text that is not UTF-8 or has zero bytes, a
/// quotation mark out of place or without its second, a row with more or fewer cells than columns, a column
/// named twice, and semicolons between columns.
[[nodiscard]] CsvTable read_csv(std::string_view text, const std::string& name);

/// A row as RFC 4180 writes it, quoted where it must be, CR LF at its end.
[[nodiscard]] std::string csv_row(const std::vector<std::string>& cells);

/// Free text (initials, remarks, names of files) for a cell, so that no spreadsheet takes it for a formula
/// (OWASP, "CSV Injection"): an apostrophe goes before =, +, -, @, a tab or a line break, and before the
/// full-width forms of the four, where a cell begins with one of them, or would where semicolons or tabs
/// divide cells. Numbers of ours are no free text: a minus stays a minus.
[[nodiscard]] std::string csv_text(std::string_view text);
/// That text again. Other text stays as it is, but for the apostrophe somebody else has put there for the
/// same reason.
[[nodiscard]] std::string text_of_csv(std::string_view cell);

}  // namespace scalpmark::models
