#include "geometry/hands/strips.h"

#include <CLI/CLI.hpp>
#include <memory>

#include "models/files/safe_file.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/paper_option.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"
#include "viewer/sheet/date.h"
#include "viewer/sheet/strips_pdf.h"

namespace scalpmark::viewer {

namespace {

struct StripsAsked {
  std::string in;
  Output out;
  Paper paper = Paper::a4;
};

void write(const StripsAsked& asked) {
  check_output(asked.out, "scalpmark-pdf", asked.in);
  const SolvedCase solved =
      solve_case(asked.in, SlowProgress(), Brain::left_out, geometry::TapeDistances::left_out);
  StripsContent content = strips_content(solved.file.the_case, solved.plan);
  content.date = date_today();
  const std::string pdf = strips_pdf(geometry::strips(solved.loaded.head, solved.file.the_case, solved.plan),
                                     content, asked.paper);
  if (asked.out.to_stdout())
    write_to_stdout(pdf);
  else
    models::write_whole(asked.out.file, pdf);
}

}  // namespace

void add_strips(CLI::App& program) {
  auto* command = program.add_subcommand(
      "strips", "Write strips of paper at true size, marked for this head, and a card with the coil's angle");
  const auto asked = std::make_shared<StripsAsked>();
  add_case(*command, asked->in);
  add_output(*command, asked->out, "Where the strips go")->required()->type_name("FILE.pdf");
  add_paper(*command, asked->paper);
  add_lengths(*command);
  command->callback([asked] { write(*asked); });
}

}  // namespace scalpmark::viewer
