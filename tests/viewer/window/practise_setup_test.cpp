// An exercise as a trainer makes it: chosen in the window, kept in a file, with limits; and files that are
// spoilt.
#include <catch2/catch.hpp>
#include <fstream>

#include "models/exercises/exercise_file.h"
#include "tests/support/sentence.h"
#include "tests/viewer/window/practise_hands.h"

using namespace scalpmark;
using namespace scalpmark::window;
using geometry::Task;

namespace {

struct Trainer : OpenedWindow {
  Trainer() { QTest::mouseClick(window.mode_button(Mode::practise), Qt::LeftButton); }

  [[nodiscard]] Practise& practise() { return window.practise(); }
  [[nodiscard]] SetupPanel& setup() { return practise().setup_panel(); }
  QString saved() {
    QString file = folder.filePath(QStringLiteral("class.json"));
    practise().ask_target = [file](const QString&, const QString&, const QString&) { return QString(file); };
    QTest::mouseClick(setup().save(), Qt::LeftButton);
    return file;
  }
  void ask_for(const std::vector<Task>& tasks) {
    for (const Task task : geometry::all_tasks)
      if (setup().task(task)->isChecked() != (std::find(tasks.begin(), tasks.end(), task) != tasks.end()))
        setup().task(task)->click();
  }
  void begin() {
    QTest::mouseClick(setup().begin(), Qt::LeftButton);
    wait_until([this] { return practise().run().is_on() || !setup().problem().isEmpty(); });
  }
};

const QString whole_job = QStringLiteral(SCALPMARK_SOURCE_DIR "/models/demo/exercises/whole-job.json");

}  // namespace

TEST_CASE("a trainer picks tasks from the list, limits and a name, and the file has them") {
  Trainer trainer;
  SetupPanel& setup = trainer.setup();
  for (auto* button : setup.findChildren<QPushButton*>())
    if (button->text() == QStringLiteral("None")) QTest::mouseClick(button, Qt::LeftButton);
  for (const Task task : {Task::site, Task::vertex}) setup.task(task)->click();
  setup.number()->setValue(777);
  setup.minutes()->setValue(12);
  setup.tries()->setValue(4);
  for (auto* edit : setup.findChildren<QLineEdit*>())
    if (edit->accessibleName() == QStringLiteral("Name of the exercise")) {
      // As many characters as a file may have, none lost in the window.
      QTest::keyClicks(edit, QString(static_cast<int>(geometry::longest_title) + 5, QLatin1Char('x')));
    }
  const models::ExerciseSetup kept = models::read_exercise(trainer.saved().toStdString());
  // Clicked in any order, kept in that of the trade.
  CHECK(kept.exercise.tasks == std::vector{Task::vertex, Task::site});
  CHECK(kept.exercise.number == 777);
  CHECK(kept.exercise.minutes == 12);
  CHECK(kept.exercise.tries == 4);
  CHECK(kept.exercise.title == std::string(geometry::longest_title, 'x'));
  CHECK(kept.exercise.drawn_head);
  Trainer other;
  other.practise().open_exercise(trainer.folder.filePath(QStringLiteral("class.json")));
  CHECK(other.setup().setup().exercise == kept.exercise);
  CHECK(other.setup().minutes()->value() == 12);
}

TEST_CASE("an exercise without a task is not kept, and the file that was there stays") {
  Trainer trainer;
  const QString file = trainer.saved();
  const auto before = models::read_exercise(file.toStdString());
  trainer.ask_for({});
  QString said;
  QObject::connect(&trainer.practise(), &Practise::notice, [&](const QString& sentence) { said = sentence; });
  (void)trainer.saved();
  CHECK(tests::is_sentence(said.toStdString()));
  CHECK(models::read_exercise(file.toStdString()) == before);
}

