#include <catch2/catch.hpp>

#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/opened_window.h"
#include "viewer/words/in_hand_words.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

void undo_by_key(OpenedWindow& opened) {
  QTest::keyClick(&opened.window.stage(), Qt::Key_Z, Qt::ControlModifier);
  opened.settle();
}

void redo_by_key(OpenedWindow& opened) {
  QTest::keyClick(&opened.window.stage(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  opened.settle();
}

void drag_coil(MainWindow& w, QPoint by) {
  StageView& stage = w.stage();
  const geometry::Placement& placement = placement_of(w.session().plan(), w.coil());
  const Eigen::Vector3d right = placement.front.cross(placement.normal);
  const QPoint from =
      stage.position_of(placement.pulse + placement.lift_mm * placement.normal + 40 * right).toPoint();
  QTest::mousePress(&stage, Qt::LeftButton, Qt::NoModifier, from);
  for (int i = 1; i <= 5; ++i) {
    QMouseEvent move(QEvent::MouseMove, from + by * i / 5, stage.mapToGlobal(from + by * i / 5), Qt::NoButton,
                     Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&stage, &move);
  }
  QTest::mouseRelease(&stage, Qt::LeftButton, Qt::NoModifier, from + by);
}

bool undo_says_in_hand(MainWindow& w) {
  const auto& captions = w.stage().stage().captions();
  return std::any_of(captions.begin(), captions.end(), [](const viewer::Caption& caption) {
    return caption.text == viewer::in_hand_headline();
  });
}

}  // namespace

TEST_CASE(
    "a coil in the hand says that it is not the plan, what is saved is the site, and a button leads back") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::site_index);
  QTest::qWait(50);
  const int height = w.stage().height();
  CHECK_FALSE(undo_says_in_hand(w));
  CHECK_FALSE(w.foot().back()->isVisible());
  drag_coil(w, {30, 45});
  REQUIRE(w.coil().in_hand());
  CHECK(undo_says_in_hand(w));
  CHECK(w.foot().back()->isVisible());
  CHECK(w.stage().height() == height);  // nothing moves under the hand
  CHECK_FALSE(w.status_text().startsWith("pulse 0.0"));

  w.worksheet().go_to(Worksheet::save_index);
  QTest::qWait(50);
  CHECK_FALSE(undo_says_in_hand(w));
  CHECK_FALSE(w.foot().back()->isVisible());
  CHECK(w.status_text().startsWith("pulse 0.0 mm from the site"));

  w.set_mode(Mode::check);
  QTest::qWait(50);
  CHECK(undo_says_in_hand(w));
  // Today's marks put the coil where they say; that is no coil in the hand.
  mark_today(w, 0);
  CHECK_FALSE(undo_says_in_hand(w));
  CHECK_FALSE(w.foot().back()->isVisible());
  w.visit().start_over();
  w.set_mode(Mode::worksheet);
  w.worksheet().go_to(Worksheet::site_index);
  QTest::qWait(50);
  CHECK(undo_says_in_hand(w));
  QTest::mouseClick(w.foot().back(), Qt::LeftButton);
  CHECK_FALSE(w.coil().in_hand());
  CHECK_FALSE(undo_says_in_hand(w));
  CHECK(w.status_text().startsWith("pulse 0.0 mm from the site"));
}

TEST_CASE("undo takes back the last thing that was done, whatever it was") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::site_index);
  QTest::qWait(50);
  const auto distance = [&] { return w.session().case_file().the_case.treatment.distance_mm; };
  opened.type(w.worksheet().site()->distance()->edit(), "5.5");
  opened.settle();
  REQUIRE(distance() == Approx(55));
  drag_coil(w, {30, 45});
  drag_coil(w, {-20, 10});
  REQUIRE(w.coil().in_hand());
  const auto second = w.coil().at;

  undo_by_key(opened);
  CHECK(w.coil().in_hand());  // one drag, one step
  CHECK(
      (w.session().head().head.skin().position(w.coil().at) - w.session().head().head.skin().position(second))
          .norm() > 2);
  undo_by_key(opened);
  CHECK_FALSE(w.coil().in_hand());
  CHECK(distance() == Approx(55));
  redo_by_key(opened);
  redo_by_key(opened);
  CHECK(
      (w.session().head().head.skin().position(w.coil().at) - w.session().head().head.skin().position(second))
          .norm() < 1e-9);
  undo_by_key(opened);
  undo_by_key(opened);
  undo_by_key(opened);
  CHECK(distance() == Approx(50));
  CHECK_FALSE(w.undo_list().can_undo());

  w.worksheet().go_to(Worksheet::check_index);
  QTest::qWait(50);
  QTest::mouseClick(w.worksheet().check()->click_button(TodaysMark::site), Qt::LeftButton);
  QTest::mouseClick(&w.stage(), Qt::LeftButton, Qt::NoModifier,
                    w.stage().position_of(w.session().plan().treatment.pulse).toPoint());
  REQUIRE(w.visit().mark(TodaysMark::site));
  QTest::mouseClick(&w.stage(), Qt::LeftButton, Qt::NoModifier,
                    w.stage().position_of(*w.session().plan().treatment.mark).toPoint());
  REQUIRE(w.visit().check());
  undo_by_key(opened);
  CHECK_FALSE(w.visit().mark(TodaysMark::edge));
  CHECK(w.visit().mark(TodaysMark::site));
  redo_by_key(opened);
  CHECK(w.visit().check());
  undo_by_key(opened);
  undo_by_key(opened);
  CHECK_FALSE(w.visit().mark(TodaysMark::site));
  CHECK(distance() == Approx(50));
}

