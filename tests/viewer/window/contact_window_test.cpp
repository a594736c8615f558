// The gap under the coil, the choice of coil, and how far off hands are, by mouse and keys.
#include <QComboBox>
#include <catch2/catch.hpp>

#include "geometry/coil/contact.h"
#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

void click_box(QAbstractButton* box) {
  QTest::mouseClick(box, Qt::LeftButton, Qt::NoModifier, QPoint(10, box->height() / 2));
}

bool has_scale(MainWindow& w) {
  const auto& captions = w.stage().stage().captions();
  return std::any_of(captions.begin(), captions.end(),
                     [](const viewer::Caption& c) { return c.text.find("Gap under the coil") == 0; });
}

QString joined(const geometry::Contact& c) {
  return contact_line(c);
}

}  // namespace

TEST_CASE("a coil kept off by cap and hair touches those, and its centre is not told to be clear as well") {
  OpenedWindow opened;
  geometry::Case c = opened.window.session().case_file().the_case;
  const geometry::Head& head = opened.window.session().head().head;
  CHECK(contact_line(geometry::contact(head, c.coil, opened.window.session().plan().treatment.pose()))
            .startsWith("Touches at its centre. Left wing"));
  c.coil.lift_mm = 3;
  const geometry::Plan lifted = geometry::solve(head, c, geometry::TapeDistances::left_out);
  const QString line = contact_line(geometry::contact(head, c.coil, lifted.treatment.pose()));
  CHECK(line.startsWith("Rests on cap and hair (3.0 mm thick) at its centre. Left wing"));
  CHECK_FALSE(line.contains("clear. "));
}

TEST_CASE("the gap under the coil is shown where the coil lies, in the hand too, and never while it moves") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::site_index);
  QTest::qWait(50);
  GapPanel& panel = *w.worksheet().site()->gaps();
  CHECK_FALSE(has_scale(w));
  w.worksheet().ensureWidgetVisible(&panel);
  click_box(panel.box());
  OpenedWindow::wait_until([&] { return w.under_coil().gaps() != nullptr; });
  const geometry::Head& head = w.session().head().head;
  const geometry::Case& the_case = w.session().case_file().the_case;
  CHECK(panel.text() == joined(geometry::contact(head, the_case.coil, w.session().plan().treatment.pose())));
  CHECK(panel.text().contains("Clear of ears and brow."));
  CHECK(panel.box()->accessibleDescription() == panel.text());
  CHECK(has_scale(w));
  CHECK(w.worksheet().check()->gaps()->box()->isChecked());

  StageView& stage = w.stage();
  const geometry::Placement p = w.session().plan().treatment;
  const QPoint from =
      stage.position_of(p.pulse + p.lift_mm * p.normal + 40 * p.front.cross(p.normal)).toPoint();
  QTest::mousePress(&stage, Qt::LeftButton, Qt::NoModifier, from);
  for (int i = 1; i <= 5; ++i) {
    const QPoint to = from + QPoint(5, 8) * i;
    QMouseEvent move(QEvent::MouseMove, to, stage.mapToGlobal(to), Qt::NoButton, Qt::LeftButton,
                     Qt::NoModifier);
    QApplication::sendEvent(&stage, &move);
    CHECK_FALSE(w.under_coil().gaps());
    CHECK_FALSE(has_scale(w));
  }
  QTest::mouseRelease(&stage, Qt::LeftButton, Qt::NoModifier, from + QPoint(25, 40));
  REQUIRE(w.coil().in_hand());
  OpenedWindow::wait_until([&] { return w.under_coil().gaps() != nullptr; });
  CHECK(panel.text() == joined(geometry::contact(head, the_case.coil, w.coil().placement->pose())));
  CHECK(has_scale(w));

  // The key takes it away again, and the patient's picture never has it.
  QTest::keyClick(&w, Qt::Key_G, Qt::ControlModifier);
  CHECK_FALSE(panel.box()->isChecked());
  CHECK_FALSE(has_scale(w));
  QTest::keyClick(&w, Qt::Key_G, Qt::ControlModifier);
  OpenedWindow::wait_until([&] { return w.under_coil().gaps() != nullptr; });
  w.set_mode(Mode::explain);
  QTest::qWait(20);
  CHECK_FALSE(has_scale(w));
  w.set_mode(Mode::worksheet);
}

