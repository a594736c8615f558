#include <QAction>
#include <QFile>
#include <QSlider>
#include <catch2/catch.hpp>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

QSlider& skin_slider(MainWindow& w) {
  for (QSlider* slider : w.findChildren<QSlider*>())
    if (slider->accessibleName() == "Skin opacity in percent") return *slider;
  throw std::runtime_error("There is no slider for the skin.");
}

/// As a person does who works by keys.
void look_through(OpenedWindow& opened) {
  QTest::keyClick(&opened.window, Qt::Key_B, Qt::ControlModifier | Qt::ShiftModifier);
}

void wait_for_cortex(OpenedWindow& opened) {
  OpenedWindow::wait_until([&] { return opened.window.session().has_cortex(); });
}

/// The share of the stage's picture that is more red than any skin: brain, and lines and windings.
double reddish(MainWindow& w) {
  const QImage picture = w.stage().picture().convertToFormat(QImage::Format_RGB32);
  int count = 0;
  for (int y = 0; y < picture.height(); ++y)
    for (int x = 0; x < picture.width(); ++x) {
      const QColor c = picture.pixelColor(x, y);
      // The skin's colour has 12 between red and green, and less in the shade.
      if (c.red() - c.green() > 15) ++count;
    }
  return count / (1.0 * picture.width() * picture.height());
}

bool said_on_stage(MainWindow& w, const QString& words) {
  for (const auto& caption : w.stage().stage().captions())
    if (QString::fromStdString(caption.text).contains(words)) return true;
  return false;
}

const QString caution = QStringLiteral("on the template; a person's own brain differs");

}  // namespace

TEST_CASE("a skin that is looked through reveals the template's brain, and says what lies under the coil") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::site_index);
  w.stage().look(viewer::View::left);
  CHECK_FALSE(w.session().has_cortex());  // nobody asked for it
  const double without = reddish(w);
  CHECK_FALSE(said_on_stage(w, "cortex"));
  for (int i = 0; i < 6; ++i) QTest::keyClick(&skin_slider(w), Qt::Key_PageDown);
  CHECK(w.skin_opacity() == Approx(0.4));
  wait_for_cortex(opened);
  CHECK(reddish(w) > without + 0.04);
  CHECK(said_on_stage(w, "from skin to cortex"));
  CHECK(said_on_stage(w, caution));
  const geometry::Plan& plan = w.session().plan();
  REQUIRE(plan.treatment.cortex);
  // Frontal cortex lies one to three centimetres under the skin of adults (memory).
  CHECK(plan.treatment.cortex->depth_mm > 10);
  CHECK(plan.treatment.cortex->depth_mm < 30);
  for (const auto& spot : plan.grid) CHECK(spot.placement.cortex);
  CHECK(w.session().has_tapes());
  // A step without a coil shows the brain and its caution, and nothing under a coil.
  w.worksheet().go_to(Worksheet::landmarks_index);
  QTest::qWait(20);
  CHECK(said_on_stage(w, caution));
  CHECK_FALSE(said_on_stage(w, "Under the coil"));
  // And back.
  for (int i = 0; i < 6; ++i) QTest::keyClick(&skin_slider(w), Qt::Key_PageUp);
  w.worksheet().go_to(Worksheet::site_index);
  w.stage().look(viewer::View::left);
  CHECK_FALSE(said_on_stage(w, "cortex"));
  CHECK(reddish(w) == Approx(without).margin(0.005));
}

TEST_CASE("edits keep the cortex, another head gets its own, and undo brings the first one back") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  look_through(opened);
  CHECK(w.skin_opacity() < 1);
  wait_for_cortex(opened);
  opened.settle();
  Session& s = w.session();
  const geometry::Cortex* first = s.head().cortex.get();
  const Eigen::Vector3d point = s.plan().treatment.cortex->point;
  s.change("angle", [](models::CaseFile& case_file) { case_file.the_case.treatment.distance_mm = 60; });
  REQUIRE(s.plan().treatment.cortex);
  CHECK((s.plan().treatment.cortex->point - point).norm() > 2);
  CHECK(s.head().cortex.get() == first);
  s.undo();
  CHECK(s.plan().treatment.cortex->point == point);
  opened.settle();
  CHECK(s.has_tapes());
  CHECK(s.plan().treatment.cortex->point == point);

  s.change("tape", [](models::CaseFile& case_file) { *case_file.the_case.tape_mm.circumference_mm += 15; });
  OpenedWindow::wait_until([&] { return s.has_cortex() && s.head().cortex.get() != first; });
  REQUIRE(s.plan().treatment.cortex);
  CHECK(s.plan().treatment.cortex->point != point);
  opened.settle();
  CHECK(s.has_tapes());
  s.undo();
  CHECK(s.head().cortex.get() == first);  // at once
  CHECK(s.plan().treatment.cortex->point == point);
}

