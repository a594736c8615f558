#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <csignal>
#include <nlohmann/json.hpp>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;
using geometry::GridPosition;
using geometry::SeenAnswer;

namespace {

/// A clock that goes on by five seconds at each look, from a morning of that day.
std::function<QDateTime()> clock_on(const QDate& day) {
  auto now = std::make_shared<QDateTime>(day, QTime(10, 32, 0));
  return [now] { return *now = now->addSecs(5); };
}

const geometry::Visits& visits_of(MainWindow& w) {
  return w.session().case_file().the_case.visits;
}

PulsesStep& go_to_pulses(MainWindow& w) {
  w.worksheet().go_to(Worksheet::pulses_index);
  QTest::qWait(20);
  return *w.worksheet().pulses();
}

void press(PulsesStep& step, int key, Qt::KeyboardModifiers with = Qt::NoModifier) {
  QTest::keyClick(step.panel(), static_cast<Qt::Key>(key), with);
}

}  // namespace

TEST_CASE("pulses are logged by keys alone: answers, output, spot, taking back, correcting") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.log().set_clock(clock_on({2026, 11, 26}));
  PulsesStep& step = go_to_pulses(w);
  CHECK(QApplication::focusWidget() == step.panel());
  CHECK(step.panel()->spot_label()->text() == "1");
  CHECK(step.panel()->output_label()->text() == "50");
  press(step, Qt::Key_0);
  REQUIRE(visits_of(w).size() == 1);
  CHECK(visits_of(w)[0]->date == geometry::Date{2026, 11, 26});
  CHECK(visits_of(w)[0]->by.empty());  // nobody typed any
  press(step, Qt::Key_Up);
  press(step, Qt::Key_Up, Qt::ShiftModifier);
  CHECK(step.panel()->output_label()->text() == "56");
  press(step, Qt::Key_Right);
  CHECK(step.panel()->spot_label()->text() == "2");
  CHECK(w.coil().on == viewer::CoilOn::spot);
  CHECK(w.coil().row == 1);  // the spiral's second spot: forward of the start
  CHECK(w.coil().column == 0);
  press(step, Qt::Key_1);
  press(step, Qt::Key_Left);
  press(step, Qt::Key_Left);
  CHECK(step.panel()->spot_label()->text() == "9");
  press(step, Qt::Key_Down);
  press(step, Qt::Key_2);
  press(step, Qt::Key_3);
  const auto& pulses = visits_of(w)[0]->pulses;
  REQUIRE(pulses.size() == 4);
  CHECK(pulses[0].spot == GridPosition{0, 0});
  CHECK(pulses[0].output_percent == 50);
  CHECK(pulses[0].answer == SeenAnswer::none);
  CHECK(pulses[1].spot == GridPosition{1, 0});
  CHECK(pulses[1].output_percent == 56);
  CHECK(pulses[1].answer == SeenAnswer::thumb);
  CHECK(pulses[2].spot == GridPosition{1, -1});
  CHECK(pulses[2].output_percent == 51);
  CHECK(pulses[2].answer == SeenAnswer::index);
  REQUIRE(pulses[1].at);
  CHECK(*pulses[0].at < *pulses[1].at);

  press(step, Qt::Key_Backspace);
  CHECK(visits_of(w)[0]->pulses.size() == 3);
  w.session().undo();
  CHECK(visits_of(w)[0]->pulses.size() == 4);
  w.session().undo();
  CHECK(visits_of(w)[0]->pulses.size() == 3);

  // The second pulse was none after all; what was noted first stays in its row and in the case.
  step.list()->setFocus();
  step.list()->setCurrentRow(1);
  QTest::keyClick(step.list(), Qt::Key_0);
  CHECK(visits_of(w)[0]->pulses[1].answer == SeenAnswer::none);
  CHECK(visits_of(w)[0]->pulses[1].corrected_from == SeenAnswer::thumb);
  CHECK(step.list()->item(1)->text().contains("first noted: thumb"));
  QTest::keyClick(step.list(), Qt::Key_3);
  CHECK(visits_of(w)[0]->pulses[1].corrected_from == SeenAnswer::thumb);
  // A key held down is one pulse.
  step.take_keys();
  QKeyEvent held(QEvent::KeyPress, Qt::Key_1, Qt::NoModifier, "1", true);
  QApplication::sendEvent(step.panel(), &held);
  CHECK(visits_of(w)[0]->pulses.size() == 3);
}

