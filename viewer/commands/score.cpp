#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>
#include <vector>

#include "geometry/base/message.h"
#include "models/exercises/score_table.h"
#include "models/heads/kept_skins.h"
#include "models/heads/own_program.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/paper_option.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"
#include "viewer/picture/bounded_memory.h"
#include "viewer/practise/class_page.h"
#include "viewer/practise/score_text.h"

namespace scalpmark::viewer {

namespace {

struct ScoreCommand {
  std::vector<std::string> in;
  Output csv, page;
  bool force = false;
  Paper paper = Paper::a4;
};

void check_score_outputs(ScoreCommand& o) {
  std::vector<models::Input> inputs;
  for (const std::string& file : o.in) inputs.push_back({geometry::Message::of("a result"), file});
  o.csv.force = o.page.force = o.force;
  check_output(o.csv, "scalpmark-csv", inputs);
  check_output(o.page, "scalpmark-pdf", inputs);
  if (o.page.to_stdout()) throw UsageError("--class needs the name of a file; write --class FILE.pdf.");
  if (o.csv.to_file() && o.page.to_file() && models::same_file(o.csv.file, o.page.file))
    throw UsageError("--csv and --class lead to one file; give each its own.");
}

void run_score(ScoreCommand& o) {
  check_score_outputs(o);
  const models::Progress progress = SlowProgress();
  std::size_t count = 0;
  const auto between = [&] {
    progress(geometry::Message::verbatim("Scoring results"),
             static_cast<double>(count++) / (2.0 * static_cast<double>(o.in.size()) + 1));
  };
  const ClassResults results = class_results(
      {o.in.begin(), o.in.end()}, models::read_once(models::read_apart(models::own_program())), between);
  say(results.left_out);
  if (o.csv.to_stdout()) {
    write_to_stdout(models::score_csv(results.trainees));
  } else if (o.csv.to_file()) {
    models::write_score_csv(o.csv.file, results.trainees);
  }
  if (o.page.to_file()) {
    const BoundedMemory bounded("the class page");
    progress(geometry::Message::verbatim("Drawing the class page"), 0.9);
    write_class_page(o.page.file, results, o.paper);
  }
  if (!o.csv.to_stdout()) write_to_stdout(score_text(results, hands_here(*results.answers).get()));
}

}  // namespace

void add_score(CLI::App& program) {
  auto* command = program.add_subcommand(
      "score", "Score results of an exercise in mm and degrees, one trainee's or a whole class's");
  const auto o = std::make_shared<ScoreCommand>();
  command->add_option("RESULT", o->in, "Files of results (JSON), as Practise in the window saves them")
      ->required()
      ->type_name("FILE");
  command
      ->add_option("--csv", o->csv.file,
                   "Where the scores go as a table, one line a step; - for the standard output")
      ->type_name("FILE.csv");
  command->add_option("--class", o->page.file, "Where the class page goes, to print")->type_name("FILE.pdf");
  command->add_flag("--force", o->force,
                    "Write over a file that is there, also one of another kind; never over what is read");
  add_paper(*command, o->paper);
  add_lengths(*command);
  command->callback([o] { run_score(*o); });
}

}  // namespace scalpmark::viewer
