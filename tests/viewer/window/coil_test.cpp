#include <vtkCallbackCommand.h>
#include <vtkCommand.h>
#include <vtkNew.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <vector>

#include "geometry/plan/placement.h"
#include "tests/viewer/window/opened_window.h"
#include "viewer/window/frame/status_line.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

void drag(StageView& stage, QPoint from, QPoint to, Qt::MouseButton button = Qt::LeftButton) {
  QTest::mousePress(&stage, button, Qt::NoModifier, from);
  constexpr int steps = 6;
  for (int i = 1; i <= steps; ++i) {
    QMouseEvent move(QEvent::MouseMove, from + (to - from) * i / steps,
                     stage.mapToGlobal(from + (to - from) * i / steps), Qt::NoButton, button, Qt::NoModifier);
    QApplication::sendEvent(&stage, &move);
  }
  QTest::mouseRelease(&stage, button, Qt::NoModifier, to);
}

// A place on the coil's casing where no mark of the grid can be meant.
QPoint grip(StageView& stage, const geometry::Placement& placement) {
  const Eigen::Vector3d right = placement.front.cross(placement.normal);
  return stage.position_of(placement.pulse + placement.lift_mm * placement.normal + 40 * right).toPoint();
}

}  // namespace

TEST_CASE("the coil dragged by its casing lies where place_coil puts it, and the read-outs say so") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::site_index);
  QTest::qWait(50);
  StageView& stage = w.stage();
  const QPoint from = grip(stage, w.session().plan().treatment);
  const std::string before = opened.case_text();
  drag(stage, from, from + QPoint(30, 45));

  REQUIRE(w.coil().in_hand());
  // The first tape distances of a coil in the hand take a moment.
  OpenedWindow::wait_until([&] { return w.session().has_fields() && !w.session().is_working(); });
  const auto& head = w.session().head().head;
  const geometry::Case& the_case = w.session().case_file().the_case;
  const geometry::Placement expected = geometry::place_coil(head, the_case.coil, the_case.side, w.coil().at);
  const geometry::Placement& shown = *w.coil().placement;
  CHECK((shown.pulse - expected.pulse).norm() < 1e-9);
  CHECK((shown.front - expected.front).norm() < 1e-9);
  CHECK((*shown.mark - *expected.mark).norm() < 1e-9);
  CHECK(shown.pulse_tape->vertex_mm == Approx(expected.pulse_tape->vertex_mm));
  // It moved by about as much as the hand: 54 pixels.
  const double moved = (shown.pulse - w.session().plan().treatment.pulse).norm();
  CHECK(moved > 0.5 * 54 * stage.stage().sight().mm_per_px);
  const double from_site = pulse_from_site_mm(head.skin(), w.session().plan(), shown);
  CHECK(from_site >= moved - 1e-6);  // along the skin is no shorter than straight through
  CHECK(w.status_text().contains(QString("pulse %1 mm from the site").arg(from_site, 0, 'f', 1)));
  CHECK(w.status_text().contains(
      QString("edge %1 mm above it").arg((expected.edge - *expected.mark).norm(), 0, 'f', 1)));
  // Looking around is no edit.
  CHECK(opened.case_text() == before);

  QTest::keyClick(&stage, Qt::Key_Escape);
  CHECK_FALSE(w.coil().in_hand());
  CHECK(w.status_text().startsWith("pulse 0.0 mm from the site"));
}

TEST_CASE("the coil turns by arrow keys and by Ctrl and the wheel, and stays over its point") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::site_index);
  StageView& stage = w.stage();
  stage.setFocus();
  for (int i = 0; i < 3; ++i) QTest::keyClick(&stage, Qt::Key_Right);
  CHECK(w.coil().placement->angle_deg == Approx(48));
  QTest::keyClick(&stage, Qt::Key_Left, Qt::ShiftModifier);
  CHECK(w.coil().placement->angle_deg == Approx(43));
  QWheelEvent wheel(QPointF(200, 200), stage.mapToGlobal(QPoint(200, 200)), QPoint(), QPoint(0, 120),
                    Qt::NoButton, Qt::ControlModifier, Qt::NoScrollPhase, false);
  QApplication::sendEvent(&stage, &wheel);
  CHECK(w.coil().placement->angle_deg == Approx(44));
  CHECK((w.coil().placement->pulse - w.session().plan().treatment.pulse).norm() < 1e-6);
  CHECK(w.status_text().contains(QString::fromUtf8("coil 44\u00b0 to the midline")));
  // Moved by keys: 5 mm forward along the skin.
  QTest::keyClick(&stage, Qt::Key_Up, Qt::ControlModifier | Qt::ShiftModifier);
  CHECK(pulse_from_site_mm(w.session().head().head.skin(), w.session().plan(), *w.coil().placement) ==
        Approx(5).margin(0.05));
  CHECK(w.coil().placement->angle_deg == Approx(44));
}