TEST_CASE("a spoilt exercise is refused in a sentence and changes nothing in the window") {
  Trainer trainer;
  const models::ExerciseSetup before = trainer.setup().setup();
  const std::string whole = models::exercise_json(models::default_exercise());
  const auto replaced = [&](const std::string& what, const std::string& by) {
    std::string text = whole;
    text.replace(text.find(what), what.size(), by);
    return text;
  };
  for (const std::string& text : std::vector<std::string>{
           "", "{", whole.substr(0, whole.size() / 2), replaced("\"start\"", "\"end\""),
           replaced("\"number\": 1", "\"number\": 1e9"), replaced("scalpmark-exercise", "scalpmark-case"),
           replaced("\"tasks\"", "\"tasks\": [], \"tasks\""), "\xff\xfe{}"}) {
    INFO(text);
    const QString file = trainer.folder.filePath(QStringLiteral("spoilt.json"));
    std::ofstream(file.toStdString(), std::ios::binary) << text;
    QString said;
    const auto heard = QObject::connect(&trainer.practise(), &Practise::notice,
                                        [&](const QString& sentence) { said = sentence; });
    trainer.practise().open_exercise(file);
    QObject::disconnect(heard);
    INFO(said.toStdString());
    CHECK(tests::is_sentence(said.toStdString()));
    CHECK(said.contains(QStringLiteral("spoilt.json")));
    CHECK(trainer.setup().setup() == before);
  }
}

TEST_CASE("when the time is over the try is, with what was put down until then") {
  Trainer trainer;
  trainer.ask_for({Task::vertex, Task::start});
  trainer.setup().minutes()->setValue(1);
  std::int64_t now_ms = 5'000'000;
  trainer.practise().run().clock_ms = [&now_ms] { return now_ms; };
  trainer.begin();
  ExerciseRun& run = trainer.practise().run();
  REQUIRE(run.is_on());
  CHECK(run.seconds_left() == 60);
  run.draw(ExerciseRun::PencilKind::cross, run.head().skin().position(run.head().vertex()),
           run.head().axes().right);
  now_ms += 41'000;
  CHECK(run.seconds_left() == 19);
  QTest::qWait(1200);  // the window looks at the clock every second
  CHECK(run.is_on());
  now_ms += 19'000;
  OpenedWindow::wait_until([&] { return !run.is_on(); });
  REQUIRE(run.is_over());
  CHECK(run.attempts().back().placed.size() == 1);
  CHECK(run.attempts().back().seconds.at(Task::vertex) == Approx(60));
  CHECK(trainer.practise().page() == Practise::Page::score);
  // Another try has the whole minute again; without a limit no clock runs out.
  QTest::mouseClick(trainer.practise().score_panel().again(), Qt::LeftButton);
  CHECK(run.seconds_left() == 60);
}

TEST_CASE("the case's own head is the worksheet's, after an exercise on a drawn one was opened as well") {
  Trainer trainer;
  trainer.practise().open_exercise(whole_job);
  CHECK(trainer.setup().head()->chosen() == 0);
  trainer.setup().head()->button(1)->click();
  trainer.begin();
  REQUIRE(trainer.practise().run().is_on());
  const auto& own = trainer.window.session().head().head.tapes();
  const auto& done_on = trainer.practise().run().head().tapes();
  CHECK(done_on.circumference_mm == Approx(own.circumference_mm).margin(0.01));
  CHECK(done_on.nasion_inion_mm == Approx(own.nasion_inion_mm).margin(0.01));
}

TEST_CASE("what is not chosen in an exercise is the case's as it is now, what is chosen stays") {
  Trainer trainer;
  trainer.setup().number()->setValue(55);
  trainer.ask_for({Task::site});
  QTest::mouseClick(trainer.window.mode_button(Mode::worksheet), Qt::LeftButton);
  trainer.window.session().change(QStringLiteral("site"),
                                  [](models::CaseFile& file) { file.the_case.treatment.distance_mm = 60; });
  trainer.settle();
  QTest::mouseClick(trainer.window.mode_button(Mode::practise), Qt::LeftButton);
  const models::ExerciseSetup setup = trainer.setup().setup();
  CHECK(setup.the_case.treatment.distance_mm == 60);
  CHECK(setup.exercise.number == 55);
  CHECK(setup.exercise.tasks == std::vector{Task::site});
  // One from a file goes by what its file says.
  trainer.practise().open_exercise(whole_job);
  QTest::mouseClick(trainer.window.mode_button(Mode::worksheet), Qt::LeftButton);
  QTest::mouseClick(trainer.window.mode_button(Mode::practise), Qt::LeftButton);
  CHECK(trainer.setup().setup().the_case.treatment.distance_mm ==
        models::read_exercise(whole_job.toStdString()).the_case.treatment.distance_mm);
}
