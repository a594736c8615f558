#include "models/exercises/exercise_file.h"

#include <catch2/catch.hpp>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "geometry/exercise/drawn_head.h"
#include "geometry/exercise/right_answers.h"
#include "geometry/plan/other_side.h"
#include "models/files/error.h"
#include "models/files/own_files.h"
#include "models/generic/generic_head.h"
#include "tests/support/json_schema.h"
#include "tests/support/sentence.h"
#include "tests/support/temporary_folder.h"

namespace fs = std::filesystem;
using namespace scalpmark;
using geometry::Task;
using tests::is_sentence;
using tests::JsonSchema;
using tests::TemporaryFolder;

namespace {

const std::string opening = R"({"format": "scalpmark-exercise", "version": 1, )";

models::ExerciseSetup parsed(const std::string& json) {
  return models::parse_exercise(json, "", "class.json");
}

std::string refused(const std::string& json) {
  std::string sentence = tests::sentence_of<models::ModelError>([&] { (void)parsed(json); });
  CHECK(is_sentence(sentence));
  CHECK(sentence.find("class.json") != std::string::npos);
  return sentence;
}

models::ExerciseSetup unusual() {
  models::ExerciseSetup setup = models::default_exercise();
  setup.exercise.title = "Nachmittag, zwölf Leute";
  setup.exercise.tasks = {Task::vertex, Task::grid, Task::find_again};
  setup.exercise.number = 31415;
  setup.exercise.minutes = 20;
  setup.exercise.tries = 3;
  geometry::lay_on_side(setup.the_case, geometry::Side::right);
  setup.the_case.coil.angle_deg = 30;
  setup.the_case.hotspot = {-1, 1};
  setup.the_case.errors.fiducial_mm = 3;
  return setup;
}

}  // namespace

TEST_CASE("an exercise is read as it was written, and is valid by its schema") {
  const JsonSchema schema("exercise.schema.json");
  for (const auto& setup : {models::default_exercise(), unusual()}) {
    const std::string json = models::exercise_json(setup);
    CHECK(schema.objection(json).empty());
    models::ExerciseSetup again = parsed(json);
    CHECK(again == setup);
    CHECK(models::own_format(json) == "scalpmark-exercise");
  }
}

TEST_CASE("an exercise on the case's own head keeps that head, and its tapes if it is the generic one") {
  models::ExerciseSetup setup = unusual();
  setup.exercise.drawn_head = false;
  setup.the_case.tape_mm.circumference_mm = 590;
  const std::string json = models::exercise_json(setup);
  CHECK(JsonSchema("exercise.schema.json").objection(json).empty());
  CHECK(parsed(json) == setup);
  const auto loaded = models::exercise_head(setup);
  CHECK(loaded.head.tapes().circumference_mm == Approx(590).margin(0.1));
  setup.head = {models::HeadKind::mesh, "scan.ply", models::Unit::millimetre,
                geometry::Fiducials{{0, 90, 0}, {0, -90, 0}, {-80, 0, 0}, {80, 0, 0}}};
  setup.the_case.tape_mm = {};
  const std::string scan = models::exercise_json(setup);
  CHECK(JsonSchema("exercise.schema.json").objection(scan).empty());
  CHECK(parsed(scan) == setup);
  CHECK(models::inputs_of("class.json", setup).size() == 2);
}

TEST_CASE("an exercise moved to another folder still finds its scan") {
  const TemporaryFolder folder;
  fs::create_directories(folder / "a");
  fs::create_directories(folder / "b");
  models::ExerciseSetup setup = models::default_exercise();
  setup.exercise.drawn_head = false;
  setup.folder = folder / "a";
  setup.head = {models::HeadKind::mesh,
                "scan.ply",
                {},
                geometry::Fiducials{{0, 90, 0}, {0, -90, 0}, {-80, 0, 0}, {80, 0, 0}}};
  models::write_exercise(folder / "b" / "class.json", setup);
  const models::ExerciseSetup moved = models::read_exercise(folder / "b" / "class.json");
  CHECK((moved.folder / moved.head.file).lexically_normal() ==
        (folder / "a" / "scan.ply").lexically_normal());
}

TEST_CASE("the demo exercises that ship are valid by their schema, are read, and can be done") {
  const JsonSchema schema("exercise.schema.json");
  int count = 0;
  for (const auto& entry : fs::directory_iterator(fs::path(SCALPMARK_SOURCE_DIR) / "models/demo/exercises")) {
    CAPTURE(entry.path());
    CHECK(schema.objection(tests::read_bytes(entry.path())).empty());
    const models::ExerciseSetup setup = models::read_exercise(entry.path());
    CHECK_FALSE(setup.exercise.title.empty());
    CHECK_NOTHROW(geometry::right_answers(models::exercise_head(setup).head, setup.the_case, setup.exercise));
    ++count;
  }
  CHECK(count >= 2);
}

