// An exercise done by somebody without a mouse: every key goes to whatever has the keys at that moment, and
// nothing is reached but by Tab.
#include <QAbstractButton>
#include <QApplication>
#include <QHeaderView>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <set>
#include <stdexcept>

#include "models/exercises/result_file.h"
#include "tests/viewer/window/practise_hands.h"

using namespace scalpmark;
using namespace scalpmark::window;
using Eigen::Vector3d;
using geometry::Task;

namespace {

constexpr int longest_way_round = 300;  // presses of Tab

struct ByKeys : OpenedWindow {
  [[nodiscard]] Practise& practise() { return window.practise(); }
  [[nodiscard]] ExerciseRun& run() { return practise().run(); }
  [[nodiscard]] StageView& stage() { return window.stage(); }

  static void press(int key, Qt::KeyboardModifiers with = Qt::NoModifier) {
    QWidget* focus = QApplication::focusWidget();
    if (!focus) throw std::runtime_error("Nothing has the keys.");
    QTest::keyClick(focus, static_cast<Qt::Key>(key), with);
  }
  static void write(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }

  static void tab_to(const QWidget& wanted) {
    for (int i = 0; i < longest_way_round; ++i) {
      const QWidget* focus = QApplication::focusWidget();
      if (focus == &wanted || (focus && focus->focusProxy() == &wanted)) return;
      press(Qt::Key_Tab);
    }
    const auto* button = qobject_cast<const QAbstractButton*>(&wanted);
    const QString name = button ? button->text() : wanted.accessibleName();
    throw std::runtime_error("Tab does not lead to \"" + name.toStdString() + "\".");
  }
  static void press_button(const QPushButton& button) {
    tab_to(button);
    press(Qt::Key_Return);
  }

  void begin(std::uint32_t number, geometry::Side side, const std::vector<Task>& tasks) {
    stage().setFocus();
    // Of the modes Tab leads to the one that is on, arrows to the others.
    tab_to(*window.mode_button(window.mode()));
    for (int i = 0; i < 6 && window.mode() != Mode::practise; ++i) press(Qt::Key_Right);
    REQUIRE(window.mode() == Mode::practise);
    SetupPanel& setup = practise().setup_panel();
    tab_to(*setup.number());
    press(Qt::Key_A, Qt::ControlModifier);
    write(QString::number(number));
    const int now = setup.side()->chosen(), wanted = side == geometry::Side::left ? 0 : 1;
    tab_to(*setup.side()->button(now));
    if (now != wanted) press(wanted > now ? Qt::Key_Right : Qt::Key_Left);
    for (const Task task : geometry::all_tasks) {
      const bool asked = std::find(tasks.begin(), tasks.end(), task) != tasks.end();
      if (setup.task(task)->isChecked() == asked) continue;
      tab_to(*setup.task(task));
      press(Qt::Key_Space);
    }
    press_button(*setup.begin());
    wait_until([this] { return run().is_on() || !practise().setup_panel().problem().isEmpty(); });
    REQUIRE(run().is_on());
  }

  /// Turns the head to the side from which the skin there is seen best.
  void face(const Vector3d& place) {
    tab_to(stage());
    const geometry::Surface& skin = run().head().skin();
    const Vector3d normal = skin.smooth_normal(skin.closest(place));
    const geometry::HeadAxes& axes = run().head().axes();
    const std::array<Vector3d, 5> eyes{axes.front, -axes.right, axes.right, -axes.front, axes.up};
    const auto best = std::max_element(eyes.begin(), eyes.end(), [&](const Vector3d& a, const Vector3d& b) {
      return normal.dot(a) < normal.dot(b);
    });
    press(Qt::Key_1 + static_cast<int>(best - eyes.begin()));
    (void)stage().picture();
  }

