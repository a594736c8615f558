#include <QMimeData>
#include <catch2/catch.hpp>
#include <cmath>
#include <fstream>

#include "geometry/exercise/steadiness.h"
#include "models/exercises/result_file.h"
#include "tests/viewer/window/practise_hands.h"

using namespace scalpmark;
using namespace scalpmark::window;
using geometry::Task;

namespace {

const std::vector<Task> whole(geometry::all_tasks.begin(), geometry::all_tasks.end());

/// A pixel of the stage is about 0.4 mm; a mark lies within two of them.
constexpr double by_mouse_mm = 1.5;

void drop(MainWindow& w, const QStringList& files) {
  QMimeData data;
  QList<QUrl> urls;
  for (const QString& file : files) urls << QUrl::fromLocalFile(file);
  data.setUrls(urls);
  // Qt gives what is dropped to the widget that it was carried into.
  QDragEnterEvent carried(QPoint(300, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(&w, &carried);
  REQUIRE(carried.isAccepted());
  QDropEvent event(QPointF(300, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(&w, &event);
}

}  // namespace

TEST_CASE("a whole exercise is done by mouse and keys, and who does it right is scored so") {
  for (const geometry::Side side : {geometry::Side::left, geometry::Side::right}) {
    OpenedExercise opened(7, side, whole);
    INFO((side == geometry::Side::left ? "left" : "right"));
    CHECK_FALSE(opened.window.worksheet().isVisible());
    while (opened.run().is_on()) {
      const Task task = opened.run().task();
      INFO(geometry::key_of(task));
      opened.do_task();
      for (const geometry::Step& step : geometry::steps_of(task)) {
        INFO(geometry::key_of(step));
        CHECK(opened.run().is_done(step));
      }
      opened.next_task();
    }
    REQUIRE(opened.run().is_over());
    const geometry::Score& score = opened.run().scores().back();
    REQUIRE(score.steps.size() == geometry::steps_of(opened.run().setup().exercise).size());
    for (const geometry::StepScore& step : score.steps) {
      INFO(geometry::key_of(step.step));
      REQUIRE(step.placed);
      // A reading is typed to half a centimetre.
      const bool reading = geometry::asked_in(step.step.task) == geometry::Asks::reading;
      CHECK(std::abs(step.own.mm) < (reading ? 4.5 : by_mouse_mm));
      if (step.own.angle_deg) CHECK(std::abs(*step.own.angle_deg) < 2);
    }
    REQUIRE(score.pulse);
    CHECK(score.pulse->laid);
    CHECK(score.pulse->off.mm < 3);
    CHECK(opened.practise().page() == Practise::Page::score);
    CHECK(opened.practise().score_panel().table()->rowCount() == static_cast<int>(score.steps.size()) + 1);
  }
}

TEST_CASE("nothing of ours stands on the skin during the exercise") {
  OpenedExercise opened(3, geometry::Side::left, whole);
  while (opened.run().is_on()) {
    (void)opened.stage().picture();
    INFO(geometry::key_of(opened.run().task()));
    CHECK(opened.stage().stage().labels().empty());
    CHECK(opened.stage().stage().marks().empty());
    // Around the head: its sides, and what this is not.
    for (const viewer::Caption& caption : opened.stage().stage().captions()) {
      INFO(caption.text);
      CHECK_FALSE(QString::fromStdString(caption.text)
                      .contains(QRegularExpression(QString::fromUtf8("[0-9] ?(cm|mm|in\\b|\u00b0)"))));
    }
    opened.next_task();
  }
  // Afterwards there is.
  (void)opened.stage().picture();
  CHECK_FALSE(opened.stage().stage().marks().empty());
}

TEST_CASE("a misplaced vertex is shown first, and is paid for once") {
  OpenedExercise opened(11, geometry::Side::left, {Task::vertex, Task::start});
  const Eigen::Vector3d wrong = opened.place_of({Task::vertex, 0}) + 15 * opened.run().head().axes().front;
  const auto& skin = opened.run().head().skin();
  opened.mark(skin.position(skin.closest(wrong)));
  opened.next_task();
  opened.mark(opened.place_of({Task::start, 0}));
  opened.next_task();
  REQUIRE(opened.run().is_over());
  const geometry::Score& score = opened.run().scores().back();
  CHECK(score.steps[0].own.mm == Approx(15).margin(by_mouse_mm));
  REQUIRE(score.worst);
  // The start lies right on the head, and so wrong by the vertex that was marked.
  CHECK(score.steps[1].off.mm < by_mouse_mm);
  CHECK(opened.practise().score_panel().shown_step() == score.worst);
  (void)opened.stage().picture();
  bool yours = false;
  for (const auto& mark : opened.stage().stage().marks()) yours = yours || mark.name == "yours";
  CHECK(yours);
  // Next and Previous go through all steps and the pulse, around.
  ScorePanel& panel = opened.practise().score_panel();
  std::set<int> rows;
  for (int i = 0; i < panel.table()->rowCount(); ++i) {
    rows.insert(panel.table()->currentRow());
    QTest::mouseClick(panel.next(), Qt::LeftButton);
  }
  CHECK(static_cast<int>(rows.size()) == panel.table()->rowCount());
}

TEST_CASE("the pencil is rubbed out by undo, and help lines are no answers") {
  OpenedExercise opened(5, geometry::Side::left, {Task::vertex});
  const geometry::Step vertex{Task::vertex, 0};
  opened.key(Qt::Key_5);
  opened.key(Qt::Key_L);
  const QPoint middle = opened.pixel_of(opened.place_of(vertex));
  opened.drag(middle, middle + QPoint(25, 0));
  CHECK(opened.run().drawn().size() == 1);
  CHECK_FALSE(opened.run().is_done(vertex));
  opened.key(Qt::Key_X);
  QTest::mouseClick(&opened.stage(), Qt::LeftButton, Qt::NoModifier, middle);
  CHECK(opened.run().is_done(vertex));
  opened.key(Qt::Key_Z, Qt::ControlModifier);
  CHECK_FALSE(opened.run().is_done(vertex));
  CHECK(opened.run().drawn().size() == 1);
  opened.key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  CHECK(opened.run().is_done(vertex));
  // A second cross takes the first one's place.
  QTest::mouseClick(&opened.stage(), Qt::LeftButton, Qt::NoModifier, middle + QPoint(12, 0));
  CHECK(opened.run().drawn().size() == 2);
  CHECK(std::as_const(opened.run()).attempt().placed.size() == 1);
}

TEST_CASE("a finger feels the inion as a bump, and the flat skin above it as none") {
  OpenedExercise opened(5, geometry::Side::right, {Task::four_points});
  const Eigen::Vector3d inion = opened.place_of({Task::four_points, 1});
  opened.key(Qt::Key_4);
  opened.key(Qt::Key_F);
  const QPoint at = opened.pixel_of(inion);
  QTest::mousePress(&opened.stage(), Qt::LeftButton, Qt::NoModifier, at);
  REQUIRE(opened.run().finger());
  CHECK(opened.run().finger()->felt.share > 0.9);
  opened.move_mouse(at - QPoint(0, 120), Qt::LeftButton);
  REQUIRE(opened.run().finger());
  CHECK(opened.run().finger()->felt.share < 0.1);
  QTest::mouseRelease(&opened.stage(), Qt::LeftButton, Qt::NoModifier, at);
  CHECK_FALSE(opened.run().finger());
}

TEST_CASE("by keys alone a tape is pulled and read, a cross drawn, a coil laid") {
  OpenedExercise opened(9, geometry::Side::left, {Task::vertex, Task::coil_on_given_marks});
  const auto walk_to = [&](const Eigen::Vector3d& place) {
    // The hand begins in the middle of the picture and goes by millimetres.
    for (int i = 0; i < 400; ++i) {
      const auto& hand = opened.practise().hand().by_keys();
      if (!hand) {
        opened.key(Qt::Key_Up, Qt::ControlModifier);
        continue;
      }
      (void)opened.stage().picture();
      const viewer::Sight& sight = opened.stage().stage().sight();
      const Eigen::Vector3d way = place - *hand;
      const double right = way.dot(sight.right()), up = way.dot(sight.up);
      if (std::abs(right) < 0.6 && std::abs(up) < 0.6) return;
      const bool far = std::max(std::abs(right), std::abs(up)) > 6;
      const Qt::KeyboardModifiers with =
          far ? Qt::ControlModifier | Qt::ShiftModifier : Qt::KeyboardModifiers(Qt::ControlModifier);
      if (std::abs(right) > std::abs(up))
        opened.key(right > 0 ? Qt::Key_Right : Qt::Key_Left, with);
      else
        opened.key(up > 0 ? Qt::Key_Up : Qt::Key_Down, with);
    }
  };
  const Eigen::Vector3d vertex = opened.place_of({Task::vertex, 0});
  opened.key(Qt::Key_5);
  opened.key(Qt::Key_T);
  const auto& skin = opened.run().head().skin();
  const Eigen::Vector3d before = skin.position(skin.closest(vertex + 50 * opened.run().head().axes().front));
  walk_to(before);
  opened.key(Qt::Key_Space);
  walk_to(vertex);
  opened.key(Qt::Key_Space);
  REQUIRE(opened.run().tape());
  CHECK(opened.run().tape()->lies.length_mm == Approx((before - vertex).norm()).margin(3));
  opened.key(Qt::Key_X);
  opened.key(Qt::Key_Space);
  REQUIRE(opened.run().is_done({Task::vertex, 0}));
  // On to the coil: by Tab to the button, and Enter.
  opened.practise().task_panel().next()->setFocus();
  QTest::keyClick(opened.practise().task_panel().next(), Qt::Key_Return);
  REQUIRE(opened.run().task() == Task::coil_on_given_marks);
  opened.stage().setFocus();
  REQUIRE(opened.run().coil());
  const double angle = opened.run().coil()->angle_deg;
  const Eigen::Vector3d pulse = opened.run().coil()->placement.pulse;
  opened.key(Qt::Key_Right);
  opened.key(Qt::Key_Right, Qt::ShiftModifier);
  CHECK(opened.run().coil()->angle_deg == Approx(angle + 6));
  opened.key(Qt::Key_Left, Qt::ControlModifier | Qt::ShiftModifier);
  CHECK((opened.run().coil()->placement.pulse - pulse).norm() == Approx(5).margin(2.5));
  CHECK(opened.run().is_done({Task::coil_on_given_marks, 0}));
  opened.key(Qt::Key_Delete);
  CHECK_FALSE(opened.run().coil());
  CHECK_FALSE(opened.run().is_done({Task::coil_on_given_marks, 0}));
}

TEST_CASE("a coil is seen by an eye half a metre away, and never straight down on it at the press of a key") {
  OpenedExercise opened(2, geometry::Side::left, {Task::coil_on_given_marks});
  (void)opened.stage().picture();
  CHECK(opened.stage().stage().sight().eye_mm == Approx(500));
  const Eigen::Vector3d before = opened.stage().gaze().toward_eye;
  // From behind the patient, on the coil's side.
  const auto& axes = opened.run().head().axes();
  CHECK(before.dot(axes.front) < -0.2);
  CHECK(before.dot(axes.right) < -0.2);
  opened.key(Qt::Key_5);
  (void)opened.stage().picture();
  CHECK(opened.stage().stage().sight().eye_mm == Approx(500));
  opened.key(Qt::Key_6);
  CHECK((opened.stage().gaze().toward_eye - before).norm() < 1e-6);
  // On the worksheet lengths are compared across the picture again.
  QTest::mouseClick(opened.window.mode_button(Mode::worksheet), Qt::LeftButton);
  (void)opened.stage().picture();
  CHECK(opened.stage().stage().sight().eye_mm == 0);
}

TEST_CASE("an exercise repeated on the same head says whether the hand is steady, as often as is allowed") {
  OpenedWindow opened;
  QTest::mouseClick(opened.window.mode_button(Mode::practise), Qt::LeftButton);
  Practise& practise = opened.window.practise();
  practise.setup_panel().tries()->setValue(2);
  for (const Task task : geometry::all_tasks)
    if (practise.setup_panel().task(task)->isChecked() != (task == Task::vertex))
      practise.setup_panel().task(task)->click();
  QTest::mouseClick(practise.setup_panel().begin(), Qt::LeftButton);
  OpenedWindow::wait_until([&] { return practise.run().is_on(); });
  const auto attempt = [&](double beside_mm) {
    const auto& head = practise.run().head();
    const Eigen::Vector3d at = head.skin().position(head.vertex()) + beside_mm * head.axes().right;
    QTest::keyClick(&opened.window.stage(), Qt::Key_5);
    QTest::keyClick(&opened.window.stage(), Qt::Key_X);
    (void)opened.window.stage().picture();
    QTest::mouseClick(&opened.window.stage(), Qt::LeftButton, Qt::NoModifier,
                      opened.window.stage().position_of(at).toPoint());
    QTest::mouseClick(practise.task_panel().next(), Qt::LeftButton);
  };
  attempt(8);
  REQUIRE(practise.run().is_over());
  CHECK(practise.score_panel().again()->isEnabled());
  QTest::mouseClick(practise.score_panel().again(), Qt::LeftButton);
  REQUIRE(practise.run().is_on());
  CHECK(practise.run().attempt().placed.empty());
  attempt(12);
  REQUIRE(practise.run().scores().size() == 2);
  CHECK_FALSE(practise.score_panel().again()->isEnabled());
  const auto steady = geometry::steadiness(practise.run().scores());
  REQUIRE(steady.size() == 1);
  CHECK(steady.front().bias == Approx(10).margin(1));
}

TEST_CASE("results of a class are dropped on the window, a damaged one is named and left out") {
  OpenedExercise opened(6, geometry::Side::left, {Task::vertex});
  opened.mark(opened.place_of({Task::vertex, 0}));
  opened.next_task();
  REQUIRE(opened.run().is_over());
  QStringList files;
  for (int i = 0; i < 3; ++i) {
    const QString file = opened.folder.filePath(QStringLiteral("trainee-%1.json").arg(i + 1));
    opened.practise().score_panel().initials_field()->setText(i == 0 ? QStringLiteral("AB") : QString());
    opened.practise().save_result_to(file);
    REQUIRE(QFile::exists(file));
    files << file;
  }
  CHECK(models::read_result(files[0].toStdString()).by == "AB");
  CHECK(models::read_result(files[1].toStdString()).by.empty());
  const QString damaged = opened.folder.filePath(QStringLiteral("damaged.json"));
  std::ofstream(damaged.toStdString()) << R"({"format": "scalpmark-result", "version": 1, "exerc)";
  files << damaged;
  drop(opened.window, files);
  OpenedWindow::wait_until([&] { return opened.practise().class_results().has_value(); });
  CHECK(opened.practise().page() == Practise::Page::class_page);
  CHECK(opened.practise().class_results()->trainees.size() == 3);
  CHECK(opened.practise().class_panel().left_out().contains(QStringLiteral("damaged.json")));
  CHECK(opened.practise().class_panel().table()->rowCount() == 1);
  const QString page = opened.folder.filePath(QStringLiteral("class.pdf"));
  opened.practise().save_class_page_to(page, viewer::Paper::a4);
  CHECK(QFileInfo(page).size() > 1000);
  const QString table = opened.folder.filePath(QStringLiteral("class.csv"));
  opened.practise().save_table_to(table);
  QFile csv(table);
  REQUIRE(csv.open(QIODevice::ReadOnly));
  CHECK(csv.readAll().count('\n') >= 4);
  QTest::mouseClick(opened.practise().class_panel().done(), Qt::LeftButton);
  CHECK(opened.practise().page() == Practise::Page::setup);
}

TEST_CASE("an exercise whose result is not saved is not left without a question") {
  OpenedExercise opened(4, geometry::Side::left, {Task::vertex});
  int asked = 0;
  auto answer = UnsavedAnswer::cancel;
  opened.practise().ask_unsaved = [&] {
    ++asked;
    return answer;
  };
  QString file = opened.folder.filePath(QStringLiteral("kept.json"));
  opened.practise().ask_target = [&](const QString&, const QString&, const QString&) { return file; };
  const auto file_attempts = [&] { return models::read_result(file.toStdString()).attempts; };
  // Nothing was put down: nothing is asked.
  CHECK(opened.practise().may_leave());
  CHECK(asked == 0);
  opened.mark(opened.place_of({Task::vertex, 0}));
  // In the middle of a try the window stays, and so does what was put down.
  CHECK_FALSE(opened.window.close());
  CHECK(asked == 1);
  CHECK(opened.run().is_done({Task::vertex, 0}));
  // Another mode and back loses nothing, so nothing is asked.
  QTest::mouseClick(opened.window.mode_button(Mode::worksheet), Qt::LeftButton);
  QTest::mouseClick(opened.window.mode_button(Mode::practise), Qt::LeftButton);
  CHECK(asked == 1);
  CHECK(opened.run().is_done({Task::vertex, 0}));
  opened.next_task();
  REQUIRE(opened.run().is_over());
  OpenedWindow::wait_until([&] { return !opened.practise().is_working(); });
  QTest::mouseClick(opened.practise().score_panel().other(), Qt::LeftButton);
  CHECK(asked == 2);
  CHECK(opened.practise().page() == Practise::Page::score);
  // A result or an exercise dropped on it would put it aside as well.
  opened.practise().take_results({file});
  CHECK(asked == 3);
  CHECK_FALSE(opened.practise().is_working());
  opened.practise().open_exercise(
      QStringLiteral(SCALPMARK_SOURCE_DIR "/models/demo/exercises/whole-job.json"));
  CHECK(asked == 4);
  CHECK(opened.run().is_over());
  // Saved, by the answer; then it may be left without another question.
  answer = UnsavedAnswer::save;
  CHECK(opened.practise().may_leave());
  CHECK(asked == 5);
  CHECK(file_attempts().size() == 1);
  CHECK(opened.practise().may_leave());
  CHECK(asked == 5);
  // Another try is unsaved again as soon as something is put down.
  QTest::mouseClick(opened.practise().score_panel().again(), Qt::LeftButton);
  CHECK(opened.practise().may_leave());
  opened.mark(opened.place_of({Task::vertex, 0}));
  CHECK(opened.practise().may_leave());
  CHECK(asked == 6);
  CHECK(file_attempts().size() == 2);
  // Where it cannot be saved it is not left either.
  opened.mark(opened.place_of({Task::vertex, 0}) + Eigen::Vector3d(0, 8, 0));
  opened.practise().ask_target = [](const QString&, const QString&, const QString&) { return QString(); };
  CHECK_FALSE(opened.practise().may_leave());
  opened.practise().ask_target = [](const QString&, const QString&, const QString&) {
    return QStringLiteral("/nowhere/kept.json");
  };
  CHECK_FALSE(opened.practise().may_leave());
  answer = UnsavedAnswer::discard;
  CHECK(opened.window.close());
}

TEST_CASE("an exercise is saved and opened again, and one without tasks says so") {
  OpenedExercise opened(6, geometry::Side::right, {Task::vertex, Task::site});
  const QString file = opened.folder.filePath(QStringLiteral("exercise.json"));
  opened.practise().save_exercise_to(file);
  REQUIRE(QFile::exists(file));
  OpenedWindow other;
  drop(other.window, {file});
  CHECK(other.window.mode() == Mode::practise);
  const models::ExerciseSetup setup = other.window.practise().setup_panel().setup();
  CHECK(setup.exercise.number == 6);
  CHECK(setup.the_case.side == geometry::Side::right);
  CHECK(setup.exercise.tasks == std::vector<Task>{Task::vertex, Task::site});
  for (const Task task : {Task::vertex, Task::site})
    other.window.practise().setup_panel().task(task)->click();
  QTest::mouseClick(other.window.practise().setup_panel().begin(), Qt::LeftButton);
  OpenedWindow::wait_until([&] { return !other.window.practise().setup_panel().problem().isEmpty(); });
  CHECK_FALSE(other.window.practise().run().is_on());
}
