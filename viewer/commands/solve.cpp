#include <CLI/CLI.hpp>
#include <memory>

#include "models/results/plan_file.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"

namespace scalpmark::viewer {

namespace {

struct Options {
  std::string in, out;
};

void solve(const Options& o) {
  const SolvedCase solved = solve_case(o.in, SlowProgress(), Brain::wanted);
  if (o.out == "-")
    write_to_stdout(models::plan_json(solved.plan));
  else
    models::write_plan(o.out, solved.plan);
}

}  // namespace

void add_solve(CLI::App& program) {
  auto* command = program.add_subcommand("solve", "Compute the plan of a case and write it as JSON");
  const auto o = std::make_shared<Options>();
  add_case(*command, o->in);
  command->add_option("--out", o->out, "Where the plan goes; - for the standard output")
      ->required()
      ->type_name("PLAN.json");
  command->callback([o] { solve(*o); });
}

}  // namespace scalpmark::viewer
