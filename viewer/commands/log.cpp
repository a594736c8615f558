#include <CLI/CLI.hpp>
#include <filesystem>
#include <memory>
#include <optional>

#include "geometry/base/message.h"
#include "models/cases/case_inputs.h"
#include "models/cases/visits_csv.h"
#include "models/files/safe_file.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/solved_case.h"

namespace scalpmark::viewer {

namespace {

constexpr std::size_t largest_table = 8'000'000;  // bytes, as the largest case

struct LogCommand {
  std::string in, visits, pulses, table;
  Output out;
};

std::optional<models::NamedTable> table_in(const std::string& file) {
  if (file.empty()) return {};
  return models::NamedTable{models::read_whole(file, largest_table), file};
}

void add_tables(const LogCommand& o, models::CaseFile read) {
  auto inputs = models::inputs_of(o.in, read);
  for (const std::string& file : {o.visits, o.pulses})
    if (!file.empty()) inputs.push_back({geometry::Message::of("the table"), file});
  check_output(o.out, "scalpmark-case", inputs);
  const auto visits = table_in(o.visits), pulses = table_in(o.pulses);
  read.the_case.visits =
      models::with_tables(read.the_case.visits, visits ? &*visits : nullptr, pulses ? &*pulses : nullptr);
  if (o.out.to_stdout())
    write_to_stdout(models::case_json(read));
  else
    models::write_case(o.out.file, read);
}

void write_table(const LogCommand& o, const models::CaseFile& read) {
  check_output(o.out, "scalpmark-csv", models::inputs_of(o.in, read));
  const std::string table = o.table == "pulses" ? models::pulses_csv(read.the_case.visits)
                                                : models::visits_csv(read.the_case.visits);
  if (o.out.to_stdout())
    write_to_stdout(table);
  else
    models::write_whole(o.out.file, table);
}

void run_log(const LogCommand& o) {
  const bool reads = !o.visits.empty() || !o.pulses.empty();
  if (reads == !o.table.empty())
    throw UsageError(
        "log needs either --table visits or --table pulses to write one, or --visits FILE.csv and --pulses "
        "FILE.csv to add what they hold.");
  if (!o.table.empty() && o.table != "visits" && o.table != "pulses")
    throw UsageError("--table is \"" + o.table + "\"; write visits or pulses.");
  if (o.out.file.empty())
    throw UsageError("log needs --out: a FILE.csv for --table, a new FILE.json for what tables add.");
  models::CaseFile read = models::read_case(o.in);
  say(read.notes);
  reads ? add_tables(o, std::move(read)) : write_table(o, read);
}

}  // namespace

void add_log(CLI::App& program) {
  auto* command = program.add_subcommand(
      "log", "Write the visits or pulses of a case as a table for a spreadsheet, or add those of a table");
  const auto o = std::make_shared<LogCommand>();
  add_case(*command, o->in);
  command->add_option("--table", o->table, "What to write: visits or pulses")->type_name("TABLE");
  command
      ->add_option("--visits", o->visits,
                   "A table of visits to add, its first line as --table visits writes it")
      ->type_name("FILE.csv");
  command
      ->add_option("--pulses", o->pulses,
                   "A table of pulses to add; its visit is the number in --visits, without that the case's")
      ->type_name("FILE.csv");
  add_output(*command, o->out,
             "Where the table, or the case with what was added, goes; - for the standard output")
      ->type_name("FILE");
  command->callback([o] { run_log(*o); });
}

}  // namespace scalpmark::viewer
