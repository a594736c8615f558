#include "models/exercises/result_file.h"

#include <utility>

#include "geometry/base/error.h"
#include "models/cases/head_json.h"
#include "models/exercises/exercise_json.h"
#include "models/files/error.h"
#include "models/files/json_numbers.h"
#include "models/files/safe_file.h"
#include "models/files/strict_json.h"

namespace scalpmark::models {

namespace g = geometry;
namespace fs = std::filesystem;
using nlohmann::ordered_json;

namespace {

constexpr std::size_t largest_result = 4000000;  // bytes
constexpr g::Range seconds_range{0, 1e6};

g::Step read_step(const JsonGroup& group, const g::Exercise& exercise) {
  std::string key;
  group.require({"step"});
  group.text("step", key);
  const auto step = g::step_named(key);
  if (!step || !g::has_task(exercise, step->task))
    group.refuse("step", Message::of("must be a step of this exercise, but is %1", group.shown("step")));
  return *step;
}

std::vector<Eigen::Vector3d> read_tape(const JsonGroup& group) {
  std::vector<Eigen::Vector3d> points;
  if (!group.has("tape")) return points;
  for (const JsonGroup& point : group.groups("tape", {"at"})) {
    point.require({"at"});
    point.point("at", points.emplace_back());
  }
  return points;
}

/// Through the same functions as a hand in the window.
void read_placed(const JsonGroup& group, const g::Exercise& exercise, g::Attempt& attempt) {
  const g::Step step = read_step(group, exercise);
  if (g::placed_for(attempt, step))
    group.refuse("step", Message::of("is there twice (%1); keep one of them", group.shown("step")));
  const g::Asks asked = g::asked_in(step.task);
  group.require({asked == g::Asks::reading ? "reading_mm" : "at"});
  if (asked == g::Asks::coil) group.require({"angle_deg"});
  for (const char* key : {"at", "reading_mm", "angle_deg", "tape"}) {
    const std::string_view name = key;
    const bool wanted = asked == g::Asks::reading ? name == "reading_mm" || name == "tape"
                        : asked == g::Asks::coil  ? name == "at" || name == "angle_deg"
                                                  : name == "at";
    if (!wanted && group.has(key))
      group.refuse(key, Message::of("does not go with the step %1", group.shown("step")));
  }
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
  double number = 0;
  group.point("at", at);
  group.number("reading_mm", g::reading_range, Message::of("mm"), number);
  group.number("angle_deg", g::ranges::angle_deg, Message::of("degrees"), number);
  try {
    if (asked == g::Asks::mark) g::put_mark(attempt, step, at);
    if (asked == g::Asks::reading) g::type_reading(attempt, step, number, read_tape(group));
    if (asked == g::Asks::coil) g::lay_coil_down(attempt, step, at, number);
  } catch (const g::GeometryError&) {
    const bool reading = asked == g::Asks::reading;
    group.refuse(reading ? "tape" : "at",
                 reading ? Message::of("is held at no places of a head, or at too many")
                         : Message::of("must be a place on a head, but is %1", group.shown("at")));
  }
}

g::Attempt read_attempt(const JsonGroup& group, const g::Exercise& exercise) {
  g::Attempt attempt;
  group.require({"placed"});
  for (const JsonGroup& placed : group.groups("placed", {"step", "at", "reading_mm", "angle_deg", "tape"}))
    read_placed(placed, exercise, attempt);
  if (group.has("seconds")) {
    std::vector<std::string_view> keys;
    for (const g::Task task : exercise.tasks) keys.push_back(key_of(task));
    const JsonGroup seconds = group.group("seconds", keys);
    for (const g::Task task : exercise.tasks)
      if (seconds.has(key_of(task)))
        seconds.number(key_of(task), seconds_range, Message::of("seconds"), attempt.seconds[task]);
  }
  return attempt;
}

ordered_json attempt_json(const g::Attempt& attempt) {
  ordered_json out;
  out["placed"] = ordered_json::array();
  for (const auto& [step, placed] : attempt.placed) {
    ordered_json& item = out["placed"].emplace_back();
    item["step"] = key_of(step);
    if (placed.at) item["at"] = point(*placed.at);
    if (placed.reading_mm) item["reading_mm"] = number(*placed.reading_mm);
    if (placed.angle_deg) item["angle_deg"] = number(*placed.angle_deg);
    for (const Eigen::Vector3d& at : placed.tape) item["tape"].push_back({{"at", point(at)}});
  }
  for (const auto& [task, seconds] : attempt.seconds) out["seconds"][key_of(task)] = number(seconds);
  return out;
}

}  // namespace

ExerciseResult read_result(const fs::path& file) {
  return parse_result(read_whole(file, largest_result), folder_of(file), file.string());
}

ExerciseResult parse_result(const std::string& text, const fs::path& folder, const std::string& name) {
  const JsonSource source{name, Message::of("result")};
  const nlohmann::json parsed = parse_strict(text, source);
  require_format(parsed, source, "scalpmark-result", 1);
  const JsonGroup top(parsed, source, {"format", "version", "by", "exercise", "attempts"});
  top.require({"exercise", "attempts"});
  ExerciseResult result;
  top.text("by", result.by, longest_trainee);
  const JsonGroup exercise = top.group("exercise", std::span<const std::string_view>(exercise_keys));
  result.setup = read_setup(exercise, parsed.at("exercise"), folder);
  for (const JsonGroup& attempt : top.groups("attempts", {"placed", "seconds"})) {
    if (result.attempts.size() == most_attempts)
      top.refuse("attempts", Message::of("has more than %1 attempts", most_attempts));
    result.attempts.push_back(read_attempt(attempt, result.setup.exercise));
  }
  return result;
}

std::string result_json(const ExerciseResult& result) {
  ordered_json out;
  out["format"] = "scalpmark-result";
  out["version"] = 1;
  if (!result.by.empty()) out["by"] = result.by;
  write_setup(result.setup, out["exercise"]);
  out["attempts"] = ordered_json::array();
  for (const g::Attempt& attempt : result.attempts) out["attempts"].push_back(attempt_json(attempt));
  return pretty_json(out);
}

void write_result(const fs::path& file, const ExerciseResult& result) {
  ExerciseResult moved = result;
  moved.setup = found_from_folder(result.setup, folder_of(file));
  write_whole(file, result_json(moved));
}

}  // namespace scalpmark::models
