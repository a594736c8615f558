#include <QRegularExpression>
#include <catch2/catch.hpp>

#include "geometry/paths/shortest_path.h"
#include "geometry/plan/tape_from.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

TEST_CASE("any landmark is told by four tapes, and the halves of both long tapes are said") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::landmarks_index);
  LandmarksStep* step = w.worksheet().landmarks();
  opened.type(step->find(), "F3");
  const QString told = step->found_tapes();
  CHECK(told.contains("from the vertex"));
  // Not from the program's own looked-up distances: each length by a shortest path of its own.
  const auto& head = w.session().head().head;
  const auto found = geometry::landmark(head, "F3");
  REQUIRE(found);
  const double from_vertex = geometry::shortest_path(head.skin(), head.vertex(), found->on_skin).length_mm;
  CHECK(told.contains(length_with_unit(from_vertex, LengthUnit::centimetre) + " from the vertex"));
  opened.type(step->find(), "F4");
  CHECK(step->found_tapes() != told);
  const auto hints = step->findChildren<QLabel*>("hint");
  REQUIRE(hints.size() == 1);
  CHECK(hints.front()->text().contains("18.1 cm of nasion to inion"));
}

TEST_CASE(
    "the numbers that find the marks again stand one at a time in digits for the whole room, by keys alone") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.resize(960, 620);
  w.worksheet().go_to(Worksheet::save_index);
  opened.settle();
  w.worksheet().save()->numbers()->setFocus();
  QTest::keyClick(w.worksheet().save()->numbers(), Qt::Key_Return);
  NextMark& view = w.next_mark();
  REQUIRE(view.isVisible());
  CHECK(view.number()->fontMetrics().height() >= 96);
  const geometry::TapeFrom site = *w.session().plan().treatment.pulse_tape;
  CHECK(view.what().contains("Site mark, from the vertex"));
  CHECK(view.number()->text() == length_with_unit(site.vertex_mm, LengthUnit::centimetre));
  CHECK(view.number()->width() >= view.number()->fontMetrics().horizontalAdvance(view.number()->text()));
  std::set<QString> told;
  for (int i = 0; i < 10; ++i) {
    told.insert(view.what());
    QTest::keyClick(&view, Qt::Key_PageDown);
  }
  CHECK(told.size() == 8);  // four for each of the two marks
  CHECK(view.what().contains("Edge mark, from the right tragus"));
  QTest::keyClick(&view, Qt::Key_PageUp);
  CHECK(view.what().contains("Edge mark, from the left tragus"));
  QTest::keyClick(&view, Qt::Key_Escape);
  CHECK_FALSE(view.isVisible());
}

TEST_CASE(
    "a patient sees the head from the coil's side, both things named, on three screens without a number") {
  for (const geometry::Side side : {geometry::Side::left, geometry::Side::right}) {
    models::CaseFile case_file = demo_case();
    case_file.the_case.side = side;
    OpenedWindow opened(case_file);
    MainWindow& w = opened.window;
    w.set_mode(Mode::explain);
    QTest::qWait(100);
    // The coil's side is turned to the patient's eye.
    CHECK(w.stage().gaze().toward_eye.dot(w.session().plan().treatment.normal) > 0.4);
    (void)w.stage().picture();
    std::set<QString> names;
    for (const auto& label : w.stage().stage().labels())
      names.insert(QString::fromStdString(label.wish.text));
    CHECK(names.contains("the coil"));
    CHECK(names.size() == 2);
    ExplainPanel& explain = w.explain();
    REQUIRE(explain.pages().size() == 3);
    for (int i = 0; i < 3; ++i) {
      CHECK(explain.page() == i);
      CHECK(explain.text().size() > 60);
      const auto* label = explain.findChild<QLabel*>("explain");
      REQUIRE(label);
      QTest::qWait(20);
      CHECK(label->height() >=
            label->fontMetrics()
                .boundingRect(QRect(0, 0, label->width(), 10000), Qt::TextWordWrap, label->text())
                .height());
      CHECK_FALSE(explain.text().contains(QRegularExpression("[0-9]")));
      QTest::mouseClick(explain.next(), Qt::LeftButton);
    }
    CHECK(explain.page() == 2);
    QTest::mouseClick(explain.previous(), Qt::LeftButton);
    CHECK(explain.page() == 1);
    w.set_mode(Mode::worksheet);
    w.set_mode(Mode::explain);
    CHECK(explain.page() == 0);
    w.set_mode(Mode::worksheet);
  }
}

TEST_CASE("the handout is one page that says what the screens say") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.set_mode(Mode::explain);
  QTest::qWait(50);
  const QString file = opened.folder.filePath("handout.pdf");
  w.output().save_handout_to(file, viewer::Paper::a4, w.explain().whose());
  OpenedWindow::wait_until([&] { return !w.output().is_writing(); });
  INFO(w.notice_text().toStdString());
  REQUIRE(QFileInfo(file).size() > 20'000);
  QProcess info;
  info.start("pdfinfo", {file});
  REQUIRE(info.waitForFinished());
  CHECK(QString::fromUtf8(info.readAllStandardOutput()).contains(QRegularExpression("Pages: +1\\s")));
  QProcess text;
  text.start("pdftotext", {file, "-"});
  REQUIRE(text.waitForFinished());
  // Letters that a face joins (fl, fi) are told apart again.
  const QString said =
      QString::fromUtf8(text.readAllStandardOutput()).normalized(QString::NormalizationForm_KC).simplified();
  INFO(said.toStdString());
  for (const viewer::PatientPage& page : w.explain().pages()) {
    CHECK(said.contains(QString::fromStdString(page.heading)));
    CHECK(said.contains(QString::fromStdString(page.text).left(40)));
  }
  CHECK(said.contains("not a navigation or treatment device"));
}
