#include <CLI/CLI.hpp>
#include <memory>

#include "models/results/plan_file.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"

namespace scalpmark::viewer {

namespace {

struct SolveAsked {
  std::string in;
  Output out;
  Brain brain = Brain::wanted;
};

void solve(const SolveAsked& o, const models::TemplateMaking& make_brain) {
  check_output(o.out, "scalpmark-plan", o.in);
  const SolvedCase solved =
      solve_case(o.in, SlowProgress(), o.brain, geometry::TapeDistances::each_path, make_brain);
  if (o.out.to_stdout())
    write_to_stdout(models::plan_json(solved.plan));
  else
    models::write_plan(o.out.file, solved.plan);
}

}  // namespace

void add_solve(CLI::App& program, const models::TemplateMaking& make_brain) {
  auto* command = program.add_subcommand("solve", "Compute the plan of a case and write it as JSON");
  const auto o = std::make_shared<SolveAsked>();
  add_case(*command, o->in);
  add_output(*command, o->out, "Where the plan goes; - for the standard output")
      ->required()
      ->type_name("PLAN.json");
  add_no_brain(*command, o->brain);
  command->callback([o, make_brain] { solve(*o, make_brain); });
}

}  // namespace scalpmark::viewer
