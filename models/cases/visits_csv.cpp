#include "models/cases/visits_csv.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <map>
#include <optional>
#include <vector>

#include "models/cases/visits_json.h"
#include "models/files/csv.h"
#include "models/files/cut_short.h"
#include "models/files/error.h"

namespace scalpmark::models {

namespace g = geometry;
using nlohmann::json;

namespace {

/// `free` is what somebody typed, whatever it is.
enum class CellKind { text, free, number, yes };

/// A column, and where its cell goes in the JSON of a visit or pulse.
struct CsvColumn {
  std::string_view name;
  std::string_view group, key;
  CellKind kind = CellKind::text;
};

constexpr std::array<CsvColumn, 18> visit_columns{
    {{"visit", "", "", CellKind::number},
     {"date", "", "date"},
     {"by", "", "by", CellKind::free},
     {"threshold_percent", "", "threshold_percent", CellKind::number},
     {"site_vertex_mm", "site_tape_mm", "vertex", CellKind::number},
     {"site_nasion_mm", "site_tape_mm", "nasion", CellKind::number},
     {"site_left_tragus_mm", "site_tape_mm", "left_tragus", CellKind::number},
     {"site_right_tragus_mm", "site_tape_mm", "right_tragus", CellKind::number},
     {"edge_vertex_mm", "edge_tape_mm", "vertex", CellKind::number},
     {"edge_nasion_mm", "edge_tape_mm", "nasion", CellKind::number},
     {"edge_left_tragus_mm", "edge_tape_mm", "left_tragus", CellKind::number},
     {"edge_right_tragus_mm", "edge_tape_mm", "right_tragus", CellKind::number},
     {"brim_nasion_mm", "brim_mm", "nasion", CellKind::number},
     {"brim_left_tragus_mm", "brim_mm", "left_tragus", CellKind::number},
     {"brim_right_tragus_mm", "brim_mm", "right_tragus", CellKind::number},
     {"brim_inion_mm", "brim_mm", "inion", CellKind::number},
     {"marked_anew", "", "marked_anew", CellKind::yes},
     {"remarks", "", "remarks", CellKind::free}}};

constexpr std::array<CsvColumn, 7> pulse_columns{{{"visit", "", "", CellKind::number},
                                                  {"at", "", "at"},
                                                  {"spot_row", "spot", "0", CellKind::number},
                                                  {"spot_column", "spot", "1", CellKind::number},
                                                  {"output_percent", "", "output_percent", CellKind::number},
                                                  {"answer", "", "answer"},
                                                  {"corrected_from", "", "corrected_from"}}};

json cell_json(const std::string& cell, CellKind kind) {
  if (kind == CellKind::number) {
    double number = 0;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), number);
    if (error == std::errc() && end == cell.data() + cell.size()) return number;
  }
  if (kind == CellKind::yes && (cell == "yes" || cell == "no")) return cell == "yes";
  return kind == CellKind::free ? text_of_csv(cell) : cell;
}

std::string text_of(const json& value) {
  if (value.is_null()) return {};
  if (value.is_boolean()) return value.get<bool>() ? "yes" : "no";
  if (value.is_string()) return value.get<std::string>();
  return value.dump();
}

[[noreturn]] void refuse_row(const std::string& name, const CsvRow& row, const Message& why) {
  throw ModelError(Message::of("%1, line %2: %3; correct it and read the table again.", name, row.line, why));
}

/// A table of ours, read: each row's visit number and the rest as the JSON of a visit or pulse.
struct ReadRow {
  const CsvRow* row;
  int visit = 0;
  json values;
};

template <std::size_t count>
std::vector<ReadRow> read_rows(const CsvTable& table, const std::string& name,
                               const std::array<CsvColumn, count>& known, std::string_view needed) {
  std::vector<const CsvColumn*> columns;
  std::string names;
  for (const CsvColumn& column : known) names += (names.empty() ? "" : ", ") + std::string(column.name);
  for (const std::string& column : table.columns) {
    const auto found =
        std::find_if(known.begin(), known.end(), [&](const CsvColumn& c) { return c.name == column; });
    if (found == known.end())
      throw ModelError(Message::of("%1, line 1: \"%2\" is not a column known here (known: %3); remove it.",
                                   name, cut_short(column), names));
    columns.push_back(&*found);
  }
  for (const std::string_view column : {std::string_view("visit"), needed})
    if (std::find(table.columns.begin(), table.columns.end(), column) == table.columns.end())
      throw ModelError(Message::of("%1, line 1: the column %2 is missing; add it.", name, column));
  std::vector<ReadRow> rows;
  for (const CsvRow& row : table.rows) {
    ReadRow& read = rows.emplace_back();
    read.row = &row;
    read.values = json::object();
    for (std::size_t i = 0; i < columns.size(); ++i) {
      const CsvColumn& column = *columns[i];
      if (row.cells[i].empty()) continue;
      const json value = cell_json(row.cells[i], column.kind);
      if (column.key.empty()) {
        if (!value.is_number() || value != std::floor(value.get<double>()) || value < 1 || value > 100000)
          refuse_row(
              name, row,
              Message::of("visit must be a whole number from 1, but is \"%1\"", cut_short(row.cells[i])));
        read.visit = static_cast<int>(value.get<double>());
      } else if (column.group.empty()) {
        read.values[std::string(column.key)] = value;
      } else {
        read.values[std::string(column.group)][std::string(column.key)] = value;
      }
    }
    if (read.visit == 0) refuse_row(name, row, Message::of("visit is missing"));
  }
  return rows;
}

