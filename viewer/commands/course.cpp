#include "geometry/answers/course.h"

#include <CLI/CLI.hpp>
#include <memory>

#include "models/results/course_file.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"
#include "viewer/words/course_text.h"

namespace scalpmark::viewer {

namespace {

struct CourseCommand {
  std::string in;
  Output out;
};

void run_course(const CourseCommand& o) {
  check_output(o.out, "scalpmark-csv", o.in);
  const models::Progress progress = SlowProgress();
  const SolvedCase solved = solve_case(o.in, progress, Brain::left_out, geometry::TapeDistances::left_out);
  const geometry::Case& the_case = solved.file.the_case;
  progress(geometry::Message::verbatim("Finding the marks of all visits"), 0);
  const geometry::Head& head = solved.loaded.head;
  const geometry::Course course =
      the_case.visits.empty()
          ? geometry::Course{}
          : geometry::check_course(geometry::TapeFinder(head), head, the_case, solved.plan).course;
  if (o.out.to_stdout()) {
    write_to_stdout(models::course_csv(course, the_case.visits));
    return;
  }
  if (o.out.to_file()) models::write_course(o.out.file, course, the_case.visits);
  write_to_stdout(course_text(course, the_case.visits));
}

}  // namespace

void add_course(CLI::App& program) {
  auto* command = program.add_subcommand(
      "course", "Say where the coil lay at each visit by its marks, and whether they drift");
  const auto o = std::make_shared<CourseCommand>();
  add_case(*command, o->in);
  add_output(*command, o->out, "Where the visits go as a table as well; - for the standard output")
      ->type_name("FILE.csv");
  command->callback([o] { run_course(*o); });
}

}  // namespace scalpmark::viewer