TEST_CASE("on the right side the spots lie mirrored, and outputs keep within the stimulator's") {
  models::CaseFile right = models::default_case();
  right.the_case.side = geometry::Side::right;
  OpenedWindow opened(right);
  PulsesStep& step = go_to_pulses(opened.window);
  PulsePad* pad = step.panel()->pad();
  CHECK(pad->button({0, 1})->x() > pad->button({0, 0})->x());  // outward is to the patient's right
  CHECK(pad->button({1, 0})->y() < pad->button({0, 0})->y());  // forward is up, to the nose
  pad->button({0, 1})->click();
  CHECK(opened.window.log().spot() == GridPosition{0, 1});
  for (int i = 0; i < 20; ++i) press(step, Qt::Key_Up);
  CHECK(step.panel()->output_label()->text() == "100");
  for (int i = 0; i < 40; ++i) press(step, Qt::Key_Down);
  CHECK(step.panel()->output_label()->text() == "1");
}

TEST_CASE("killed after any of fifty pulses, none of them is lost") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  PulseLog& log = w.log();
  const QDir copies(Recovery::usual_folder());
  for (int pulse = 1; pulse <= 50; ++pulse) {
    const SeenAnswer answer = pulse % 3 == 0 ? SeenAnswer::thumb : SeenAnswer::none;
    const pid_t child = fork();
    REQUIRE(child >= 0);
    if (child == 0) {
      w.session().blockSignals(true);  // the child has no screen
      log.blockSignals(true);
      try {
        if (log.log(answer).isEmpty()) ::kill(::getpid(), SIGKILL);
      } catch (...) {
      }
      ::_exit(1);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WIFSIGNALED(status));
    const QStringList left = copies.entryList({"*.json"}, QDir::Files);
    REQUIRE(left.size() == 1);
    QFile copy(copies.filePath(left.front()));
    REQUIRE(copy.open(QIODevice::ReadOnly));
    const auto top = nlohmann::json::parse(copy.readAll().toStdString());
    const auto kept = models::parse_case(top["case"].get<std::string>(), "", "copy").the_case.visits;
    INFO("pulse " << pulse);
    REQUIRE(kept.size() == 1);
    REQUIRE(kept[0]->pulses.size() == static_cast<std::size_t>(pulse));
    CHECK(kept[0]->pulses.back().answer == answer);
    copy.remove();
    REQUIRE(log.log(answer).isEmpty());  // here it goes on
    QFile::remove(copies.filePath(left.front()));
  }
}