TEST_CASE("a number draws the same head for a whole class, of usual tapes") {
  models::ExerciseSetup setup = models::default_exercise();
  for (const std::uint32_t number : {0U, 7U, 999999U}) {
    setup.exercise.number = number;
    const auto one = models::exercise_head(setup), other = models::exercise_head(setup);
    CHECK(one.head.skin().vertices() == other.head.skin().vertices());
    const geometry::MeasuredTapes drawn = geometry::drawn_tapes(number);
    CHECK(one.head.tapes().nasion_inion_mm == Approx(*drawn.nasion_inion_mm).margin(0.1));
    CHECK(one.head.tapes().tragus_tragus_mm == Approx(*drawn.tragus_tragus_mm).margin(0.1));
    CHECK(one.head.tapes().circumference_mm == Approx(*drawn.circumference_mm).margin(0.1));
    // Which head it is is no secret, its tapes are: the trainee is to read them.
    CHECK(english(one.description).find("cm") == std::string::npos);
  }
}

TEST_CASE("every number up to a class's worth draws a head", "[slow]") {
  for (std::uint32_t number = 1; number <= 60; ++number)
    CHECK_NOTHROW(geometry::drawn_head(models::generic_head(), number));
}

TEST_CASE("what is wrong in an exercise is refused by name") {
  const JsonSchema schema("exercise.schema.json");
  const std::string tasks = R"("tasks": ["vertex", "start"])";
  const std::vector<std::pair<std::string, std::string>> wrong{
      {opening + R"("title": "x"})", "tasks is missing"},
      {opening + R"("tasks": []})", "tasks"},
      {opening + R"("tasks": "vertex"})", "tasks"},
      {opening + R"("tasks": ["vertex", 3]})", "tasks[1]"},
      {opening + R"("tasks": ["nose"]})", "tasks[0]"},
      {opening + R"("tasks": ["vertex", "vertex"]})", "tasks"},
      {opening + tasks + R"(, "number": -1})", "number"},
      {opening + tasks + R"(, "number": 1000000})", "number"},
      {opening + tasks + R"(, "number": 1.5})", "number"},
      {opening + tasks + R"(, "minutes": 0})", "minutes"},
      {opening + tasks + R"(, "tries": 21})", "tries"},
      {opening + tasks + R"(, "colour": 1})", "colour"},
      {opening + tasks + R"(, "head": {"kind": "drawn"}})", "head.kind"},
      {opening + tasks + R"(, "case": {"label": "A"}})", "label"},
      {opening + tasks + R"(, "case": {"side": "up"}})", "case.side"},
      {opening + tasks + R"(, "case": {"coil": {"angle_deg": 400}}})", "angle_deg"},
      {opening + tasks + R"(, "title": ")" + std::string(121, 'x') + "\"}", "title"},
      {R"({"format": "scalpmark-case", "version": 1, )" + tasks + "}", "format"},
      {R"({"format": "scalpmark-exercise", "version": 2, )" + tasks + "}", "version"}};
  for (const auto& [json, key] : wrong) {
    INFO(json);
    CHECK(refused(json).find(key) != std::string::npos);
    CHECK_FALSE(schema.objection(json).empty());
  }
  // Not for the schema: the order of the trade, and tapes that no head of the case's own is scaled to.
  CHECK(refused(opening + R"("tasks": ["start", "vertex"]})").find("tasks") != std::string::npos);
  CHECK(refused(opening + tasks + R"(, "case": {"tape_mm": {"circumference": 560}}})").find("tape_mm") !=
        std::string::npos);
}

TEST_CASE("files that are no exercise are refused soon and in a sentence") {
  const TemporaryFolder folder;
  const auto refused_file = [&](const std::string& name) {
    return tests::sentence_of<models::ModelError>([&] { (void)models::read_exercise(folder / name); });
  };
  CHECK(is_sentence(refused_file("none.json")));
  tests::write_bytes(folder / "big.json", opening + std::string(300'000, ' '));
  CHECK(refused_file("big.json").find("larger than") != std::string::npos);
  tests::write_bytes(folder / "deep.json", std::string(100'000, '['));
  CHECK(refused_file("deep.json").find("nested deeper") != std::string::npos);
  tests::write_bytes(folder / "noise.json", std::string("\x89PNG\0\r\n", 7));
  CHECK(is_sentence(refused_file("noise.json")));
  const std::string whole = models::exercise_json(models::default_exercise());
  for (std::size_t length = 0; length + 2 < whole.size(); length += 37)
    CHECK(
        is_sentence(tests::sentence_of<models::ModelError>([&] { (void)parsed(whole.substr(0, length)); })));
}
