#include <QMenuBar>
#include <QRegularExpression>
#include <catch2/catch.hpp>

#include "tests/viewer/window/opened_window.h"
#include "viewer/window/frame/theme.h"
#include "viewer/window/frame/window_place.h"

using namespace scalpmark;
using namespace scalpmark::window;

TEST_CASE("a window and its frame fit on the screen, and come back where and as large as they were left") {
  // 1280 x 800 with a panel of 30 pixels, and 1366 x 768: what a laptop leaves free.
  const QMargins frame(4, 40, 4, 4);
  CHECK(fitting_size({1280, 800}, {0, 30, 1280, 770}, frame) == QSize(1272, 726));
  CHECK(fitting_size({1280, 800}, {0, 0, 1366, 768}, frame) == QSize(1280, 724));
  CHECK(fitting_size({1280, 800}, {0, 0, 1920, 1080}, frame) == QSize(1280, 800));

  QByteArray kept;
  {
    OpenedWindow opened;
    opened.window.resize(1010, 700);
    opened.window.move(40, 30);
    OpenedWindow::wait_until([&] { return opened.window.size() == QSize(1010, 700); });
    opened.window.close();
    kept = Settings::read().window;
  }
  REQUIRE_FALSE(kept.isEmpty());
  QWidget again;
  place_window(again, kept);
  CHECK(again.size() == QSize(1010, 700));
}

TEST_CASE("letters have three sizes, the screen's own is taken until one is chosen, and nothing is cut") {
  CHECK(usual_type_size(96) == TypeSize::usual);
  CHECK(usual_type_size(120) == TypeSize::large);    // 125 %
  CHECK(usual_type_size(144) == TypeSize::largest);  // 150 %
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const int usual = w.worksheet().measure()->heading()->fontMetrics().height();
  const int width = w.worksheet().width();
  emit w.menus().type_size(TypeSize::largest);
  QTest::qWait(50);
  CHECK(w.worksheet().measure()->heading()->fontMetrics().height() > 1.35 * usual);
  CHECK(w.worksheet().width() > 1.4 * width);
  CHECK(Settings::read().type_size == TypeSize::largest);
  for (const LengthField* field : w.worksheet().findChildren<LengthField*>()) {
    if (!field->isVisible()) continue;
    const QLineEdit* edit = field->edit();
    CHECK(edit->width() >= edit->fontMetrics().horizontalAdvance("56.50") + 10);
  }
  emit w.menus().type_size(TypeSize::usual);
  QTest::qWait(50);
  CHECK(w.worksheet().width() == width);
}

TEST_CASE("projected, Teach and Check are the head, what it is about, and large letters, Esc ends it") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const QSize size = GENERATE(QSize(1280, 800), QSize(960, 620));
  w.resize(size);
  mark_today(w, 20);
  for (const Mode mode : {Mode::teach, Mode::check}) {
    w.set_mode(mode);
    QTest::keyClick(&w.stage(), Qt::Key_J, Qt::ControlModifier);
    QTest::qWait(50);
    (void)w.stage().picture();
    CHECK_FALSE(w.menuBar()->isVisible());
    CHECK_FALSE(w.worksheet().isVisible());
    CHECK_FALSE(w.teach().panel().isVisible());
    const viewer::Stage& stage = w.stage().stage();
    REQUIRE_FALSE(stage.labels().empty());
    for (const auto* label : w.findChildren<QLabel*>(QRegularExpression("huge|large|larger"))) {
      if (!label->isVisible() || label->text().isEmpty()) continue;
      INFO(label->text().toStdString());
      CHECK(label->height() >=
            label->fontMetrics()
                .boundingRect(QRect(0, 0, label->width(), 10000), Qt::TextWordWrap, label->text())
                .height());
    }
    // Letters of 14 pixels have capitals of 10 (the stage's face, by its own measures about 0.72 of the
    // size).
    const double letters = stage.sight().scale * 14;
    CHECK(0.72 * letters >= 24);
    // The caution is there, small.
    const auto& captions = stage.captions();
    const auto caution = std::find_if(captions.begin(), captions.end(), [](const auto& caption) {
      return caption.text.find("not a navigation") != std::string::npos;
    });
    REQUIRE(caution != captions.end());
    CHECK(caution->box.height() < 0.15 * stage.sight().height_px);
    QTest::keyClick(&w.stage(), Qt::Key_Escape);
    QTest::qWait(20);
    CHECK(w.menuBar()->isVisible());
    CHECK(w.mode() == mode);
  }
}

TEST_CASE("Enter on a step's heading opens it as Space does, and a new case begins at its first step") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  QPushButton* heading = w.worksheet().step(Worksheet::site_index)->heading();
  heading->setFocus();
  QTest::keyClick(heading, Qt::Key_Return);
  CHECK(w.worksheet().current() == Worksheet::site_index);
  CHECK(w.worksheet().step(Worksheet::site_index)->is_open());
  QTest::keyClick(&w.stage(), Qt::Key_N, Qt::ControlModifier);
  opened.settle();
  CHECK(w.worksheet().current() == Worksheet::measure_index);
  CHECK(w.session().case_file().the_case.hotspot_awaited);
}

TEST_CASE("a box that is ticked looks ticked, in both themes") {
  for (const bool dark : {false, true}) {
    apply_theme(*qApp, dark);
    QFrame step;
    step.setObjectName("step");
    auto* box = new QCheckBox("Show it", &step);
    step.resize(160, 40);
    box->setGeometry(10, 5, 120, 30);
    const QImage off = step.grab(QRect(10, 5, 18, 30)).toImage();
    int frame = 0;
    for (int y = 0; y < off.height(); ++y)
      for (int x = 0; x < off.width(); ++x)
        frame += qAbs(qGray(off.pixel(x, y)) - qGray(off.pixel(0, 0))) > 40;
    CHECK(frame > 25);  // an empty box is seen, too
    box->setChecked(true);
    const QImage on = step.grab(QRect(10, 5, 18, 30)).toImage();
    box->setText({});
    int changed = 0;
    for (int y = 0; y < on.height(); ++y)
      for (int x = 0; x < on.width(); ++x)
        changed += qAbs(qGray(on.pixel(x, y)) - qGray(off.pixel(x, y))) > 40;
    CHECK(changed > 60);  // it is filled
    // And there is a tick on it: pixels of both kinds inside.
    const QRgb ground = on.pixel(3, 15);
    int tick = 0;
    for (int y = 9; y < 22; ++y)
      for (int x = 2; x < 14; ++x) tick += qAbs(qGray(on.pixel(x, y)) - qGray(ground)) > 60;
    CHECK(tick > 8);
  }
  apply_theme(*qApp, false);
}
