#include <catch2/catch.hpp>
#include <cmath>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

struct Named {
  std::string text;
  viewer::Box box;
  viewer::Pixel anchor;
  bool leader = false;
};

// Every text on the stage that names something, and every symbol that it could be taken to name.
struct Picture {
  std::vector<Named> texts;
  std::vector<viewer::Pixel> symbols;
};

Picture picture_of(MainWindow& w) {
  (void)w.stage().picture();
  Picture picture;
  const viewer::Stage& stage = w.stage().stage();
  for (const auto& label : stage.labels())
    picture.texts.push_back({label.wish.text, label.box, label.wish.anchor, label.leader});
  for (const viewer::MarkInPicture& mark : stage.marks_in_picture()) picture.symbols.push_back(mark.middle());
  for (const DrawnNote& note : w.stage().drawn_notes()) {
    picture.texts.push_back({note.text.toStdString(), note.box, note.anchor, note.leader});
    if (note.symbol) picture.symbols.push_back(note.anchor);
  }
  return picture;
}

/// Texts that would be read as the name of another symbol; one line each.
std::vector<std::string> misread(MainWindow& w) {
  constexpr double one_place_px = 8, clear_px = 4;
  const Picture picture = picture_of(w);
  std::vector<std::string> found;
  for (const Named& text : picture.texts) {
    const double own = viewer::away(text.box, text.anchor);
    for (const viewer::Pixel& symbol : picture.symbols) {
      if (std::hypot(symbol.x - text.anchor.x, symbol.y - text.anchor.y) < one_place_px) continue;
      const double other = viewer::away(text.box, symbol);
      if (text.leader ? other < clear_px : other < own)
        found.push_back(text.text + ": " + std::to_string(own) + " px from its own, " +
                        std::to_string(other) + " px from another");
    }
  }
  return found;
}

}  // namespace

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
        const auto wrong = misread(w);
        for (const auto& text : wrong) UNSCOPED_INFO(text);
        if (!wrong.empty())
          (void)w.stage().picture().save(QStringLiteral(SCALPMARK_BINARY_DIR "/misread-%1-%2.png")
                                             .arg(QString::fromStdString(what).replace(' ', '-'))
                                             .arg(size.width()));
        CHECK(wrong.empty());
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
    }
  }
}
