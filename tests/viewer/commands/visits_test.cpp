#include <sys/stat.h>
#include <sys/wait.h>

#include <catch2/catch.hpp>
#include <cstdlib>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "tests/support/json_schema.h"
#include "tests/support/own_folder.h"

using scalpmark::tests::JsonSchema;
using scalpmark::tests::slurp;
using Folder = scalpmark::tests::OwnFolder;

namespace {

struct Finished {
  int exit = -1;
  std::string out, err;
};

Finished finish(const Folder& folder, const std::string& arguments) {
  const std::string out = folder.file("stdout"), err = folder.file("stderr");
  const int status = std::system(
      ("env -u DISPLAY '" SCALPMARK_PROGRAM "' " + arguments + " >'" + out + "' 2>'" + err + "'").c_str());
  return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, slurp(out), slurp(err)};
}

const std::string demo = SCALPMARK_SOURCE_DIR "/models/demo/twelve-visits.json";
const std::string bench = SCALPMARK_SOURCE_DIR "/models/demo/bench-head.json";

std::string written(const Folder& folder, const std::string& name, const std::string& text) {
  std::ofstream(folder.file(name)) << text;
  return folder.file(name);
}

void check_one_line(const std::string& err) {
  INFO(err);
  CHECK(err.rfind("scalpmark: ", 0) == 0);
  CHECK(std::count(err.begin(), err.end(), '\n') == 1);
}

void check_width(const std::string& text) {
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) CHECK(line.size() <= 80);
}

}  // namespace

TEST_CASE("answers says what a visit's pulses tell, as text and as JSON") {
  const Folder folder;
  const std::string out = folder.file("answers.json");
  const Finished r = finish(folder, "answers '" + demo + "' --visit 1 --out '" + out + "'");
  CHECK(r.exit == 0);
  check_width(r.out);
  CHECK(r.out.find("Threshold at the spot") != std::string::npos);
  CHECK(r.out.find("11.3 %") != std::string::npos);
  const std::string json = slurp(out);
  CHECK(JsonSchema("answers.schema.json").objection(json).empty());
  CHECK(nlohmann::json::parse(json)["visit"] == 1);
  // A spread taken for known narrows the interval; another output is another map.
  const auto known =
      nlohmann::json::parse(finish(folder, "answers '" + demo + "' --visit 1 --spread 0.07 --out -").out);
  const auto unknown = nlohmann::json::parse(json);
  const auto width = [](const nlohmann::json& a) {
    return a["threshold"]["estimate"]["high"].get<double>() - a["threshold"]["estimate"]["low"].get<double>();
  };
  CHECK(width(known) != width(unknown));
  const auto at_50 =
      nlohmann::json::parse(finish(folder, "answers '" + demo + "' --visit 1 --output 50 --out -").out);
  CHECK(at_50["output_percent"] == 50);
}

TEST_CASE(
    "answers without pulses, of no such visit, or with a spread that is none, is refused in a sentence") {
  const Folder folder;
  const Finished none = finish(folder, "answers '" + bench + "'");
  CHECK(none.exit == 1);
  check_one_line(none.err);
  for (const char* bad :
       {"--visit 0", "--visit 99", "--visit x", "--spread 0", "--spread 2", "--output 0", "--output 101"}) {
    const Finished r = finish(folder, "answers '" + demo + "' " + bad);
    INFO(bad);
    CHECK(r.exit == 2);
    check_one_line(r.err);
  }
}

TEST_CASE("course writes a row a visit, and says whether they drift") {
  const Folder folder;
  const std::string out = folder.file("course.csv");
  const Finished r = finish(folder, "course '" + demo + "' --out '" + out + "'");
  CHECK(r.exit == 0);
  check_width(r.out);
  // The demo's last four visits were made from a site 5 mm less forward.
  CHECK(r.out.find("The last 4 visits lie") != std::string::npos);
  CHECK(r.out.find("behind the first 8") != std::string::npos);
  const std::string table = slurp(out);
  CHECK(table.rfind("date,by,pulse_off_mm,forward_mm,toward_midline_mm,angle_off_deg,outside_limits\r\n",
                    0) == 0);
  CHECK(std::count(table.begin(), table.end(), '\n') == 13);
  CHECK(finish(folder, "course '" + demo + "' --out -").out == table);
  CHECK(finish(folder, "course '" + bench + "'").out == "This case has no visits yet.\n");
  // Over its own kind without a word, over another's not.
  CHECK(finish(folder, "course '" + demo + "' --out '" + out + "'").exit == 0);
  CHECK(finish(folder, "course '" + demo + "' --out '" + written(folder, "mine.csv", "a,b\n") + "'").exit ==
        1);
  CHECK(slurp(folder.file("mine.csv")) == "a,b\n");
}

TEST_CASE("visits and pulses go out as tables and come in again, all or nothing") {
  const Folder folder;
  const std::string visits = folder.file("visits.csv"), pulses = folder.file("pulses.csv"),
                    made = folder.file("made.json");
  CHECK(finish(folder, "log '" + demo + "' --table visits --out '" + visits + "'").exit == 0);
  CHECK(finish(folder, "log '" + demo + "' --table pulses --out '" + pulses + "'").exit == 0);
  const Finished in = finish(
      folder, "log '" + bench + "' --visits '" + visits + "' --pulses '" + pulses + "' --out '" + made + "'");
  CHECK(in.exit == 0);
  CHECK(nlohmann::json::parse(slurp(made))["visits"] == nlohmann::json::parse(slurp(demo))["visits"]);
  struct stat status {};
  REQUIRE(::stat(made.c_str(), &status) == 0);
  CHECK((status.st_mode & 0777U) == 0600);
  // A bad row: its line is named, and no case is written.
  const std::string bad =
      written(folder, "bad.csv",
              "visit,spot_row,spot_column,output_percent,answer\n1,0,0,50,thumb\n1,0,0,150,thumb\n");
  const std::string other = folder.file("other.json");
  const Finished refused = finish(folder, "log '" + demo + "' --pulses '" + bad + "' --out '" + other + "'");
  CHECK(refused.exit == 1);
  check_one_line(refused.err);
  CHECK(refused.err.find("line 3: output_percent must be") != std::string::npos);
  CHECK(slurp(other).empty());
  // Never over what is read.
  CHECK(finish(folder, "log '" + made + "' --visits '" + visits + "' --out '" + made + "'").exit == 1);
  CHECK(finish(folder, "log '" + made + "' --visits '" + visits + "' --out '" + visits + "'").exit == 1);
  for (const char* unclear : {"", "--table visits", "--table spots --out x.csv", "--out x.csv",
                              "--table visits --visits x.csv --out y.csv"}) {
    INFO(unclear);
    const Finished r = finish(folder, "log '" + demo + "' " + unclear);
    CHECK(r.exit == 2);
    check_one_line(r.err);
  }
}

TEST_CASE("answers and course are drawn on the command line") {
  const Folder folder;
  const std::string out = folder.file("course.png");
  CHECK(finish(folder, "picture '" + demo +
                           "' --show skin,treatment,course,answers,labels --size 640x480 --out '" + out + "'")
            .exit == 0);
  CHECK(slurp(out).rfind("\x89PNG", 0) == 0);
}
