#include "viewer/sheet/sheet.h"

#include <CLI/CLI.hpp>
#include <memory>

#include "geometry/base/message.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/paper_option.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"
#include "viewer/picture/bounded_memory.h"

namespace scalpmark::viewer {

namespace {

struct SheetAsked {
  std::string in;
  Output out;
  Brain brain = Brain::wanted;
  Paper paper = Paper::a4;
};

void write(const SheetAsked& o) {
  check_output(o.out, "scalpmark-pdf", o.in);
  const BoundedMemory bounded("the sheet");
  const models::Progress progress = SlowProgress();
  const SolvedCase solved = solve_case(o.in, progress, o.brain);
  progress(geometry::Message::verbatim("Drawing the sheet"), 0);
  write_sheet(o.out.file, solved.file, solved.loaded, solved.plan, o.paper);
}

}  // namespace

void add_sheet(CLI::App& program) {
  auto* command =
      program.add_subcommand("sheet", "Write the placement sheet of a case, as a PDF file to print");
  const auto o = std::make_shared<SheetAsked>();
  add_case(*command, o->in);
  add_output(*command, o->out, "Where the sheet goes")->required()->type_name("FILE.pdf");
  add_paper(*command, o->paper);
  add_lengths(*command);
  add_no_brain(*command, o->brain);
  command->callback([o] { write(*o); });
}

}  // namespace scalpmark::viewer
