#include "viewer/practise/class_results.h"

#include <catch2/catch.hpp>

#include "tests/support/class_files.h"
#include "tests/support/sentence.h"
#include "tests/support/temporary_folder.h"
#include "viewer/practise/score_text.h"
#include "viewer/words/error.h"

namespace fs = std::filesystem;
using namespace scalpmark;
using tests::is_sentence;
using tests::TemporaryFolder;

namespace {

models::ExerciseSetup short_exercise() {
  models::ExerciseSetup setup = models::default_exercise();
  setup.exercise.tasks = {geometry::Task::vertex, geometry::Task::start, geometry::Task::coil};
  return setup;
}

}  // namespace

TEST_CASE("a damaged file, and one of another exercise, are named and left out of the class") {
  const TemporaryFolder folder;
  std::vector<fs::path> files = tests::write_class(folder.path(), short_exercise(), 4);
  tests::write_bytes(folder / "torn.json", "{ \"format\": \"scalpmark-result\", ");
  models::ExerciseSetup other = short_exercise();
  other.exercise.number = 2;
  models::write_result(folder / "other.json", {other, "ZZ", {}});
  files.insert(files.begin(), {folder / "torn.json", folder / "other.json"});
  files.push_back(folder / "none.json");
  const viewer::ClassResults results = viewer::class_results(files);
  CHECK(results.trainees.size() == 4);
  CHECK(results.setup.exercise.number == 1);
  REQUIRE(results.left_out.size() == 3);
  std::string all;
  for (const geometry::Message& said : results.left_out) {
    CHECK(is_sentence(english(said)));
    all += english(said);
  }
  for (const char* name : {"torn.json", "other.json", "none.json"})
    CHECK(all.find(name) != std::string::npos);
  CHECK(viewer::last_attempts(results).size() == 4);
}

TEST_CASE("an exercise with another title or other limits is the same exercise") {
  const TemporaryFolder folder;
  models::ExerciseSetup one = short_exercise(), other = short_exercise();
  other.exercise.title = "Afternoon";
  other.exercise.minutes = 5;
  models::write_result(folder / "a.json", {one, "", {}});
  models::write_result(folder / "b.json", {other, "", {}});
  const viewer::ClassResults results = viewer::class_results({folder / "a.json", folder / "b.json"});
  CHECK(results.trainees.size() == 2);
  CHECK(results.left_out.empty());
}

TEST_CASE("no file at all, and files of which none can be read, are refused") {
  const auto refused = [](const std::vector<fs::path>& files) {
    return tests::sentence_of<viewer::ViewerError>([&] { (void)viewer::class_results(files); });
  };
  CHECK(is_sentence(refused({})));
  CHECK(refused({"/nowhere/a.json"}).find("a.json") != std::string::npos);
}

TEST_CASE("what is thrown between files ends the work") {
  struct Enough {};
  const TemporaryFolder folder;
  const auto files = tests::write_class(folder.path(), short_exercise(), 2);
  CHECK_THROWS_AS(viewer::class_results(files, models::read_skin, [] { throw Enough{}; }), Enough);
}

TEST_CASE("one trainee's scores are told step by step, a class's by trainee and by step") {
  const TemporaryFolder folder;
  const auto files = tests::write_class(folder.path(), short_exercise(), 3);
  const auto check_width = [](const std::string& text) {
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) CHECK(line.size() <= 80);
  };
  const std::string alone = viewer::score_text(viewer::class_results({files[0]}), nullptr);
  check_width(alone);
  for (const char* said : {"vertex", "start", "coil on one's own marks", "pulse at the end", "no certificate",
                           "Caulfield et al. 2022", "two tries or more"})
    CHECK_THAT(alone, Catch::Contains(said));
  const std::string all = viewer::score_text(viewer::class_results(files), nullptr);
  check_width(all);
  for (const char* said : {"AB (trainee-0.json)", "CB (trainee-2.json)", "vertex", "no certificate"})
    CHECK_THAT(all, Catch::Contains(said));
}
