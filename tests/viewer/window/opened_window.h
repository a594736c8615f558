#pragma once

#include <QTemporaryDir>
#include <QtTest>
#include <functional>
#include <memory>

#include "viewer/window/frame/main_window.h"
#include "viewer/window/teach/teach.h"

namespace scalpmark::window {

/// A QApplication with folders of its own, so that tests neither see nor touch anybody's settings.
class TestSession {
public:
  TestSession(int argc, char** argv);
  ~TestSession();

private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

/// A window on the demo case, ready to work in. Movements are switched off; questions answer themselves with
/// "discard".
struct OpenedWindow {
  OpenedWindow();
  explicit OpenedWindow(const models::CaseFile& case_file);

  MainWindow window;
  Teach& teach;
  QTemporaryDir folder;

  /// Waits until long work is over. Fails the test if it does not end.
  void settle();
  /// The window as it is seen, its stage drawn anew.
  [[nodiscard]] QImage shot();
  /// Waits while the window goes on working. Fails the test if it never comes about.
  static void wait_until(const std::function<bool()>& comes_about);
  /// Types into a field as a person does: click, select all, type, Enter.
  void type(QLineEdit* edit, const QString& text);
  [[nodiscard]] std::string case_text() { return models::case_json(window.session().case_file()); }
};

/// Today's marks, as far behind the planned ones as that.
void mark_today(MainWindow& w, double backward_mm);

}  // namespace scalpmark::window
