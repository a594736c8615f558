#include <catch2/catch.hpp>

#include "tests/support/labels_told_apart.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

TEST_CASE(
    "no text of a lesson or a what-if is nearer to another symbol than to its own, on either side, at any size") {
  for (const geometry::Side side : {geometry::Side::left, geometry::Side::right}) {
    models::CaseFile case_file = demo_case();
    case_file.the_case.side = side;
    OpenedWindow opened(case_file);
    MainWindow& w = opened.window;
    w.set_mode(Mode::teach);
    for (const QSize size : {QSize(960, 620), QSize(1280, 800), QSize(1920, 1080)}) {
      w.resize(size);
      OpenedWindow::wait_until([&] { return w.size() == size; });
      QTest::qWait(50);
      const auto look = [&](const std::string& what) {
        INFO(what << ", " << size.width() << " wide, " << (side == geometry::Side::left ? "left" : "right"));
        const QImage picture = w.stage().picture();
        const std::string wrong = tests::mistaken_labels(w.stage().stage());
        if (!wrong.empty())
          (void)picture.save(QStringLiteral(SCALPMARK_BINARY_DIR "/misread-%1-%2.png")
                                 .arg(QString::fromStdString(what).replace(' ', '-'))
                                 .arg(size.width()));
        CHECK_THAT(wrong, Catch::Equals(""));
      };
      for (int i = 0; i < w.teach().player().count(); ++i) {
        w.teach().player().go_to(i);
        look("step " + std::to_string(i + 1));
      }
      WhatIfControls* what_if = w.teach().panel().what_if();
      for (int kind = WhatIfControls::nothing + 1; what_if->button(static_cast<WhatIfControls::Kind>(kind));
           ++kind) {
        QTest::mouseClick(what_if->button(static_cast<WhatIfControls::Kind>(kind)), Qt::LeftButton,
                          Qt::NoModifier, QPoint(8, 8));
        QTest::qWait(10);
        look("what-if " + std::to_string(kind));
      }
      // And two at once.
      const std::pair<WhatIfControls::Kind, WhatIfControls::Kind> both[]{
          {WhatIfControls::vertex, WhatIfControls::turned},
          {WhatIfControls::tape, WhatIfControls::cap},
          {WhatIfControls::turned, WhatIfControls::aside},
          {WhatIfControls::off, WhatIfControls::tape}};
      for (const auto& [first, second] : both) {
        what_if->clear();
        what_if->button(first)->click();
        what_if->keep()->click();
        what_if->button(second)->click();
        REQUIRE(w.teach().outcome());
        look("what-if " + std::to_string(first) + " and " + std::to_string(second));
      }
      what_if->clear();
    }
  }
}
