#include "geometry/hands/tolerance.h"

#include <CLI/CLI.hpp>
#include <memory>

#include "geometry/base/message.h"
#include "geometry/base/text.h"
#include "geometry/hands/with_strips.h"
#include "models/results/tolerance_file.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"
#include "viewer/words/tolerance_text.h"
#include "viewer/words/tolerance_words.h"

namespace scalpmark::viewer {

namespace {

struct ToleranceAsked {
  std::string in;
  Output out;
  int placements = 10000;
  unsigned seed = 1;
  geometry::StripErrors strips;
};

void tolerance(const ToleranceAsked& o) {
  check_output(o.out, "scalpmark-tolerance", o.in);
  const models::Progress progress = SlowProgress();
  const SolvedCase solved = solve_case(o.in, progress, Brain::wanted, geometry::TapeDistances::left_out);
  progress(geometry::Message::verbatim("Trying it many times"), 0);
  geometry::ToleranceOptions options;
  options.placements = o.placements;
  options.seed = o.seed;
  const geometry::Case& the_case = solved.file.the_case;
  const geometry::HandErrors& errors = the_case.errors;
  const auto found = geometry::tolerance(solved.loaded.head, the_case, solved.plan, errors, options);
  const geometry::Message habit = habit_sentence(found);
  const auto strips = geometry::with_strips(solved.loaded.head, the_case, solved.plan, errors, o.strips);
  if (o.out.to_stdout()) {
    write_to_stdout(models::tolerance_json(found, solved.plan, errors, options, habit, strips));
    return;
  }
  if (!o.out.file.empty())
    models::write_tolerance(o.out.file, found, solved.plan, errors, options, habit, strips);
  write_to_stdout(tolerance_text(found, errors, strips));
}

}  // namespace

void add_tolerance(CLI::App& program) {
  auto* command = program.add_subcommand(
      "tolerance", "Say how far off the pulse could be when a case is measured, marked and laid by hand");
  const auto o = std::make_shared<ToleranceAsked>();
  add_case(*command, o->in, "The case file (JSON); its \"errors\" say how far off hands are");
  add_output(*command, o->out, "Where the regions and shares go as JSON as well; - for the standard output")
      ->type_name("FILE.json");
  command->add_option("--trials", o->placements, "How many trials to make; without it, 10000")
      ->check(CLI::Range(0, 1000000))
      ->type_name("N");
  command->add_option("--seed", o->seed, "The same number gives the same trials; without it, 1")
      ->type_name("N");
  const auto add_strip_error = [&](const char* option, double& error, const std::string& what) {
    command->add_option(option, error, what + "; without it, " + geometry::to_text(error))
        ->check(CLI::Range(0.0, 10.0))
        ->type_name("MM");
  };
  add_strip_error("--gluing", o->strips.gluing_mm, "Strips of paper: the typical error of each seam");
  add_strip_error("--laying", o->strips.laying_mm, "and of laying a strip where it begins");
  command->callback([o] { tolerance(*o); });
}

}  // namespace scalpmark::viewer
