#include <sys/wait.h>

#include <catch2/catch.hpp>
#include <cstdlib>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "models/files/csv.h"
#include "models/files/own_files.h"
#include "tests/support/class_files.h"
#include "tests/support/json_schema.h"
#include "tests/support/own_folder.h"

namespace fs = std::filesystem;
using namespace scalpmark;
using tests::JsonSchema;
using tests::slurp;
using Folder = tests::OwnFolder;

namespace {

struct Done {
  int exit = -1;
  std::string out, err;
};

Done do_it(const Folder& folder, const std::string& arguments) {
  const std::string out = folder.file("stdout"), err = folder.file("stderr");
  const int status = std::system(
      ("env -u DISPLAY '" SCALPMARK_PROGRAM "' " + arguments + " >'" + out + "' 2>'" + err + "'").c_str());
  return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, slurp(out), slurp(err)};
}

const std::string demo_folder = SCALPMARK_SOURCE_DIR "/models/demo/";
const std::string whole_job = demo_folder + "exercises/whole-job.json";

}  // namespace

TEST_CASE("exercise writes what was asked for, valid by the schema, and says what it asks for") {
  const Folder folder;
  const std::string out = folder.file("class.json");
  const Done r = do_it(folder,
                       "exercise --title 'Two steps' --tasks start,vertex --number 42 --side right "
                       "--minutes 10 --tries 3 --out '" +
                           out + "'");
  CHECK(r.exit == 0);
  CHECK(r.err.empty());
  CHECK_THAT(r.out, Catch::Contains("Two steps") && Catch::Contains("42") && Catch::Contains("right") &&
                        Catch::Contains("no certificate"));
  CHECK(JsonSchema("exercise.schema.json").objection(slurp(out)).empty());
  const models::ExerciseSetup setup = models::read_exercise(out);
  CHECK(setup.exercise.tasks == std::vector{geometry::Task::vertex, geometry::Task::start});
  CHECK(setup.exercise.number == 42);
  CHECK(setup.the_case.side == geometry::Side::right);
  CHECK(setup.exercise.minutes == 10);
  // From a file, changed; to the standard output.
  const Done changed = do_it(folder, "exercise '" + out + "' --number 43 --out -");
  CHECK(changed.exit == 0);
  CHECK(models::parse_exercise(changed.out, "", "stdout").exercise.number == 43);
  CHECK(models::parse_exercise(changed.out, "", "stdout").exercise.title == "Two steps");
}

TEST_CASE("exercise takes a case's settings, and its head if asked for") {
  const Folder folder;
  const std::string bench = demo_folder + "bench-head.json";
  const Done drawn = do_it(folder, "exercise --case '" + bench + "' --out -");
  CHECK(drawn.exit == 0);
  CHECK(models::parse_exercise(drawn.out, "", "stdout").exercise.drawn_head);
  const Done own = do_it(folder, "exercise --case '" + bench + "' --own-head --out -");
  const models::ExerciseSetup setup = models::parse_exercise(own.out, "", "stdout");
  CHECK_FALSE(setup.exercise.drawn_head);
  CHECK(*setup.the_case.tape_mm.circumference_mm == 565);
  CHECK(JsonSchema("exercise.schema.json").objection(own.out).empty());
}

TEST_CASE("exercise and score refuse what they cannot understand with exit 2, and write nothing") {
  const Folder folder;
  const std::string out = folder.file("out.json");
  for (const std::string& arguments :
       {std::string("exercise --tasks nose"), std::string("exercise --tasks start,start"),
        std::string("exercise --tasks ''"), std::string("exercise --number 1000000"),
        std::string("exercise --number -1"), std::string("exercise --side up"),
        std::string("exercise --own-head"), std::string("exercise --minutes 0"), std::string("score"),
        "score '" + whole_job + "' --class -", "score '" + whole_job + "' --paper a3"}) {
    INFO(arguments);
    const Done r =
        do_it(folder, arguments + (arguments.rfind("exercise", 0) == 0 ? " --out '" + out + "'" : ""));
    CHECK(r.exit == 2);
    CHECK(r.out.empty());
    CHECK(std::count(r.err.begin(), r.err.end(), '\n') == 1);
    CHECK_FALSE(fs::exists(out));
  }
  // Exit 1: understood, but not to be done.
  const Done wrong_kind = do_it(folder, "score '" + whole_job + "'");
  CHECK(wrong_kind.exit == 1);
  CHECK_THAT(wrong_kind.err, Catch::Contains("whole-job.json"));
  const Done over_input = do_it(folder, "exercise '" + whole_job + "' --out '" + whole_job + "'");
  CHECK(over_input.exit == 1);
}

TEST_CASE("score makes text, table and page of a class, and names what it leaves out") {
  const Folder folder;
  models::ExerciseSetup setup = models::read_exercise(whole_job);
  setup.exercise.tasks = {geometry::Task::vertex, geometry::Task::start, geometry::Task::coil};
  const auto files = tests::write_class(folder.path, setup, 3);
  std::ofstream(folder.file("torn.json")) << "{";
  std::string names;
  for (const fs::path& file : files) names += " '" + file.string() + "'";
  const std::string csv = folder.file("scores.csv"), pdf = folder.file("class.pdf");
  const Done r = do_it(folder, "score" + names + " '" + folder.file("torn.json") + "' --csv '" + csv +
                                   "' --class '" + pdf + "'");
  INFO(r.err);
  CHECK(r.exit == 0);
  CHECK_THAT(r.err, Catch::Contains("torn.json"));
  CHECK_THAT(r.out, Catch::Contains("trainee-0.json") && Catch::Contains("no certificate"));
  const models::CsvTable table = models::read_csv(slurp(csv), "scores.csv");
  CHECK(table.rows.size() == size_t{3} * (3 + 1));
  CHECK(models::own_format_of(pdf) == "scalpmark-pdf");
  // Once more over its own files; not over another kind, nor over what it reads.
  CHECK(do_it(folder, "score" + names + " --csv '" + csv + "' --class '" + pdf + "'").exit == 0);
  CHECK(do_it(folder, "score" + names + " --csv '" + pdf + "'").exit == 1);
  CHECK(do_it(folder, "score" + names + " --force --csv '" + files[0].string() + "'").exit == 1);
  CHECK(do_it(folder, "score" + names + " --csv -").out.rfind("file,initials,attempt,", 0) == 0);
}