TEST_CASE("a click on a spot lays the coil on it") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::search_index);
  QTest::qWait(50);
  const geometry::GridSpot* corner = nullptr;
  for (const auto& spot : w.session().plan().grid)
    if (spot.row == -1 && spot.column == 1) corner = &spot;
  REQUIRE(corner);
  QTest::mouseClick(&w.stage(), Qt::LeftButton, Qt::NoModifier,
                    w.stage().position_of(corner->placement.pulse).toPoint());
  CHECK(w.coil().on == viewer::CoilOn::spot);
  CHECK(w.coil().row == -1);
  CHECK(w.coil().column == 1);
  CHECK(w.worksheet().search()->spots()->button(-1, 1)->isChecked());
  // How far a spot of the search lies from a site nobody has found yet says nothing.
  CHECK(w.status_text().startsWith("coil on the spot: one step back, one step outward"));
  // The same from the worksheet, by keyboard.
  w.worksheet().search()->spots()->button(1, 0)->setFocus();
  QTest::keyClick(w.worksheet().search()->spots()->button(1, 0), Qt::Key_Space);
  CHECK(w.coil().row == 1);
  CHECK(w.coil().column == 0);
}

TEST_CASE("dragging beside the coil turns the head and keeps the case and the coil as they are") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::measure_index);
  QTest::qWait(50);
  const auto before = w.stage().gaze();
  const std::string case_before = opened.case_text();
  drag(w.stage(), QPoint(300, 300), QPoint(380, 330));
  const auto after = w.stage().gaze();
  CHECK((after.toward_eye - before.toward_eye).norm() > 0.1);
  CHECK(after.up.dot(w.session().head().head.axes().up) > 0);
  CHECK_FALSE(w.coil().in_hand());
  CHECK(opened.case_text() == case_before);
  // One key brings a known view back.
  w.stage().setFocus();
  QTest::keyClick(&w.stage(), Qt::Key_1);
  CHECK(w.stage().gaze().toward_eye.isApprox(w.session().head().head.axes().front, 1e-6));
}

TEST_CASE(
    "changes that come thick and fast are drawn as what moves is, and what they come to is drawn in full") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  StageView& stage = w.stage();
  w.worksheet().go_to(Worksheet::site_index);
  opened.settle();
  REQUIRE(w.session().thin_skin());
  const auto at_rest = [&] { return !stage.stage().draws_thin_skin(); };
  const auto angle = [&](double deg) {
    REQUIRE(w.session()
                .change("Edit", [&](auto& case_file) { case_file.the_case.coil.angle_deg = deg; })
                .isEmpty());
  };
  constexpr int long_enough_ms = 500;  // for an eye to rest between two changes
  QTest::qWait(long_enough_ms);
  REQUIRE(at_rest());

  angle(40);
  CHECK(at_rest());  // one change alone
  OpenedWindow::wait_until([&] { return !w.session().is_working(); });
  QTest::qWait(long_enough_ms);
  const QImage slowly = stage.picture();

  // A machine that takes longer for two changes than the eye to rest (under a sanitizer) draws both in full.
  constexpr int thick_and_fast_ms = 200;
  QElapsedTimer since;
  since.start();
  angle(41);
  QCoreApplication::processEvents();  // drawn
  angle(40);
  if (since.elapsed() < thick_and_fast_ms) CHECK_FALSE(at_rest());
  OpenedWindow::wait_until(at_rest);  // by itself
  opened.settle();
  CHECK(stage.picture() == slowly);

  since.restart();
  QTest::keyClick(&stage, Qt::Key_Left, Qt::AltModifier);
  QCoreApplication::processEvents();
  QTest::keyClick(&stage, Qt::Key_Right, Qt::AltModifier);
  if (since.elapsed() < thick_and_fast_ms) CHECK_FALSE(at_rest());
  CHECK_FALSE(stage.picture().isNull());  // whoever asks for a picture gets it in full
  CHECK(at_rest());
}

TEST_CASE("where things are in the picture is known after every change, drawn it is once for all of them") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  StageView& stage = w.stage();
  w.worksheet().go_to(Worksheet::site_index);
  opened.settle();
  QTest::qWait(500);
  int drawn = 0;
  const vtkNew<vtkCallbackCommand> count;
  count->SetClientData(&drawn);
  count->SetCallback([](vtkObject*, unsigned long, void* times, void*) { ++*static_cast<int*>(times); });
  stage.render_window()->AddObserver(vtkCommand::StartEvent, count);
  const auto where = [&] {
    std::vector<Eigen::Vector3d> all;
    for (const auto& mark : stage.stage().marks()) all.push_back(mark.at);
    return all;
  };
  auto last = where();
  REQUIRE_FALSE(last.empty());
  for (const double deg : {30, 35, 40}) {
    REQUIRE(w.session().change("Edit", [&](auto& file) { file.the_case.coil.angle_deg = deg; }).isEmpty());
    CHECK(where() != last);
    last = where();
  }
  CHECK(drawn == 0);
  CHECK_FALSE(stage.grab().isNull());  // paints
  CHECK(drawn == 1);
  CHECK(where() == last);
  (void)stage.grab();
  CHECK(drawn == 1);  // nothing has changed
}
