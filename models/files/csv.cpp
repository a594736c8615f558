#include "models/files/csv.h"

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>

#include "models/files/cut_short.h"
#include "models/files/error.h"

namespace scalpmark::models {

namespace {

/// Cuts text into rows of cells.
class CsvReader {
public:
  CsvReader(std::string_view text, const std::string& name) : text_(text), name_(name) {}

  std::vector<CsvRow> rows() {
    std::vector<CsvRow> rows;
    while (at_ < text_.size()) {
      CsvRow row{line_, {}};
      do row.cells.push_back(cell());
      while (take(','));
      end_line();
      if (row.cells.size() > 1 || !row.cells.front().empty()) rows.push_back(std::move(row));
    }
    return rows;
  }

private:
  bool take(char wanted) {
    if (at_ >= text_.size() || text_[at_] != wanted) return false;
    ++at_;
    return true;
  }
  [[nodiscard]] bool at_line_end() const {
    return at_ >= text_.size() || text_[at_] == '\n' || text_.substr(at_, 2) == "\r\n";
  }
  void end_line() {
    if (!at_line_end())
      throw ModelError(Message::of(
          "%1, line %2: something follows a quotation mark that ends a cell; write two such marks for one inside, and read the table again.",
          name_, line_));
    take('\r');
    if (take('\n')) ++line_;
  }
  std::string cell() {
    std::string value;
    if (!take('"')) {
      for (; !at_line_end() && text_[at_] != ','; ++at_) {
        if (text_[at_] == '"')
          throw ModelError(Message::of(
              "%1, line %2: a quotation mark stands inside a cell that is not quoted; quote the whole cell, and read the table again.",
              name_, line_));
        value += text_[at_];
      }
      return value;
    }
    const std::size_t began = line_;
    while (true) {
      if (at_ >= text_.size())
        throw ModelError(Message::of(
            "%1, line %2: a quotation mark begins a cell that never ends; add the second, and read the table again.",
            name_, began));
      const char c = text_[at_++];
      if (c == '"' && !take('"')) return value;
      value += c;
      if (c == '\n') ++line_;
    }
  }

  std::string_view text_;
  const std::string& name_;
  std::size_t at_ = 0, line_ = 1;
};

void check_text(std::string_view text, const std::string& name) {
  if (text.find('\0') != std::string_view::npos)
    throw ModelError(
        Message::of("%1 is no table: it holds zero bytes, as no text does; choose another file.", name));
  try {
    (void)nlohmann::json(text).dump();
  } catch (const nlohmann::json::exception&) {
    throw ModelError(Message::of("%1 is not UTF-8; save it as UTF-8 and read the table again.", name));
  }
}

void check_columns(const CsvTable& table, const std::string& name) {
  if (table.columns.size() == 1 && table.columns.front().find(';') != std::string::npos)
    throw ModelError(Message::of(
        "%1 has semicolons between its columns; save it with commas between them and points before decimals.",
        name));
  for (std::size_t i = 0; i < table.columns.size(); ++i)
    if (std::find(table.columns.begin(), table.columns.begin() + static_cast<std::ptrdiff_t>(i),
                  table.columns[i]) != table.columns.begin() + static_cast<std::ptrdiff_t>(i))
      throw ModelError(Message::of("%1, line 1: the column \"%2\" is there twice; keep one.", name,
                                   cut_short(table.columns[i])));
  for (const CsvRow& row : table.rows)
    if (row.cells.size() != table.columns.size())
      throw ModelError(Message::of(
          "%1, line %2 has %3 cells, but there are %4 columns; correct it and read the table again.", name,
          row.line, row.cells.size(), table.columns.size()));
}

// What a spreadsheet may take for the beginning of a formula, the full-width forms last.
constexpr std::array<std::string_view, 11> formula_begins{
    "=", "+", "-", "@", "\t", "\r", "\n", "\xEF\xBC\x9D", "\xEF\xBC\x8B", "\xEF\xBC\x8D", "\xEF\xBC\xA0"};
constexpr std::string_view divides_cells = ";\t\r\n";

/// Quotation marks do not count: a spreadsheet may take them off before it looks.
bool begins_formula(std::string_view text) {
  text.remove_prefix(std::min(text.find_first_not_of("'\""), text.size()));
  return std::any_of(formula_begins.begin(), formula_begins.end(),
                     [text](std::string_view begin) { return text.starts_with(begin); });
}

bool begins_cell(std::string_view text, std::size_t at) {
  return at == 0 || divides_cells.find(text[at - 1]) != std::string_view::npos;
}

}  // namespace

CsvTable read_csv(std::string_view text, const std::string& name) {
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  check_text(text, name);
  CsvTable table;
  table.rows = CsvReader(text, name).rows();
  if (table.rows.empty())
    throw ModelError(Message::of("%1 is empty; choose a table whose first line names its columns.", name));
  table.columns = table.rows.front().cells;
  table.rows.erase(table.rows.begin());
  check_columns(table, name);
  return table;
}

std::string csv_row(const std::vector<std::string>& cells) {
  std::string row;
  for (const std::string& cell : cells) {
    if (!row.empty() || &cell != &cells.front()) row += ',';
    if (cell.find_first_of(",;\"\t\r\n") == std::string::npos) {
      row += cell;
      continue;
    }
    row += '"';
    for (const char c : cell) {
      row += c;
      if (c == '"') row += '"';
    }
    row += '"';
  }
  return row + "\r\n";
}

std::string csv_text(std::string_view text) {
  std::string cell;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (begins_cell(text, i) && begins_formula(text.substr(i))) cell += '\'';
    cell += text[i];
  }
  return cell;
}

std::string text_of_csv(std::string_view cell) {
  std::string text;
  for (std::size_t i = 0; i < cell.size(); ++i)
    if (cell[i] != '\'' || !begins_cell(cell, i) || !begins_formula(cell.substr(i + 1))) text += cell[i];
  return text;
}

}  // namespace scalpmark::models