TEST_CASE("bringing the cortex can be given up, and asked for again") {
  OpenedWindow opened;
  Session& s = opened.window.session();
  s.want_cortex();
  CHECK(s.is_working());
  s.cancel();
  CHECK_FALSE(s.is_working());
  QTest::qWait(50);
  CHECK_FALSE(s.has_cortex());
  CHECK(s.has_tapes());
  s.want_cortex();
  wait_for_cortex(opened);
}

TEST_CASE("without the package one sentence says what to install, and everything else works") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.session().set_template_files({opened.folder.path().toStdString(), {}});
  // Nothing about it in front of a patient.
  QTest::mouseClick(w.mode_button(Mode::explain), Qt::LeftButton);
  opened.settle();
  CHECK(w.notice_text().isEmpty());
  QTest::keyClick(&w.stage(), Qt::Key_Escape);
  CHECK(w.notice_text().contains("install the Debian package mricron-data"));
  CHECK(w.notice_text().count('.') - w.notice_text().count(".nii.gz") * 2 == 1);  // one sentence

  w.worksheet().go_to(Worksheet::site_index);
  look_through(opened);
  opened.settle();
  CHECK_FALSE(w.session().has_cortex());
  CHECK(w.notice_text().contains("install the Debian package mricron-data"));
  CHECK_FALSE(said_on_stage(w, "cortex"));
  CHECK(w.session().change("distance", [](models::CaseFile& case_file) {
    case_file.the_case.treatment.distance_mm = 55;
  }) == QString());
  opened.settle();
  CHECK(w.session().has_tapes());
  const QString sheet = opened.folder.filePath("sheet.pdf");
  w.output().save_sheet_to(sheet, viewer::Paper::a4);
  OpenedWindow::wait_until([&] { return !w.output().is_writing(); });
  CHECK(QFile::exists(sheet));
  CHECK(w.notice_text().contains("sheet.pdf"));
  CHECK(w.notice_text().contains("install the Debian package mricron-data"));
}

TEST_CASE("Explain shows the lit place on a brain that it calls a drawn example, without numbers") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  QTest::mouseClick(w.mode_button(Mode::explain), Qt::LeftButton);
  const auto explained = [&] {
    QString all;
    for (const QLabel* label : w.findChildren<QLabel*>())
      if (label->isVisible()) all += label->text() + " ";
    return all;
  };
  opened.settle();
  REQUIRE(w.session().has_cortex());
  CHECK(explained().contains("a sample brain, not your own"));
  CHECK_FALSE(explained().contains(QRegularExpression("[0-9]")));
  for (const auto& caption : w.stage().stage().captions()) {
    const QString said = QString::fromStdString(caption.text);
    INFO(caption.text);
    CHECK_FALSE(said.contains(QRegularExpression("[0-9]")));
    CHECK_FALSE(said.contains("cortex"));
    CHECK_FALSE(said.contains("Brodmann"));
  }
  // The place is lit: yellow, which nothing else in Explain is.
  const QImage picture = w.stage().picture().convertToFormat(QImage::Format_RGB32);
  int yellow = 0;
  for (int y = 0; y < picture.height(); ++y)
    for (int x = 0; x < picture.width(); ++x) {
      const QColor c = picture.pixelColor(x, y);
      if (c.red() - c.blue() > 60 && c.green() - c.blue() > 45 && c.red() - c.green() < 30) ++yellow;
    }
  CHECK(yellow > 60);
  QTest::keyClick(&w.stage(), Qt::Key_Escape);
  QTest::qWait(20);
  CHECK(w.skin_opacity() == 1);
  CHECK_FALSE(said_on_stage(w, "cortex"));  // the worksheet's skin is as it was
}

TEST_CASE("in Check the words about the cortex, the numbers and the legend stand clear of each other") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.resize(1280, 800);
  look_through(opened);
  wait_for_cortex(opened);
  mark_today(w, 14);
  w.set_mode(Mode::check);
  QTest::qWait(300);
  (void)w.stage().picture();
  const auto& captions = w.stage().stage().captions();
  bool legend = false, cortex = false;
  for (std::size_t i = 0; i < captions.size(); ++i) {
    legend |= captions[i].is_legend;
    cortex |= captions[i].text.find("from skin to cortex") != std::string::npos;
    for (std::size_t j = 0; j < i; ++j) {
      CAPTURE(captions[i].text, captions[i].box.top, captions[i].box.bottom, captions[j].text,
              captions[j].box.top, captions[j].box.bottom);
      CHECK_FALSE(captions[i].box.overlaps(captions[j].box));
    }
  }
  CHECK(legend);
  CHECK(cortex);
}