TEST_CASE("undo is the window's while nothing typed waits in the field that has the keys") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::site_index);
  QLineEdit* edit = w.worksheet().site()->distance()->edit();
  opened.type(edit, "5.5");
  opened.settle();
  REQUIRE(edit->hasFocus());
  QTest::keyClick(edit, Qt::Key_Z, Qt::ControlModifier);
  opened.settle();
  CHECK(w.session().case_file().the_case.treatment.distance_mm == Approx(50));
  CHECK(edit->text() == "5.0");
  QTest::keyClicks(edit, "7");
  const std::string before = opened.case_text();
  QTest::keyClick(edit, Qt::Key_Z, Qt::ControlModifier);  // letters that wait are the field's own
  CHECK(opened.case_text() == before);
  CHECK(edit->text() == "5.0");
}

TEST_CASE("a point placed on a scan is taken back by undo, and none is left to take back on another skin") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const geometry::Fiducials known = w.session().head().head.fiducials().at;
  const QString file = opened.folder.filePath("scan.ply");
  models::write_ply(file.toStdString(), w.session().head().head.skin());
  w.files().open_path(file);
  opened.settle();
  QTest::qWait(50);
  QTest::mouseClick(&w.stage(), Qt::LeftButton, Qt::NoModifier,
                    w.stage().position_of(known.nasion).toPoint());
  REQUIRE(w.session().unplaced()->placed[0]);
  undo_by_key(opened);
  CHECK_FALSE(w.session().unplaced()->placed[0]);
  redo_by_key(opened);
  CHECK(w.session().unplaced()->placed[0]);
  w.session().drop_unplaced();
  CHECK_FALSE(w.undo_list().can_undo());
}

TEST_CASE("a field that Tab leads to is typed over, whenever the plan of the last entry arrives") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  struct Pair {
    Worksheet::StepIndex step;
    NumberField *first, *next;
    const char *entry, *typed;
  };
  MeasureStep* measure = w.worksheet().measure();
  SearchStep* search = w.worksheet().search();
  CheckStep* check = w.worksheet().check();
  const std::vector<Pair> pairs{
      {Worksheet::measure_index, measure->nasion_inion(), measure->tragus_tragus(), "36.4", "3"},
      {Worksheet::measure_index, measure->tragus_tragus(), measure->circumference(), "36.9", "5"},
      {Worksheet::search_index, search->lateral(), search->anterior(), "5.3", "2"},
      {Worksheet::search_index, search->anterior(), search->pitch(), "1.2", "2"},
      {Worksheet::search_index, search->centre_to_edge(), search->lift(), "5.8", "0"},
      {Worksheet::check_index, check->pulse_limit(), check->angle_limit(), "0.7", "6"}};
  // 120 ms is when the tapes begin to be worked out; a second or more is long after they are there.
  for (const int pause_ms : {0, 120, 600, 3000})
    for (const Pair& pair : pairs) {
      w.worksheet().go_to(pair.step);
      INFO(pair.entry << " and a pause of " << pause_ms << " ms");
      QLineEdit *first = pair.first->edit(), *next = pair.next->edit();
      first->setFocus();
      first->selectAll();
      QTest::keyClicks(first, QString(pair.entry) + QString::number(pause_ms % 7));
      QTest::keyClick(first, Qt::Key_Tab);
      REQUIRE(next->hasFocus());
      QTest::qWait(pause_ms);
      if (pause_ms == 3000) opened.settle();
      QTest::keyClicks(next, pair.typed);
      CHECK(next->text() == pair.typed);
      opened.settle();
      CHECK(next->text() == pair.typed);  // nor is what is being typed touched later
      QTest::keyClick(next, Qt::Key_Escape);
    }
}