TEST_CASE("another coil is chosen by keys, brings its own length to the edge, and is undone like any edit") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::search_index);
  QTest::qWait(20);
  QComboBox& coil = *w.worksheet().search()->coil();
  REQUIRE(coil.count() == static_cast<int>(models::coils().size()));
  const std::string before = opened.case_text();
  const auto windings = [&] { return w.session().case_file().the_case.coil.model.windings.size(); };
  CHECK(windings() == 2);
  coil.setFocus();
  for (int i = 0; i < coil.count(); ++i) {
    while (coil.currentIndex() != i)
      QTest::keyClick(&coil, coil.currentIndex() < i ? Qt::Key_Down : Qt::Key_Up);
    const geometry::Coil& chosen = models::coil(coil.currentData().toString().toStdString());
    CHECK(w.session().case_file().the_case.coil.model.model == chosen.model);
    CHECK(w.session().case_file().the_case.coil.centre_to_edge_mm == chosen.centre_to_edge_mm);
    CHECK(w.session().plan().treatment.mark);
  }
  while (w.session().history().can_undo()) w.session().undo();
  CHECK(opened.case_text() == before);
  CHECK(coil.currentData().toString().toStdString() == w.session().case_file().the_case.coil.model.model);
  // A wheel over it while the worksheet is scrolled leaves it alone.
  w.stage().setFocus();
  QWheelEvent wheel(QPointF(10, 10), coil.mapToGlobal(QPoint(10, 10)), QPoint(), QPoint(0, -120),
                    Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
  QApplication::sendEvent(&coil, &wheel);
  CHECK(opened.case_text() == before);
}

TEST_CASE("how far off hands are: worked out beside the window, given up, changed and undone") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.resize(1920, 1080);
  w.worksheet().go_to(Worksheet::check_index);
  QTest::qWait(20);
  TolerancePanel& panel = *w.worksheet().check()->tolerance();
  w.worksheet().ensureWidgetVisible(panel.fold());
  CHECK_FALSE(w.by_hand().is_working());
  panel.fold()->setFocus();
  QTest::keyClick(panel.fold(), Qt::Key_Space);
  REQUIRE(panel.is_open());
  CHECK(w.by_hand().is_working());
  // Given up by key: silence, and nothing comes later.
  OpenedWindow::wait_until([&] { return panel.stop()->isVisible(); });
  QTest::keyClick(panel.stop(), Qt::Key_Space);
  CHECK_FALSE(w.by_hand().is_working());
  CHECK_FALSE(w.by_hand().found());
  QTest::qWait(20);
  CHECK(panel.stop()->text() == "Work it out");
  QTest::keyClick(panel.stop(), Qt::Key_Space);
  OpenedWindow::wait_until([&] { return w.by_hand().found() != nullptr; });
  OpenedWindow::wait_until([&] { return !w.by_hand().is_working(); });  // until the first figure is refined
  REQUIRE(w.by_hand().strips());
  OpenedWindow::wait_until([&] { return panel.text().contains("Strips of paper in place of a tape"); });
  // None of it is cut off, once it is laid out.
  OpenedWindow::wait_until(
      [&] { return panel.result()->height() >= panel.result()->heightForWidth(panel.result()->width()); });
  const double usual_mm = w.by_hand().found()->sampled.mean_mm;
  CHECK(panel.text().contains(QString("%1 cm off on average").arg(usual_mm / 10, 0, 'f', 1)));
  CHECK(panel.text().contains("95 of 100"));
  CHECK(panel.text().contains("The habit that would help most"));
  CHECK(panel.text().contains("That follows from the assumption that"));
  CHECK(panel.text().contains("At the cortex, "));
  // Ways to mark, worst to best, the best chosen; another chosen is drawn.
  const auto& ways = w.by_hand().found()->ways;
  REQUIRE(ways.size() > 1);
  CHECK(panel.way() == ways.back().way);
  CHECK(panel.way_button(static_cast<int>(ways.size()) - 1)->isChecked());
  QTest::qWait(50);
  CHECK(w.worksheet().widget()->width() <= w.worksheet().viewport()->width());  // no way is cut off
  click_box(panel.way_button(0));
  CHECK(panel.way() == ways.front().way);
  const auto regions = [&] {
    const auto& labels = w.stage().stage().labels();
    return std::any_of(labels.begin(), labels.end(), [](const viewer::PlacedLabel& l) {
      return l.wish.text == "95 of 100 trials by hand";
    });
  };
  CHECK(regions());
  click_box(panel.on_head_box());
  CHECK_FALSE(regions());
  click_box(panel.on_head_box());

  // An error is an entry of the case: it changes the result, and undo brings both back.
  const std::string before = opened.case_text();
  opened.type(panel.error(3)->edit(), "0");
  CHECK(w.session().case_file().the_case.errors.angle_deg == 0);
  CHECK_FALSE(w.by_hand().found());
  OpenedWindow::wait_until([&] { return w.by_hand().found() != nullptr; });
  CHECK(w.by_hand().found()->sampled.mean_mm < usual_mm);
  opened.type(panel.error(0)->edit(), "99");
  CHECK(panel.error(0)->problem().contains("0 to 15 mm"));
  QTest::keyClick(panel.error(0)->edit(), Qt::Key_Escape);
  CHECK(w.session().case_file().the_case.errors.fiducial_mm == 4);
  w.session().undo();
  CHECK(opened.case_text() == before);
  CHECK(panel.error(3)->edit()->text() == "7.5");
  // Everything says what it is.
  for (std::size_t i = 0; i < 10; ++i) CHECK_FALSE(panel.error(i)->edit()->accessibleName().isEmpty());
  CHECK_FALSE(panel.stop()->accessibleName().isEmpty());
  CHECK_FALSE(panel.fold()->accessibleDescription().contains("<"));
}