  /// Moves what keys hold (its place: `now`) until it is there as seen in the picture.
  void walk_to(const Vector3d& place, const std::function<std::optional<Vector3d>()>& now) {
    constexpr double there_mm = 0.55, far_mm = 5;
    for (int i = 0; i < 400; ++i) {
      if (!now()) press(Qt::Key_Up, Qt::ControlModifier);
      REQUIRE(now());
      const viewer::Sight& sight = stage().stage().sight();
      const Vector3d way = place - *now();
      const double right = way.dot(sight.right()), up = way.dot(sight.up);
      const double most = std::max(std::abs(right), std::abs(up));
      if (most < there_mm) return;
      const Qt::KeyboardModifiers with =
          Qt::ControlModifier | (most > far_mm ? Qt::ShiftModifier : Qt::NoModifier);
      if (std::abs(right) >= std::abs(up))
        press(right > 0 ? Qt::Key_Right : Qt::Key_Left, with);
      else
        press(up > 0 ? Qt::Key_Up : Qt::Key_Down, with);
    }
    FAIL("The hand does not come to where it is led.");
  }
  void lead_hand_to(const Vector3d& place) {
    face(place);
    press(Qt::Key_Up, Qt::ControlModifier);  // behind the head since, the hand comes into the picture by this
    walk_to(place, [this] { return practise().hand().by_keys(); });
  }

  void mark(const Vector3d& place) {
    tab_to(stage());
    press(Qt::Key_X);
    lead_hand_to(place);
    press(Qt::Key_Space);
  }

  void lay_coil(const geometry::Placed& wanted) {
    tab_to(stage());
    REQUIRE(run().coil());
    (void)stage().picture();
    walk_to(*wanted.at, [this] { return std::optional(run().coil()->placement.pulse); });
    const auto turns = std::lround(*wanted.angle_deg - run().coil()->angle_deg);
    for (int i = 0; i < std::abs(turns); ++i) press(turns > 0 ? Qt::Key_Right : Qt::Key_Left);
  }

  [[nodiscard]] Vector3d landmark(const std::string& name) {
    for (const auto& each : run().answers().plan.landmarks)
      if (each.name == name) return each.at;
    throw std::runtime_error("no landmark " + name);
  }

  /// Read off the print to half a centimetre.
  void read(int which) {
    REQUIRE(run().tape());
    const double read_mm = 5 * std::round(run().tape()->lies.length_mm / 5);
    tab_to(*practise().task_panel().reading(which)->edit());
    write(QString::number(read_mm / 10, 'f', 1));
    press(Qt::Key_Return);
  }

  void pull_tapes() {
    const auto& at = run().head().fiducials().at;
    int which = 0;
    for (const auto& [from, to] : {std::pair(at.nasion, at.inion), {at.left_tragus, at.right_tragus}}) {
      lead_hand_to(from);
      press(Qt::Key_Space);
      lead_hand_to(landmark("Cz"));
      press(Qt::Key_H);  // over the vertex: left alone, the tape slips to where it is shortest
      lead_hand_to(to);
      press(Qt::Key_Space);
      read(which++);
    }
    lead_hand_to(landmark("Fpz"));
    press(Qt::Key_Space);
    for (const char* station : {"T7", "Oz", "T8"}) {
      lead_hand_to(landmark(station));
      press(Qt::Key_H);
    }
    press(Qt::Key_O);
    read(which);
  }

  void do_task() {
    const Task task = run().task();
    if (task == Task::three_tapes) {
      pull_tapes();
      return;
    }
    for (std::size_t i = 0; i < geometry::steps_of(task).size(); ++i) {
      // After each answer the next step is asked for by itself.
      const geometry::Placed& wanted = run().answers().right.at(run().step());
      if (geometry::asked_in(task) == geometry::Asks::coil)
        lay_coil(wanted);
      else
        mark(*wanted.at);
    }
  }

