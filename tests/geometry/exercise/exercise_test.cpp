#include "geometry/exercise/exercise.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <limits>
#include <set>

#include "geometry/base/error.h"
#include "geometry/exercise/attempt.h"
#include "tests/support/sentence.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

TEST_CASE("every step of an exercise has a name of its own, by which it is found again") {
  std::set<std::string> keys;
  for (const Step& step : steps_of(whole_exercise())) {
    const std::string key = key_of(step);
    CHECK(keys.insert(key).second);
    REQUIRE(step_named(key));
    CHECK(*step_named(key) == step);
  }
  // 4 points, 3 tapes, 9 marks, and one each of vertex, start, hotspot, site, edge mark, two coils, lost
  // mark.
  CHECK(keys.size() == 4 + 3 + 9 + 8);
  CHECK_FALSE(step_named("spot_2_0"));
  CHECK_FALSE(step_named(""));
  for (const Task task : all_tasks) CHECK(task_named(key_of(task)) == task);
}

TEST_CASE("the marks of the grid are its spots, the middle first, from which the others are measured") {
  const std::vector<Step> grid = steps_of(Task::grid);
  CHECK(grid.size() == 9);
  CHECK(spot_of(grid.front()) == GridPosition{0, 0});
  CHECK(spot_of(grid[1]) == GridPosition{-1, -1});
  CHECK(spot_of(grid[2]) == GridPosition{-1, 0});
  CHECK(spot_of(grid.back()) == GridPosition{1, 1});
  for (const Step& step : grid) CHECK(step_of(spot_of(step)) == step);
}

TEST_CASE("an exercise has tasks, each once, in the order of the trade") {
  Exercise exercise = whole_exercise();
  CHECK_NOTHROW(check_exercise(exercise));
  const auto refused = [](const Exercise& e) {
    return sentence_of<GeometryError>([&] { check_exercise(e); });
  };
  Exercise none;
  CHECK(is_sentence(refused(none)));
  Exercise twice;
  twice.tasks = {Task::start, Task::start};
  CHECK(refused(twice).find("start") != std::string::npos);
  Exercise backwards;
  backwards.tasks = {Task::site, Task::vertex};
  CHECK(refused(backwards).find("order of the trade") != std::string::npos);
  exercise.number = largest_number + 1;
  CHECK(refused(exercise).find("1000000") != std::string::npos);
  exercise.number = 0;
  exercise.minutes = 0;
  CHECK(refused(exercise).find("0 minutes") != std::string::npos);
  exercise.minutes.reset();
  exercise.minutes = most_minutes + 1;
  CHECK(refused(exercise).find("241 minutes") != std::string::npos);
  exercise.minutes.reset();
  exercise.tries = 0;
  CHECK(refused(exercise).find("0 tries") != std::string::npos);
  exercise.tries = 21;
  CHECK(refused(exercise).find("21 tries") != std::string::npos);
  exercise.tries.reset();
  // Letters are counted, not bytes.
  for (int i = 0; i < 120; ++i) exercise.title += "\xC3\xBC";
  CHECK_NOTHROW(check_exercise(exercise));
  exercise.title = std::string(121, 'x');
  CHECK(refused(exercise).find("121 characters") != std::string::npos);
}

TEST_CASE("what a task goes by and the exercise does not ask for stands on the head") {
  Case c;
  c.hotspot = {1, -1};
  Exercise exercise;
  exercise.tasks = {Task::start, Task::hotspot, Task::edge_mark};
  const auto given = [&](Task task) { return given_steps(exercise, c, task); };
  const std::vector<Step> before_start = given(Task::start);
  CHECK(before_start.size() == 5);  // four points and the vertex
  CHECK(std::count(before_start.begin(), before_start.end(), Step{Task::vertex, 0}) == 1);
  // Of the grid only the mark of the spot that answered.
  CHECK(given(Task::hotspot) == std::vector<Step>{step_of({1, -1})});
  CHECK(given(Task::edge_mark) == std::vector<Step>{{Task::site, 0}});
  exercise.tasks = {Task::site};
  CHECK(given(Task::site) == std::vector<Step>{{Task::hotspot, 0}});
  c.treatment.rule = TreatmentRule::landmark;
  CHECK(given(Task::site).size() == 5);
  exercise = whole_exercise();
  for (const Task task : all_tasks) CHECK(given_steps(exercise, c, task).empty());
}

TEST_CASE("what is put down replaces what was there, and is rubbed out by undo") {
  Attempt attempt;
  const Step vertex{Task::vertex, 0};
  put_mark(attempt, vertex, {1, 2, 3});
  put_mark(attempt, vertex, {4, 5, 6});
  REQUIRE(placed_for(attempt, vertex));
  CHECK(*placed_for(attempt, vertex)->at == Eigen::Vector3d(4, 5, 6));
  rub_out(attempt, vertex);
  CHECK_FALSE(placed_for(attempt, vertex));
}

TEST_CASE("the next step is the first without anything put down") {
  Exercise exercise;
  exercise.tasks = {Task::three_tapes, Task::vertex};
  Attempt attempt;
  CHECK(next_step(exercise, attempt) == Step{Task::three_tapes, 0});
  for (const Step& step : steps_of(Task::three_tapes)) type_reading(attempt, step, 355);
  CHECK(next_step(exercise, attempt) == Step{Task::vertex, 0});
  put_mark(attempt, {Task::vertex, 0}, {0, 0, 90});
  CHECK_FALSE(next_step(exercise, attempt));
}

TEST_CASE("nothing is put down that is no place, no reading, no angle, or not what the step asks for") {
  Attempt attempt;
  constexpr double nan = std::numeric_limits<double>::quiet_NaN();
  const Step vertex{Task::vertex, 0}, tape{Task::three_tapes, 1}, coil{Task::coil, 0};
  const auto refused = [](const auto& action) { return is_sentence(sentence_of<GeometryError>(action)); };
  CHECK(refused([&] { put_mark(attempt, vertex, {nan, 0, 0}); }));
  CHECK(refused([&] { put_mark(attempt, vertex, {1e9, 0, 0}); }));
  CHECK(refused([&] { put_mark(attempt, tape, {0, 0, 0}); }));
  CHECK(refused([&] { put_mark(attempt, {Task::grid, 9}, {0, 0, 0}); }));
  CHECK(refused([&] { put_mark(attempt, {Task::grid, -1}, {0, 0, 0}); }));
  CHECK(refused([&] { type_reading(attempt, tape, 0); }));
  CHECK(refused([&] { type_reading(attempt, tape, nan); }));
  CHECK(refused([&] { type_reading(attempt, tape, 355, {{nan, 0, 0}, {1, 1, 1}}); }));
  CHECK(refused([&] {
    type_reading(attempt, tape, 355, std::vector<Eigen::Vector3d>(21, Eigen::Vector3d(0, 0, 90)));
  }));
  CHECK(refused([&] { type_reading(attempt, vertex, 355); }));
  CHECK(refused([&] { lay_coil_down(attempt, coil, {0, 0, 90}, 181); }));
  CHECK(refused([&] { lay_coil_down(attempt, vertex, {0, 0, 90}, 45); }));
  CHECK(attempt.placed.empty());
}