JsonSource source_of(const std::string& name, const CsvRow& row) {
  return {english(Message::of("%1, line %2", name, row.line)), Message::of("table")};
}

/// Which visit each number stands for.
using VisitNumbers = std::map<int, std::size_t>;

VisitNumbers add_visits(std::vector<g::Visit>& visits, const NamedTable& table) {
  const CsvTable read = read_csv(table.text, table.name);
  VisitNumbers numbers;
  for (const ReadRow& row : read_rows(read, table.name, visit_columns, "date")) {
    if (!numbers.emplace(row.visit, visits.size()).second)
      refuse_row(table.name, *row.row, Message::of("visit %1 is there twice", row.visit));
    if (visits.size() == g::most_visits)
      refuse_row(table.name, *row.row, Message::of("there are more than %1 visits", g::most_visits));
    const JsonSource source = source_of(table.name, *row.row);
    visits.push_back(read_visit(JsonGroup(row.values, source, visit_keys)));
  }
  return numbers;
}

void add_pulses(std::vector<g::Visit>& visits, const VisitNumbers& numbers, const NamedTable& table) {
  const CsvTable read = read_csv(table.text, table.name);
  for (ReadRow& row : read_rows(read, table.name, pulse_columns, "output_percent")) {
    const auto visit = numbers.find(row.visit);
    if (visit == numbers.end())
      refuse_row(table.name, *row.row, Message::of("there is no visit %1", row.visit));
    auto& pulses = visits[visit->second].pulses;
    if (pulses.size() == g::most_pulses)
      refuse_row(table.name, *row.row, Message::of("there are more than %1 pulses", g::most_pulses));
    json& values = row.values;
    if (values.contains("spot"))
      values["spot"] = {values["spot"].value("0", json()), values["spot"].value("1", json())};
    else
      values["site"] = "treatment";
    const JsonSource source = source_of(table.name, *row.row);
    pulses.push_back(read_pulse(JsonGroup(values, source, pulse_keys)));
  }
}

template <std::size_t count>
std::string header_of(const std::array<CsvColumn, count>& columns) {
  std::vector<std::string> names;
  for (const CsvColumn& column : columns) names.emplace_back(column.name);
  return csv_row(names);
}

template <std::size_t count>
std::string row_of(std::size_t visit, const nlohmann::ordered_json& written,
                   const std::array<CsvColumn, count>& columns) {
  const json values = written;
  std::vector<std::string> cells;
  for (const CsvColumn& column : columns) {
    if (column.key.empty()) {
      cells.push_back(std::to_string(visit + 1));
      continue;
    }
    const json group = column.group.empty() ? values : values.value(std::string(column.group), json());
    if (group.is_array())
      cells.push_back(text_of(group[column.key == "0" ? 0 : 1]));
    else
      cells.push_back(group.is_object() ? text_of(group.value(std::string(column.key), json())) : "");
    if (column.kind == CellKind::free) cells.back() = csv_text(cells.back());
  }
  return csv_row(cells);
}

}  // namespace

std::string visits_csv(const g::Visits& visits) {
  std::string out = header_of(visit_columns);
  const auto written = visits_json(visits);
  for (std::size_t i = 0; i < written.size(); ++i) out += row_of(i, written[i], visit_columns);
  return out;
}

std::string pulses_csv(const g::Visits& visits) {
  std::string out = header_of(pulse_columns);
  const auto written = visits_json(visits);
  for (std::size_t i = 0; i < written.size(); ++i)
    if (written[i].contains("pulses"))
      for (const auto& pulse : written[i]["pulses"]) out += row_of(i, pulse, pulse_columns);
  return out;
}

g::Visits with_tables(const g::Visits& visits, const NamedTable* table_of_visits,
                      const NamedTable* table_of_pulses) {
  std::vector<g::Visit> all;
  for (const auto& visit : visits) all.push_back(*visit);
  VisitNumbers numbers;
  if (table_of_visits)
    numbers = add_visits(all, *table_of_visits);
  else
    for (std::size_t i = 0; i < all.size(); ++i) numbers[static_cast<int>(i) + 1] = i;
  if (table_of_pulses) add_pulses(all, numbers, *table_of_pulses);
  g::Visits out;
  for (g::Visit& visit : all) out.emplace_back(std::move(visit));
  return out;
}

}  // namespace scalpmark::models
