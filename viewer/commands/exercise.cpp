#include "geometry/exercise/exercise.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>
#include <optional>

#include "geometry/plan/other_side.h"
#include "models/cases/case_inputs.h"
#include "models/exercises/exercise_file.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/solved_case.h"
#include "viewer/practise/score_text.h"

namespace scalpmark::viewer {

namespace {

using geometry::Task;

struct ExerciseCommand {
  std::string in, from_case;
  Output out;
  std::optional<std::string> title, tasks, side;
  std::optional<unsigned> number;
  std::optional<int> minutes, tries;
  bool own_head = false;
};

std::string all_task_keys() {
  std::vector<std::string> keys;
  for (const Task task : geometry::all_tasks) keys.emplace_back(key_of(task));
  return list_of(keys);
}

/// In the order of the trade, whatever the order they are written in.
std::vector<Task> tasks_from(const std::string& text) {
  if (text == "all") return geometry::whole_exercise().tasks;
  std::vector<Task> tasks;
  for (const std::string& key : split(text, ',')) {
    const auto task = geometry::task_named(key);
    if (!task)
      throw UsageError("--tasks has \"" + key + "\"; choose from all, " + all_task_keys() +
                       ", with commas between.");
    tasks.push_back(*task);
  }
  std::sort(tasks.begin(), tasks.end());
  if (std::adjacent_find(tasks.begin(), tasks.end()) != tasks.end())
    throw UsageError("--tasks has a task twice; write each once.");
  if (tasks.empty())
    throw UsageError("--tasks is empty; choose from all, " + all_task_keys() + ", with commas between.");
  return tasks;
}

/// Side, search, coil, hotspot and treatment of a case, and its head if asked for.
void take_case(models::ExerciseSetup& setup, const std::string& file, bool own_head) {
  models::CaseFile read = models::read_case(file);
  say(read.notes);
  geometry::Case& c = read.the_case;
  if (c.hotspot_awaited) geometry::take_hotspot(c, setup.the_case.hotspot);
  setup.the_case.side = c.side;
  setup.the_case.search = c.search;
  setup.the_case.coil = c.coil;
  setup.the_case.hotspot = c.hotspot;
  setup.the_case.hotspot_off_grid = c.hotspot_off_grid;
  setup.the_case.treatment = c.treatment;
  setup.the_case.cap = c.cap;
  setup.the_case.errors = c.errors;
  if (!own_head) return;
  setup.exercise.drawn_head = false;
  setup.head = read.head;
  setup.folder = read.folder;
  if (read.head.kind == models::HeadKind::generic) setup.the_case.tape_mm = c.tape_mm;
}

std::vector<models::Input> inputs_of_exercise(const ExerciseCommand& o) {
  std::vector<models::Input> inputs;
  if (!o.in.empty()) inputs = models::inputs_of(o.in, models::read_exercise(o.in));
  if (!o.from_case.empty())
    for (models::Input& input : models::inputs_of(o.from_case, models::read_case(o.from_case)))
      inputs.push_back(std::move(input));
  return inputs;
}

void run_exercise(const ExerciseCommand& o) {
  if (o.own_head && o.from_case.empty())
    throw UsageError("--own-head needs the case whose head it is; write --case CASE.json.");
  const std::vector<Task> tasks = o.tasks ? tasks_from(*o.tasks) : std::vector<Task>();
  if (o.side && *o.side != "left" && *o.side != "right")
    throw UsageError("--side is \"" + *o.side + "\"; choose left or right.");
  check_output(o.out, "scalpmark-exercise", inputs_of_exercise(o));
  models::ExerciseSetup setup = o.in.empty() ? models::default_exercise() : models::read_exercise(o.in);
  if (!o.from_case.empty()) take_case(setup, o.from_case, o.own_head);
  if (o.side) {
    const auto side = *o.side == "left" ? geometry::Side::left : geometry::Side::right;
    if (side != setup.the_case.side) geometry::lay_on_side(setup.the_case, side);
  }
  geometry::Exercise& exercise = setup.exercise;
  if (o.title) exercise.title = *o.title;
  if (o.tasks) exercise.tasks = tasks;
  if (o.number) exercise.number = *o.number;
  if (o.minutes) exercise.minutes = o.minutes;
  if (o.tries) exercise.tries = o.tries;
  if (o.out.to_stdout()) {
    write_to_stdout(models::exercise_json(setup));
    return;
  }
  if (o.out.to_file()) models::write_exercise(o.out.file, setup);
  write_to_stdout(exercise_text(setup));
}

}  // namespace

void add_exercise(CLI::App& program) {
  auto* command = program.add_subcommand(
      "exercise", "Say what an exercise asks for, or write one for a class: a file that Practise opens");
  const auto o = std::make_shared<ExerciseCommand>();
  command
      ->add_option("EXERCISE", o->in,
                   "An exercise (JSON) to begin with; without it, all tasks on the head for the number 1")
      ->type_name("FILE");
  command->add_option("--title", o->title, "What it is called")->type_name("TEXT");
  command
      ->add_option("--tasks", o->tasks,
                   "What it asks for, with commas between; all, or some of " + all_task_keys())
      ->type_name("LIST");
  command
      ->add_option("--number", o->number,
                   "The same number gives a whole class the same head and the same given marks")
      ->check(CLI::Range(0U, geometry::largest_number))
      ->type_name("N");
  command->add_option("--side", o->side, "Side of the search, left or right")->type_name("SIDE");
  command->add_option("--minutes", o->minutes, "Time limit for all of it; without it, none")
      ->check(CLI::Range(1, geometry::most_minutes))
      ->type_name("N");
  command->add_option("--tries", o->tries, "How often it may be done; without it, as often as one likes")
      ->check(CLI::Range(1, geometry::most_tries))
      ->type_name("N");
  command->add_option("--case", o->from_case, "A case whose side, search, coil and treatment it goes by")
      ->type_name("FILE");
  command->add_flag("--own-head", o->own_head, "On that case's own head, not on one drawn for the number");
  add_output(*command, o->out, "Where the exercise goes; - for the standard output")->type_name("FILE.json");
  command->callback([o] { run_exercise(*o); });
}

}  // namespace scalpmark::viewer
