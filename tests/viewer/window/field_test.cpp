// The induced field on the stage, switched and followed by mouse and keys.
#include <catch2/catch.hpp>

#include "tests/viewer/window/opened_window.h"
#include "viewer/stage/scene/field_shown.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

bool on_stage(MainWindow& w, const QString& words) {
  for (const auto& caption : w.stage().stage().captions())
    if (QString::fromStdString(caption.text).contains(words)) return true;
  return false;
}

void press_field(MainWindow& w) {
  QTest::keyClick(&w, Qt::Key_I, Qt::ControlModifier);
}

/// What the stage says beside the field that is worked out here for the same coil.
bool says_field_of(MainWindow& w, const geometry::Placement& placement) {
  const auto& session = w.session();
  const auto field =
      viewer::field_under(session.head().head, nullptr, session.case_file().the_case.coil.model, placement);
  REQUIRE(field);
  return on_stage(w, QString("Strongest %1 cm from").arg(field->map.from_pulse_mm / 10, 0, 'f', 1)) &&
         on_stage(w, QString("over half on %1 cm").arg(std::lround(field->map.half.area_cm2)));
}

}  // namespace

TEST_CASE("the field is off at first, comes by a key, says whose it is not, and goes by the key again") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::site_index);
  QTest::qWait(30);
  CHECK_FALSE(on_stage(w, "Induced field"));
  press_field(w);
  QTest::qWait(30);
  CHECK(on_stage(w, "Induced field, in a round model head"));
  CHECK(on_stage(w, "Not this patient's field"));
  CHECK(on_stage(w, "Field under the coil's centre"));
  CHECK(says_field_of(w, w.session().plan().treatment));
  // A step without a coil has none, another step its own.
  w.worksheet().go_to(Worksheet::landmarks_index);
  QTest::qWait(30);
  CHECK_FALSE(on_stage(w, "Induced field"));
  w.worksheet().go_to(Worksheet::search_index);
  QTest::qWait(30);
  CHECK(says_field_of(w, w.session().plan().start));
  press_field(w);
  QTest::qWait(30);
  CHECK_FALSE(on_stage(w, "Induced field"));
}

TEST_CASE("the field follows a coil in the hand, at every step of it, and another coil") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::site_index);
  press_field(w);
  QTest::qWait(30);
  StageView& stage = w.stage();
  const geometry::Placement p = w.session().plan().treatment;
  const QPoint from =
      stage.position_of(p.pulse + p.lift_mm * p.normal + 40 * p.front.cross(p.normal)).toPoint();
  QTest::mousePress(&stage, Qt::LeftButton, Qt::NoModifier, from);
  for (int i = 1; i <= 4; ++i) {
    const QPoint to = from + QPoint(8, 6) * i;
    QMouseEvent move(QEvent::MouseMove, to, stage.mapToGlobal(to), Qt::NoButton, Qt::LeftButton,
                     Qt::NoModifier);
    QApplication::sendEvent(&stage, &move);
    QApplication::processEvents();
    if (w.coil().in_hand()) CHECK(says_field_of(w, *w.coil().placement));
  }
  QTest::mouseRelease(&stage, Qt::LeftButton, Qt::NoModifier, from + QPoint(32, 24));
  REQUIRE(w.coil().in_hand());
  CHECK((w.coil().placement->pulse - p.pulse).norm() > 2);
}

TEST_CASE(
    "a patient sees the soft patch and reads how large it is as a thing of every day, without a number") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  press_field(w);  // staff's own patch is not for patients
  w.set_mode(Mode::explain);
  OpenedWindow::wait_until([&] { return w.session().has_cortex(); });
  QTest::qWait(50);
  CHECK_FALSE(on_stage(w, "Induced field"));
  QString said;
  for (const QLabel* label : w.findChildren<QLabel*>())
    if (label->objectName() == "explain") said = label->text();
  INFO(said.toStdString());
  CHECK(said.contains("about as large as a"));
  CHECK(said.contains("not your own"));
  CHECK(std::none_of(said.begin(), said.end(), [](QChar c) { return c.isDigit(); }));
  w.set_mode(Mode::worksheet);
}