TEST_CASE("a first visit by keyboard: nine spots, the best as hotspot, its threshold, written down") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.log().set_clock(clock_on({2026, 11, 26}));
  PulsesStep& step = go_to_pulses(w);
  press(step, Qt::Key_Up);
  press(step, Qt::Key_Up);  // 60 %
  for (int spot = 0; spot < 9; ++spot) {
    for (int pulse = 0; pulse < 3; ++pulse) press(step, spot == 3 ? Qt::Key_1 : Qt::Key_0);
    press(step, Qt::Key_Right);
  }
  // The spiral's fourth spot is straight outward.
  CHECK(step.best_text().contains("one step outward (3 of 3 answered)"));
  CHECK(step.centre_text().contains("pulled toward the middle of the grid"));
  CHECK(step.panel()->pad()->button({0, 1})->text() == "4\n3/3");
  step.take_best()->click();
  CHECK(w.session().case_file().the_case.hotspot == GridPosition{0, 1});
  CHECK_FALSE(step.take_best()->isEnabled());
  // All answers are at that spot, so the centre is its pulse point; as hotspot it lies there, not on the
  // grid.
  const Eigen::Vector3d on_spot = w.session().plan().hotspot.pulse;
  step.take_centre()->click();
  CHECK(w.session().case_file().the_case.hotspot_off_grid.is_given());
  CHECK((w.session().plan().hotspot.pulse - on_spot).norm() < 0.5);
  CHECK_FALSE(step.take_centre()->isEnabled());
  step.take_best()->click();
  CHECK_FALSE(w.session().case_file().the_case.hotspot_off_grid.is_given());
  // The tally is on the stage.
  bool tallied = false;
  for (const auto& label : w.stage().stage().labels()) tallied |= label.wish.text == "3/3";
  CHECK(tallied);

  // A hand that answers from 47 % on, always: 5 % steps down, then by 1, as the counting offers.
  w.log().set_spot({0, 1});
  int pulses = 0;
  while (w.log().threshold()->counting.state == geometry::CountingState::open) {
    REQUIRE(++pulses < 200);
    REQUIRE(w.log().threshold()->counting.next_percent);
    if (w.log().output_percent() != *w.log().threshold()->counting.next_percent) {
      REQUIRE(step.threshold()->counting_next()->isVisibleTo(&step));
      step.threshold()->counting_next()->click();
    }
    step.take_keys();
    press(step, w.log().output_percent() >= 47 ? Qt::Key_1 : Qt::Key_0);
  }
  CHECK(w.log().threshold()->counting.threshold_percent == 47);
  CHECK(step.threshold()->counts()->text().contains("Threshold by counting 5 of 10: 47 %"));
  const auto estimate = w.log().threshold()->belief.estimate();
  REQUIRE(estimate);
  CHECK(estimate->low_percent < 47);
  CHECK(estimate->high_percent > 45);
  opened.type(step.threshold()->written()->edit(), "47");
  CHECK(visits_of(w)[0]->threshold_percent == 47);
  opened.type(step.threshold()->written()->edit(), "47.5");
  CHECK(visits_of(w)[0]->threshold_percent == 47);
  CHECK_FALSE(step.threshold()->written()->problem().isEmpty());
  QTest::keyClick(step.threshold()->written()->edit(), Qt::Key_Escape);

  // Whose twitch counts is a setting, and says so at once.
  step.settings()->counted()->button(1)->click();
  CHECK(step.best_text().contains("Nothing answered"));
  w.session().undo();
  CHECK(step.best_text().contains("one step outward (5 of 5"));
}

TEST_CASE("a pulse on another day begins another visit, and two visits on one day stay two") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  PulseLog& log = w.log();
  log.set_clock(clock_on({2026, 11, 26}));
  REQUIRE(log.log(SeenAnswer::thumb).isEmpty());
  log.show_visit({});
  REQUIRE(log.log(SeenAnswer::none).isEmpty());
  CHECK(visits_of(w).size() == 2);
  log.set_clock(clock_on({2026, 11, 27}));
  log.show_visit(1);
  CHECK_FALSE(log.is_open());
  REQUIRE(log.log(SeenAnswer::none).isEmpty());
  REQUIRE(visits_of(w).size() == 3);
  CHECK(visits_of(w)[1]->pulses.size() == 1);
  CHECK(visits_of(w)[2]->date == geometry::Date{2026, 11, 27});
  CHECK(log.shown() == 2U);
  w.session().undo();
  CHECK(visits_of(w).size() == 2);
  CHECK_FALSE(log.shown());
}

