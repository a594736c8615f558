#include "models/exercises/result_file.h"

#include <catch2/catch.hpp>
#include <filesystem>

#include "geometry/exercise/score.h"
#include "models/exercises/score_table.h"
#include "models/files/csv.h"
#include "models/files/error.h"
#include "models/files/own_files.h"
#include "tests/support/json_schema.h"
#include "tests/support/sentence.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/trainee.h"

using namespace scalpmark;
using geometry::Task;
using tests::is_sentence;
using tests::JsonSchema;
using tests::Slip;
using tests::TemporaryFolder;

namespace {

/// The demo's whole job, done by a hand that marks the vertex 10 mm forward and reads one tape 5 mm long.
models::ExerciseResult done_once() {
  models::ExerciseResult result;
  result.setup = models::read_exercise(SCALPMARK_SOURCE_DIR "/models/demo/exercises/whole-job.json");
  result.by = "RL";
  const auto answers = geometry::right_answers(models::exercise_head(result.setup).head,
                                               result.setup.the_case, result.setup.exercise);
  result.attempts.push_back(tests::attempt_with(answers, [](const geometry::Step& step, const auto&) {
    if (step.task == Task::vertex) return Slip{{10, 0}};
    if (step == geometry::Step{Task::three_tapes, 1}) return Slip{{5, 0}};
    return Slip{};
  }));
  result.attempts.back().seconds[Task::vertex] = 41.5;
  return result;
}

const models::ExerciseResult& one_result() {
  static const models::ExerciseResult result = done_once();
  return result;
}

geometry::Score score_of(const models::ExerciseResult& result) {
  return geometry::score(models::exercise_head(result.setup).head, result.setup.the_case,
                         result.setup.exercise, result.attempts.at(0));
}

std::string result_refused(const std::string& json) {
  std::string sentence =
      tests::sentence_of<models::ModelError>([&] { (void)models::parse_result(json, "", "anna.json"); });
  CHECK(is_sentence(sentence));
  return sentence;
}

std::string with_placed(const std::string& placed) {
  return R"({"format": "scalpmark-result", "version": 1, "exercise": {"tasks": ["three_tapes", "vertex", "coil"]}, )"
         R"("attempts": [{"placed": [)" +
         placed + "]}]}";
}

}  // namespace

TEST_CASE("a result is read as it was written, is valid by its schema, and scores the same", "[slow]") {
  const std::string json = models::result_json(one_result());
  const std::string objection = JsonSchema("result.schema.json").objection(json);
  INFO(objection);
  CHECK(objection.empty());
  CHECK(models::own_format(json) == "scalpmark-result");
  const models::ExerciseResult again = models::parse_result(json, one_result().setup.folder, "anna.json");
  CHECK(again.by == "RL");
  CHECK(again.setup == one_result().setup);
  REQUIRE(again.attempts.size() == 1);
  CHECK(again.attempts[0].seconds == one_result().attempts[0].seconds);
  const geometry::Score before = score_of(one_result()), after = score_of(again);
  REQUIRE(before.steps.size() == after.steps.size());
  for (std::size_t i = 0; i < before.steps.size(); ++i) {
    INFO(key_of(before.steps[i].step));
    CHECK(after.steps[i].own.mm == Approx(before.steps[i].own.mm).margin(0.02));
    CHECK(after.steps[i].off.mm == Approx(before.steps[i].off.mm).margin(0.02));
  }
  CHECK(after.pulse->off.mm == Approx(before.pulse->off.mm).margin(0.02));
}

TEST_CASE("no name stands in a result unless it was typed", "[slow]") {
  models::ExerciseResult nameless = one_result();
  nameless.by.clear();
  CHECK(models::result_json(nameless).find("\"by\"") == std::string::npos);
}

TEST_CASE("where a tape was held is kept with its reading") {
  models::ExerciseResult result;
  result.setup = models::default_exercise();
  geometry::Attempt& attempt = result.attempts.emplace_back();
  type_reading(attempt, {Task::three_tapes, 0}, 355, {{0, 90, 0}, {0, 0, 90}, {0, -90, 0}});
  const std::string json = models::result_json(result);
  CHECK(JsonSchema("result.schema.json").objection(json).empty());
  CHECK(models::parse_result(json, result.setup.folder, "a.json").attempts == result.attempts);
}

