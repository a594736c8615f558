#include "viewer/practise/class_page.h"

#include <sys/wait.h>

#include <QGuiApplication>
#include <QImage>
#include <QPointF>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <regex>

#include "tests/support/class_files.h"
#include "tests/support/own_folder.h"
#include "viewer/practise/class_chart.h"
#include "viewer/stage/scene/palette.h"

using namespace scalpmark;
using tests::slurp;
using Folder = tests::OwnFolder;

namespace {

/// What poppler-utils (Debian) say of a PDF: nothing of ours reads it back.
std::string by_poppler(const Folder& folder, const std::string& program, const std::string& pdf) {
  const std::string out = folder.file("poppler");
  const bool info = program == "pdfinfo";
  const int status =
      std::system((program + " '" + pdf + "' " + (info ? ">" : "") + "'" + out + "' 2>/dev/null").c_str());
  REQUIRE(WIFEXITED(status));
  REQUIRE(WEXITSTATUS(status) == 0);
  return slurp(out);
}

}  // namespace

TEST_CASE("the class page is one page of the whole job, on A4 and on Letter, and says what it is not") {
  const Folder folder;
  models::ExerciseSetup setup = models::default_exercise();
  setup.exercise.title = "The whole job, morning class";
  const auto files = tests::write_class(folder.path, setup, 8);
  viewer::ClassResults results = viewer::class_results(files);
  for (int i = 0; i < 40; ++i)
    results.left_out.push_back(geometry::Message::of(
        "Left out: %1",
        geometry::Message::verbatim("damaged-" + std::to_string(i) + ".json is not JSON; save it again.")));
  const auto hands = viewer::hands_here(*results.answers);
  REQUIRE(hands);
  const viewer::SheetView picture = viewer::class_picture(results, hands);
  CHECK(picture.rgb.size() == static_cast<std::size_t>(3 * picture.width * picture.height));
  for (const auto& [paper, size] :
       {std::pair(viewer::Paper::a4, "(A4)"), std::pair(viewer::Paper::letter, "(letter)")}) {
    const std::string pdf = folder.file("class.pdf");
    std::ofstream(pdf, std::ios::binary) << viewer::class_pdf(results, picture, hands, paper);
    const std::string info = by_poppler(folder, "pdfinfo", pdf);
    INFO(info);
    CHECK(std::regex_search(info, std::regex("Pages: +1\n")));
    CHECK(info.find(size) != std::string::npos);
    // Letters that are printed as one, and lines, are taken apart and together again.
    std::string text = by_poppler(folder, "pdftotext", pdf);
    text = std::regex_replace(text, std::regex("\xef\xac\x81"), "fi");
    text = std::regex_replace(text, std::regex("\\s+"), " ");
    for (const char* said :
         {"Class page", "morning class", "8 trainees", "nasion", "hotspot", "edge mark", "no certificate",
          "not a navigation", "Caulfield et al. 2022", "Files left out: 40"})
      CHECK_THAT(text, Catch::Contains(said));
    // No trainee's name stands on what hangs on the wall.
    CHECK(text.find("trainee-0") == std::string::npos);
  }
}

TEST_CASE("the middle and quartiles on the class page are those of the trainees' own errors") {
  const Folder folder;
  models::ExerciseSetup setup = models::default_exercise();
  setup.exercise.tasks = {geometry::Task::vertex};
  const auto answers =
      geometry::right_answers(models::exercise_head(setup).head, setup.the_case, setup.exercise);
  std::vector<std::filesystem::path> files;
  // 2, 4, 6, 8 and 10 mm forward: a quarter at 4, the middle 6, three quarters 8.
  for (int i = 1; i <= 5; ++i) {
    models::ExerciseResult result{setup, "", {}};
    result.attempts.push_back(tests::attempt_with(answers, [&](const geometry::Step&, const auto&) {
      return tests::Slip{{2.0 * i, 0}};
    }));
    files.push_back(folder.path / (std::to_string(i) + ".json"));
    models::write_result(files.back(), result);
  }
  const viewer::ClassResults results = viewer::class_results(files);
  const std::string pdf = folder.file("class.pdf");
  std::ofstream(pdf, std::ios::binary)
      << viewer::class_pdf(results, viewer::class_picture(results, {}), {}, viewer::Paper::a4);
  const std::string text = by_poppler(folder, "pdftotext -layout", pdf);
  INFO(text);
  CHECK(std::regex_search(text, std::regex("vertex +5 +4\\.0 +6\\.0 +8\\.0 +6\\.0")));
}

