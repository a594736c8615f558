#pragma once

#include <optional>

#include "tests/viewer/window/opened_window.h"

namespace scalpmark::window {

/// The window in Teach, at the lesson's first step.
struct OpenedLesson : OpenedWindow {
  OpenedLesson() { begin(); }
  explicit OpenedLesson(const models::CaseFile& case_file) : OpenedWindow(case_file) { begin(); }

  void begin() {
    QTest::mouseClick(window.mode_button(Mode::teach), Qt::LeftButton);
    QTest::qWait(30);
  }
  [[nodiscard]] int at() { return teach.player().current(); }
  [[nodiscard]] QString progress() { return teach.bar().progress(); }
  [[nodiscard]] const viewer::Stage& stage() { return window.stage().stage(); }
  void draw() { (void)window.stage().picture(); }
  void press(QWidget* on, Qt::Key key) { QTest::keyClick(on, key); }
  void pick(WhatIfControls::Kind kind) {
    QTest::mouseClick(teach.panel().what_if()->button(kind), Qt::LeftButton, Qt::NoModifier, QPoint(8, 8));
    QTest::qWait(10);
  }
  /// Where the mark lies that has this text beside it; a line's text lies at its middle.
  [[nodiscard]] std::optional<Eigen::Vector3d> note(const QString& text) {
    draw();
    const std::string plain = text.toStdString();
    for (const viewer::PlacedLabel& label : stage().labels()) {
      if (label.wish.text != plain) continue;
      for (const viewer::SeenMark& mark : stage().marks())
        if (mark.name == plain) return mark.at;
      return stage().sight().unproject(label.wish.anchor);
    }
    return {};
  }
};

inline models::CaseFile right_sided() {
  models::CaseFile case_file = demo_case();
  case_file.the_case.side = geometry::Side::right;
  return case_file;
}

}  // namespace scalpmark::window