TEST_CASE("what is wrong in a result is refused by name") {
  const JsonSchema schema("result.schema.json");
  const std::vector<std::pair<std::string, std::string>> wrong{
      {with_placed(R"({"at": [1, 2, 3]})"), "step is missing"},
      {with_placed(R"({"step": "nose", "at": [1, 2, 3]})"), "placed[0].step"},
      {with_placed(R"({"step": "vertex"})"), "at is missing"},
      {with_placed(R"({"step": "vertex", "at": [1, 2]})"), "at"},
      {with_placed(R"({"step": "vertex", "at": [1, 2, 3], "angle_deg": 4})"), "angle_deg"},
      {with_placed(R"({"step": "nasion_inion", "at": [1, 2, 3]})"), "reading_mm is missing"},
      {with_placed(R"({"step": "nasion_inion", "reading_mm": 0})"), "reading_mm"},
      {with_placed(R"({"step": "nasion_inion", "reading_mm": 355, "tape": [[1, 2, 3]]})"), "tape[0]"},
      {with_placed(R"({"step": "coil", "at": [1, 2, 3]})"), "angle_deg is missing"},
      {with_placed(R"({"step": "coil", "at": [1, 2, 3], "angle_deg": 200})"), "angle_deg"},
      {R"({"format": "scalpmark-result", "version": 1, "attempts": []})", "exercise is missing"},
      {R"({"format": "scalpmark-result", "version": 1, "exercise": {"tasks": ["vertex"]}})",
       "attempts is missing"},
      {R"({"format": "scalpmark-result", "version": 1, "exercise": {"tasks": ["vertex"]}, "attempts": [{}]})",
       "placed is missing"}};
  for (const auto& [json, key] : wrong) {
    INFO(json);
    CHECK(result_refused(json).find(key) != std::string::npos);
    CHECK_FALSE(schema.objection(json).empty());
  }
  // Not for the schema: a step the exercise does not ask for, one given twice, a place on no head.
  CHECK(result_refused(with_placed(R"({"step": "start", "at": [1, 2, 3]})")).find("step of this exercise") !=
        std::string::npos);
  const std::string vertex = R"({"step": "vertex", "at": [1, 2, 3]})";
  CHECK(result_refused(with_placed(vertex + ", " + vertex)).find("twice") != std::string::npos);
  CHECK(result_refused(with_placed(R"({"step": "vertex", "at": [1e9, 2, 3]})")).find("at") !=
        std::string::npos);
}

TEST_CASE("a result cut short anywhere is refused in a sentence", "[slow]") {
  const std::string whole = models::result_json(one_result());
  for (std::size_t length = 0; length + 2 < whole.size(); length += 101)
    CHECK(is_sentence(result_refused(whole.substr(0, length))));
}

TEST_CASE("scores as a table have one line a step and one for the pulse", "[slow]") {
  models::TraineeScores trainee{"anna.json", "RL", {score_of(one_result())}};
  trainee.attempts[0].steps[1].misread_mm = -4.23;  // known only where a tape lay
  const std::string csv = models::score_csv({trainee, {"ben.json", "", {}}});
  CHECK(models::own_format(csv) == "scalpmark-csv");
  const models::CsvTable table = models::read_csv(csv, "scores");
  REQUIRE(table.columns.size() == 15);
  REQUIRE(table.rows.size() == 24 + 1);
  for (const auto& row : table.rows) {
    const std::string& step = row.cells[3];
    INFO(step);
    CHECK(row.cells[0] == "anna.json");
    CHECK(row.cells[1] == "RL");
    CHECK(row.cells[4] == "yes");
    if (step == "pulse") continue;
    // Paid for once: at the vertex, and in the tape that was read wrong.
    CHECK(row.cells[5] == (step == "vertex" ? "10.0" : step == "tragus_tragus" ? "5.0" : "0.0"));
  }
  for (std::size_t i = 0; i < trainee.attempts[0].steps.size(); ++i) {
    const geometry::StepScore& step = trainee.attempts[0].steps[i];
    const auto& cells = table.rows[i].cells;
    INFO(cells[3]);
    CHECK(cells[3] == geometry::key_of(step.step));
    const auto shows = [&](std::size_t column, const std::optional<double>& value) {
      CAPTURE(table.columns[column]);
      REQUIRE(cells[column].empty() == !value);
      if (value) CHECK(std::stod(cells[column]) == Approx(*value).margin(0.0501));
    };
    // A tape's reading is off along itself: no two ways.
    const auto ways = [&](std::size_t column, const geometry::Offset& offset) {
      const bool two = !step.placed->reading_mm;
      shows(column, offset.mm);
      shows(column + 1, two ? std::optional(offset.forward_mm) : std::nullopt);
      shows(column + 2, two ? std::optional(offset.outward_mm) : std::nullopt);
      shows(column + 3, offset.angle_deg);
    };
    ways(5, step.own);
    ways(9, step.off);
    shows(13, step.carried.mm);
    shows(14, step.misread_mm);
  }
  CHECK(table.rows.back().cells[3] == "pulse");
  CHECK(std::stod(table.rows.back().cells[9]) > 5);
}

TEST_CASE("initials and names of files are no formulas in the table of scores", "[slow]") {
  const geometry::Score score = score_of(one_result());
  for (const std::string typed : {"=cmd|' /C calc'!A0", "+1", "-1", "@SUM(1)", "AB;=1"}) {
    INFO(typed);
    models::ExerciseResult result = one_result();
    result.by = typed.substr(0, models::longest_trainee);
    // In the result itself they stay as they were typed.
    CHECK(models::parse_result(models::result_json(result), {}, "r.json").by == result.by);
    const std::string csv = models::score_csv({{typed + ".json", result.by, {score}}});
    for (const auto& row : models::read_csv(csv, "scores").rows) {
      CHECK(std::string("=+-@").find(row.cells[0].front()) == std::string::npos);
      CHECK(std::string("=+-@").find(row.cells[1].front()) == std::string::npos);
      CHECK(models::text_of_csv(row.cells[0]) == typed + ".json");
      CHECK(models::text_of_csv(row.cells[1]) == result.by);
    }
  }
}