  /// Tab once around: whatever can be pressed or typed into has the keys once.
  void check_all_reached(const char* page) {
    INFO(page);
    tab_to(stage());
    std::set<const QWidget*> reached;
    for (int i = 0; i < longest_way_round && reached.insert(QApplication::focusWidget()).second; ++i)
      press(Qt::Key_Tab);
    for (const auto* each : practise().column().findChildren<QWidget*>()) {
      const auto* button = qobject_cast<const QAbstractButton*>(each);
      const bool field =
          qobject_cast<const QLineEdit*>(each) && !qobject_cast<const QSpinBox*>(each->parent());
      const bool list =
          qobject_cast<const QAbstractItemView*>(each) && !qobject_cast<const QHeaderView*>(each);
      if ((!button && !field && !list) || !each->isVisible() || !each->isEnabled()) continue;
      // Of buttons of which one is chosen Tab leads to the chosen one, and arrows on.
      if (button && button->group() && button->group()->exclusive() && !button->isChecked()) continue;
      INFO(each->metaObject()->className()
           << " " << (button ? button->text() : each->accessibleName()).toStdString());
      CHECK(reached.count(each) == 1);
    }
  }
};

}  // namespace

TEST_CASE("a whole exercise is done, scored and saved by keyboard alone") {
  ByKeys by;
  const std::vector<Task> whole(geometry::all_tasks.begin(), geometry::all_tasks.end());
  by.begin(7, geometry::Side::right, whole);
  CHECK(by.run().answers().the_case.side == geometry::Side::right);
  while (by.run().is_on()) {
    const Task task = by.run().task();
    INFO(geometry::key_of(task));
    by.do_task();
    for (const geometry::Step& step : geometry::steps_of(task)) {
      INFO(geometry::key_of(step));
      CHECK(by.run().is_done(step));
    }
    ByKeys::press_button(*by.practise().task_panel().next());
  }
  REQUIRE(by.run().is_over());
  const geometry::Score& score = by.run().scores().back();
  for (const geometry::StepScore& step : score.steps) {
    INFO(geometry::key_of(step.step));
    REQUIRE(step.placed);
    // A reading is typed to half a centimetre; a hand goes by millimetres in the picture.
    const bool reading = geometry::asked_in(step.step.task) == geometry::Asks::reading;
    CHECK(std::abs(step.own.mm) < (reading ? 4.5 : 2));
    if (step.own.angle_deg) CHECK(std::abs(*step.own.angle_deg) < 2);
  }
  REQUIRE(score.pulse);
  CHECK(score.pulse->laid);
  // The replay goes by arrows; the result is saved.
  ScorePanel& panel = by.practise().score_panel();
  ByKeys::tab_to(*panel.table());
  const auto shown = panel.shown_step();
  ByKeys::press(panel.table()->currentRow() > 0 ? Qt::Key_Up : Qt::Key_Down);
  CHECK(panel.shown_step() != shown);
  ByKeys::tab_to(*panel.initials_field());
  ByKeys::write(QStringLiteral("AB"));
  QString file = by.folder.filePath(QStringLiteral("by-keys.json"));
  by.practise().ask_target = [&](const QString&, const QString&, const QString&) { return file; };
  ByKeys::press_button(*panel.save());
  CHECK(models::read_result(file.toStdString()).by == "AB");
}

TEST_CASE("Tab leads to every button, field and list of an exercise") {
  ByKeys by;
  QTest::mouseClick(by.window.mode_button(Mode::practise), Qt::LeftButton);
  by.check_all_reached("setup");
  by.begin(3, geometry::Side::left, {Task::three_tapes, Task::vertex});
  const Vector3d vertex = by.run().head().skin().position(by.run().head().vertex());
  by.lead_hand_to(vertex);
  ByKeys::press(Qt::Key_Space);
  by.check_all_reached("task with a tape in the hand");
  ByKeys::press_button(*by.practise().task_panel().next());
  by.mark(vertex);
  ByKeys::press_button(*by.practise().task_panel().next());
  REQUIRE(by.run().is_over());
  by.check_all_reached("score");
  const QString file = by.folder.filePath(QStringLiteral("one.json"));
  REQUIRE(by.practise().save_result_to(file));
  by.practise().take_results({file});
  OpenedWindow::wait_until([&] { return by.practise().page() == Practise::Page::class_page; });
  by.check_all_reached("class");
}