TEST_CASE("today's marks become a visit by one click, and the course shows them all") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  PulseLog& log = w.log();
  w.session().want_fields();
  opened.settle();
  // Twelve days: the last four with the marks 8 mm further back.
  for (int day = 1; day <= 12; ++day) {
    log.set_clock(clock_on({2026, 11, day}));
    log.show_visit({});
    mark_today(w, (day > 8 ? 8 : 0) + day % 2);
    w.worksheet().go_to(Worksheet::check_index);
    w.worksheet().check()->keep_button()->click();
    REQUIRE(visits_of(w).size() == static_cast<std::size_t>(day));
    CHECK(count_of(visits_of(w).back()->site_tape) == 4);
    CHECK(count_of(visits_of(w).back()->edge_tape) == 4);
  }
  w.mode_button(Mode::course)->click();
  OpenedWindow::wait_until([&] { return w.course_check().found() && !w.course_check().is_working(); });
  QTest::qWait(50);
  const auto& course = w.course_check().found()->course;
  REQUIRE(course.stretches.size() == 1);
  CHECK(course.stretches[0].measured.size() == 12);
  CHECK(w.course().text().contains("The last 4 visits lie"));
  CHECK(w.course().text().contains("behind the first 8"));
  int discs = 0;
  for (const auto& mark : w.stage().stage().marks()) discs += mark.thing == viewer::Thing::course;
  CHECK(discs == 12);

  // Marked anew: the reference is another from then on.
  w.set_mode(Mode::worksheet);
  log.set_clock(clock_on({2026, 11, 13}));
  log.show_visit({});
  mark_today(w, 0);
  w.worksheet().check()->marked_anew()->setChecked(true);
  w.worksheet().check()->keep_button()->click();
  CHECK(visits_of(w).back()->marked_anew);
  w.set_mode(Mode::course);
  OpenedWindow::wait_until([&] { return w.course_check().found()->course.stretches.size() == 2; });
  QTest::qWait(50);
  CHECK(w.course().text().contains("Marked anew at visit 13"));
}

TEST_CASE("a course without marks shows the whole head, one with marks looks at them from near") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const auto head_px = [&] {
    (void)w.stage().picture();
    const viewer::Sight& sight = w.stage().stage().sight();
    return 2 * (w.session().plan().treatment.pulse - w.session().head().head.axes().origin).norm() /
           sight.mm_per_px / sight.width_px;
  };
  w.set_mode(Mode::course);
  opened.settle();
  CHECK(head_px() < 1);
  w.set_mode(Mode::worksheet);
  w.log().set_clock(clock_on({2026, 11, 26}));
  w.session().want_fields();
  opened.settle();
  mark_today(w, 3);
  w.worksheet().go_to(Worksheet::check_index);
  w.worksheet().check()->keep_button()->click();
  w.set_mode(Mode::course);
  OpenedWindow::wait_until([&] { return w.course_check().shown() && !w.course_check().is_working(); });
  opened.settle();
  CHECK(head_px() > 1.2);
}

TEST_CASE("a thirtieth visit opens with a new one to log into, and the others to look back at") {
  models::CaseFile kept = models::default_case();
  for (int i = 0; i < 29; ++i) {
    geometry::Visit visit;
    visit.date = {2026, 10, 1 + i};
    visit.pulses = {{GridPosition{0, 1}, 50 + i, SeenAnswer::thumb, {}, {}}};
    kept.the_case.visits.emplace_back(visit);
  }
  OpenedWindow opened(kept);
  MainWindow& w = opened.window;
  w.log().set_clock(clock_on({2026, 11, 26}));
  PulsesStep& step = go_to_pulses(w);
  CHECK(step.visits()->count() == 30);
  CHECK_FALSE(w.log().shown());
  press(step, Qt::Key_1);
  CHECK(visits_of(w).size() == 30);
  CHECK(step.visits()->currentText().contains("Visit 30"));
  // Back to the third by keys alone.
  step.visits()->setFocus();
  w.log().show_visit(2);
  CHECK(step.list()->count() == 1);
  CHECK(step.list()->item(0)->text().contains("52 %"));
}