TEST_CASE(
    "the class page names the side, and half and quarters of the pulses of each trainee's last attempt") {
  const Folder folder;
  for (const geometry::Side side : {geometry::Side::left, geometry::Side::right}) {
    models::ExerciseSetup setup = models::default_exercise();
    setup.the_case.side = side;
    setup.exercise.tasks = {geometry::Task::site};
    const auto answers =
        geometry::right_answers(models::exercise_head(setup).head, setup.the_case, setup.exercise);
    const auto off_by = [&](double mm) {
      return tests::attempt_with(answers, [&](const geometry::Step&, const auto&) {
        return tests::Slip{{mm, 0}};
      });
    };
    std::vector<std::filesystem::path> files;
    std::vector<double> off;
    for (int i = 1; i <= 5; ++i) {
      const models::ExerciseResult result{setup, "", {off_by(40), off_by(3.0 * i)}};
      off.push_back(geometry::score(answers, result.attempts.back()).pulse->off.mm);
      files.push_back(folder.path / (std::to_string(i) + ".json"));
      models::write_result(files.back(), result);
    }
    std::sort(off.begin(), off.end());
    const viewer::ClassResults results = viewer::class_results(files);
    const std::string pdf = folder.file("class.pdf");
    std::ofstream(pdf, std::ios::binary)
        << viewer::class_pdf(results, viewer::class_picture(results, {}), {}, viewer::Paper::a4);
    const std::string text =
        std::regex_replace(by_poppler(folder, "pdftotext", pdf), std::regex("\\s+"), " ");
    INFO(text);
    const auto length = [](double mm) { return geometry::to_text(geometry::number(mm, 1)); };
    CHECK_THAT(text, Catch::Contains("Pulse at the end, of 5: half within " + length(off[2])));
    CHECK_THAT(text, Catch::Contains("a quarter within " + length(off[1])));
    CHECK_THAT(text, Catch::Contains("three quarters within " + length(off[3])));
    const bool left = side == geometry::Side::left;
    CHECK_THAT(text, Catch::Contains(left ? "left side" : "right side"));
    CHECK_THAT(text, !Catch::Contains(left ? "right side" : "left side"));
  }
}

TEST_CASE("every trainee's pulse is a disc of its own on the class's head") {
  const Folder folder;
  models::ExerciseSetup setup = models::default_exercise();
  setup.exercise.tasks = {geometry::Task::site};
  const viewer::ClassResults results = viewer::class_results(tests::write_class(folder.path, setup, 3));
  const viewer::Shown shown = viewer::class_shown(results, {});
  REQUIRE(shown.notes.size() == 3);
  for (std::size_t i = 0; i < 3; ++i)
    CHECK(shown.notes[i].at == results.trainees[i].attempts.back().pulse->real);
}

TEST_CASE("the chart reaches as far as the furthest pulse, and no further than it must") {
  const auto pulse_at = [](double forward_mm, double outward_mm) {
    geometry::Score score;
    score.pulse = geometry::PulseScore{};
    score.pulse->off = {std::hypot(forward_mm, outward_mm), forward_mm, outward_mm, {}};
    return score;
  };
  geometry::Tolerance hands;
  hands.most_mm = 31;
  CHECK(viewer::chart_reach_mm({}, nullptr) == 20);
  CHECK(viewer::chart_reach_mm({pulse_at(3, -24)}, nullptr) == 30);
  CHECK(viewer::chart_reach_mm({pulse_at(3, -24)}, &hands) == 40);
  CHECK(viewer::chart_reach_mm({pulse_at(-300, 0)}, nullptr) == 60);
}

// Seen from above with the nose up: forward is up, and outward is the patient's own side of the paper.
TEST_CASE(
    "on the class page's chart forward is up, and outward left on the left side and right on the right") {
  const Folder folder;
  for (const geometry::Side side : {geometry::Side::left, geometry::Side::right})
    for (const bool forward : {true, false}) {
      CAPTURE(side, forward);
      models::ExerciseSetup setup = models::default_exercise();
      setup.the_case.side = side;
      setup.exercise.tasks = {geometry::Task::site};
      const auto answers =
          geometry::right_answers(models::exercise_head(setup).head, setup.the_case, setup.exercise);
      models::ExerciseResult result{setup, "", {}};
      result.attempts.push_back(tests::attempt_with(answers, [&](const geometry::Step&, const auto&) {
        return forward ? tests::Slip{{15, 0}} : tests::Slip{{0, 15}};
      }));
      const std::filesystem::path file = folder.path / "one.json";
      models::write_result(file, result);
      const viewer::ClassResults results = viewer::class_results({file});
      const std::string pdf = folder.file("class.pdf");
      std::ofstream(pdf, std::ios::binary)
          << viewer::class_pdf(results, viewer::class_picture(results, {}), {}, viewer::Paper::a4);
      const std::string name = folder.file("page");
      const int status =
          std::system(("pdftoppm -r 150 -png -singlefile '" + pdf + "' '" + name + "'").c_str());
      REQUIRE(WIFEXITED(status));
      REQUIRE(WEXITSTATUS(status) == 0);
      const QImage page(QString::fromStdString(name + ".png"));
      // The head's picture stands on the left half of the page, the chart on the right one.
      const auto middle_of = [&](const viewer::Colour& colour) {
        QPointF sum;
        int count = 0;
        for (int y = 0; y < page.height(); ++y)
          for (int x = page.width() / 2; x < page.width(); ++x)
            if (page.pixel(x, y) == qRgb(colour.red, colour.green, colour.blue)) {
              sum += QPointF(x, y);
              ++count;
            }
        REQUIRE(count > 10);
        return sum / count;
      };
      const QPointF off = middle_of(viewer::palette::pulse) - middle_of(viewer::palette::treatment);
      const double outward = side == geometry::Side::left ? -off.x() : off.x();
      INFO(off.x() << " " << off.y());
      if (forward) {
        CHECK(-off.y() > 40);
        CHECK(std::abs(off.x()) < 20);
      } else {
        CHECK(outward > 40);
        CHECK(std::abs(off.y()) < 20);
      }
    }
}
