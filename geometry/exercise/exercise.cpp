#include "geometry/exercise/exercise.h"

#include <algorithm>
#include <utility>

#include "geometry/base/error.h"

namespace scalpmark::geometry {

namespace {

constexpr std::array<std::pair<Task, std::string_view>, all_tasks.size()> task_keys{
    {{Task::four_points, "four_points"},
     {Task::three_tapes, "three_tapes"},
     {Task::vertex, "vertex"},
     {Task::start, "start"},
     {Task::grid, "grid"},
     {Task::hotspot, "hotspot"},
     {Task::site, "site"},
     {Task::edge_mark, "edge_mark"},
     {Task::coil, "coil"},
     {Task::coil_on_given_marks, "coil_on_given_marks"},
     {Task::find_again, "find_again"}}};

constexpr std::array<std::string_view, 4> point_keys{"nasion", "inion", "left_tragus", "right_tragus"};
constexpr std::array<std::string_view, 3> tape_keys{"nasion_inion", "tragus_tragus", "circumference"};

constexpr int in_row = 3;

/// What a task goes by, tasks apart from the grid's.
std::vector<Task> what_it_goes_by(const Case& the_case, Task task) {
  using enum Task;
  switch (task) {
    case four_points:
    case coil_on_given_marks:
      return {};
    case three_tapes:
    case vertex:
      return {four_points};
    case start:
      return {four_points, vertex};
    case grid:
      return {start};
    case hotspot:
      return {grid};
    case site:
      if (the_case.treatment.rule == TreatmentRule::landmark) return {four_points, vertex};
      return {hotspot};
    case edge_mark:
      return {site};
    case coil:
      return {site, edge_mark};
    case find_again:
      return {four_points, vertex};
  }
  return {};
}

}  // namespace

int steps_in(Task task) {
  return task == Task::four_points ? 4 : task == Task::three_tapes ? 3 : task == Task::grid ? 9 : 1;
}

std::vector<Step> steps_of(Task task) {
  std::vector<Step> steps;
  // The grid's middle is drawn first, since all others are measured from it.
  if (task == Task::grid) steps.push_back(step_of(GridPosition{}));
  for (int i = 0; i < steps_in(task); ++i)
    if (steps.empty() || steps.front() != Step{task, i}) steps.push_back({task, i});
  return steps;
}

GridPosition spot_of(const Step& step) {
  return {step.which / in_row - 1, step.which % in_row - 1};
}

Step step_of(const GridPosition& spot) {
  return {Task::grid, in_row * (spot.row + 1) + spot.column + 1};
}

bool leads_to_pulse(Task task) {
  return task != Task::three_tapes && task != Task::coil_on_given_marks && task != Task::find_again;
}

Asks asked_in(Task task) {
  switch (task) {
    case Task::three_tapes:
      return Asks::reading;
    case Task::coil:
    case Task::coil_on_given_marks:
      return Asks::coil;
    default:
      return Asks::mark;
  }
}

std::string_view key_of(Task task) {
  for (const auto& [each, key] : task_keys)
    if (each == task) return key;
  return {};
}

std::optional<Task> task_named(std::string_view key) {
  for (const auto& [task, each] : task_keys)
    if (each == key) return task;
  return {};
}

std::string key_of(const Step& step) {
  const auto which = static_cast<size_t>(step.which);
  switch (step.task) {
    case Task::four_points:
      return std::string(point_keys.at(which));
    case Task::three_tapes:
      return std::string(tape_keys.at(which));
    case Task::grid: {
      const GridPosition spot = spot_of(step);
      return "spot_" + std::to_string(spot.row) + "_" + std::to_string(spot.column);
    }
    default:
      return std::string(key_of(step.task));
  }
}

std::optional<Step> step_named(std::string_view key) {
  for (const Task task : all_tasks)
    for (const Step& step : steps_of(task))
      if (key_of(step) == key) return step;
  return {};
}

Exercise whole_exercise() {
  Exercise exercise;
  exercise.tasks.assign(all_tasks.begin(), all_tasks.end());
  return exercise;
}

bool has_task(const Exercise& exercise, Task task) {
  return std::find(exercise.tasks.begin(), exercise.tasks.end(), task) != exercise.tasks.end();
}

std::vector<Step> steps_of(const Exercise& exercise) {
  std::vector<Step> all;
  for (const Task task : exercise.tasks) {
    const std::vector<Step> steps = steps_of(task);
    all.insert(all.end(), steps.begin(), steps.end());
  }
  return all;
}

void check_exercise(const Exercise& exercise) {
  if (exercise.tasks.empty())
    throw GeometryError(Message::of("The exercise has no task; choose one or more."));
  for (size_t i = 1; i < exercise.tasks.size(); ++i)
    if (!(exercise.tasks[i - 1] < exercise.tasks[i]))
      throw GeometryError(Message::of(
          "The exercise's task \"%1\" comes after \"%2\"; give each task once, in the order of the trade.",
          key_of(exercise.tasks[i]), key_of(exercise.tasks[i - 1])));
  const auto characters =
      static_cast<size_t>(std::count_if(exercise.title.begin(), exercise.title.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
      }));
  if (characters > longest_title)
    throw GeometryError(
        Message::of("The exercise's title has %1 characters; %2 are the most.", characters, longest_title));
  if (exercise.number > largest_number)
    throw GeometryError(Message::of("The exercise's number is %1; it must be from 0 to %2.", exercise.number,
                                    largest_number));
  if (exercise.minutes && (*exercise.minutes < 1 || *exercise.minutes > most_minutes))
    throw GeometryError(Message::of("The exercise's time limit is %1 minutes; it must be from 1 to %2.",
                                    *exercise.minutes, most_minutes));
  if (exercise.tries && (*exercise.tries < 1 || *exercise.tries > most_tries))
    throw GeometryError(
        Message::of("The exercise allows %1 tries; it must be from 1 to %2.", *exercise.tries, most_tries));
}

std::vector<Step> given_steps(const Exercise& exercise, const Case& the_case, Task task) {
  std::vector<Step> given;
  for (const Task before : what_it_goes_by(the_case, task)) {
    if (has_task(exercise, before)) continue;
    if (task == Task::hotspot) {
      given.push_back(step_of(the_case.hotspot));
      continue;
    }
    const std::vector<Step> steps = steps_of(before);
    given.insert(given.end(), steps.begin(), steps.end());
  }
  return given;
}

}  // namespace scalpmark::geometry
