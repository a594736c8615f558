#include "models/exercises/exercise_json.h"

#include <algorithm>
#include <string>
#include <utility>

#include "geometry/base/error.h"
#include "models/cases/head_json.h"
#include "models/cases/settings_json.h"
#include "models/files/error.h"

namespace scalpmark::models {

namespace g = geometry;
using nlohmann::ordered_json;

namespace {

Message known_tasks() {
  std::string all;
  for (const g::Task task : g::all_tasks) all += (all.empty() ? "" : ", ") + std::string(key_of(task));
  return Message::verbatim(all);
}

std::vector<g::Task> read_tasks(const JsonGroup& group, const nlohmann::json& json) {
  const nlohmann::json& list = json.at("tasks");
  std::vector<g::Task> tasks;
  const Message what = Message::of("must be a list of tasks in the order of the trade (%1)", known_tasks());
  if (!list.is_array()) group.refuse("tasks", what);
  for (const nlohmann::json& item : list) {
    const auto task =
        item.is_string() ? g::task_named(item.get_ref<const std::string&>()) : std::optional<g::Task>();
    if (!task) group.refuse("tasks[" + std::to_string(tasks.size()) + "]", what);
    if (!tasks.empty() && !(tasks.back() < *task)) group.refuse("tasks", what);
    tasks.push_back(*task);
  }
  if (tasks.empty()) group.refuse("tasks", what);
  return tasks;
}

std::optional<int> read_count(const JsonGroup& group, std::string_view key, int most) {
  if (!group.has(key)) return {};
  int count = 0;
  group.whole_number(key, {1, static_cast<double>(most)}, count);
  return count;
}

}  // namespace

ExerciseSetup read_setup(const JsonGroup& group, const nlohmann::json& json,
                         const std::filesystem::path& folder) {
  ExerciseSetup setup = default_exercise();
  setup.folder = folder;
  g::Exercise& exercise = setup.exercise;
  group.require({"tasks"});
  group.text("title", exercise.title, g::longest_title);
  int number = static_cast<int>(exercise.number);
  group.whole_number("number", {0, static_cast<double>(g::largest_number)}, number);
  exercise.number = static_cast<std::uint32_t>(number);
  exercise.tasks = read_tasks(group, json);
  exercise.minutes = read_count(group, "minutes", g::most_minutes);
  exercise.tries = read_count(group, "tries", g::most_tries);
  exercise.drawn_head = !group.has("head");
  if (!exercise.drawn_head) setup.head = read_head_source(group);
  if (group.has("case")) {
    const JsonGroup settings =
        group.group("case", {"tape_mm", "side", "search", "coil", "hotspot", "treatment", "cap", "errors"});
    if (settings.has("tape_mm") && (exercise.drawn_head || setup.head.kind != HeadKind::generic))
      settings.refuse("tape_mm", Message::of("belongs to a generic head of the case's own alone"));
    constexpr int version = 2;
    read_settings(settings, version, setup.the_case);
  }
  return setup;
}

void write_setup(const ExerciseSetup& setup, ordered_json& out) {
  const g::Exercise& exercise = setup.exercise;
  g::check_exercise(exercise);
  out["title"] = exercise.title;
  out["number"] = exercise.number;
  if (!exercise.drawn_head) out["head"] = head_source_json(setup.head);
  out["tasks"] = ordered_json::array();
  for (const g::Task task : exercise.tasks) out["tasks"].push_back(std::string(key_of(task)));
  if (exercise.minutes) out["minutes"] = *exercise.minutes;
  if (exercise.tries) out["tries"] = *exercise.tries;
  ordered_json settings;
  write_settings(setup.the_case, settings);
  settings.erase("answers");
  if (exercise.drawn_head || setup.head.kind != HeadKind::generic || settings["tape_mm"].empty())
    settings.erase("tape_mm");
  out["case"] = std::move(settings);
}

ExerciseSetup found_from_folder(const ExerciseSetup& setup, const std::filesystem::path& folder) {
  ExerciseSetup moved = setup;
  moved.head = found_from(setup.head, setup.folder, folder);
  return moved;
}

}  // namespace scalpmark::models
