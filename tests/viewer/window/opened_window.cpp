#include "tests/viewer/window/opened_window.h"

#include <QVTKOpenGLNativeWidget.h>
#include <vtkObject.h>

#include <QApplication>
#include <QSurfaceFormat>
#include <stdexcept>

#include "viewer/picture/display.h"
#include "viewer/window/frame/theme.h"

namespace scalpmark::window {

namespace {

constexpr int patience_ms = 280'000;  // a busy machine may take long; a hang is still told apart

}  // namespace

struct TestSession::Parts {
  QTemporaryDir home;
  // Always a display of its own: no window takes the focus from another test's, or pops up before somebody.
  bool apart = qunsetenv("DISPLAY");
  viewer::Display display;
  int count = 1;
  std::unique_ptr<QApplication> app;
};

TestSession::TestSession(int argc, char** argv) : parts_(std::make_unique<Parts>()) {
  qputenv("XDG_CONFIG_HOME", parts_->home.filePath("config").toUtf8());
  qputenv("XDG_DATA_HOME", parts_->home.filePath("data").toUtf8());
  // Not somebody's own, but one for all tests: making a brain takes seconds.
  qputenv("XDG_CACHE_HOME", SCALPMARK_BINARY_DIR "/tests/cache");
  qputenv("QT_QPA_PLATFORM", "xcb");
  qputenv("DISPLAY", parts_->display.name().c_str());
  QSurfaceFormat format = QVTKOpenGLNativeWidget::defaultFormat();
  format.setSamples(0);
  QSurfaceFormat::setDefaultFormat(format);
  vtkObject::GlobalWarningDisplayOff();
  parts_->count = std::min(argc, 1);
  parts_->app = std::make_unique<QApplication>(parts_->count, argv);
  QCoreApplication::setApplicationName(QStringLiteral("scalpmark"));
  apply_theme(*parts_->app, false);
}

TestSession::~TestSession() = default;

OpenedWindow::OpenedWindow() : OpenedWindow(demo_case()) {}

OpenedWindow::OpenedWindow(const models::CaseFile& case_file) : teach(window.teach()) {
  window.files().ask_unsaved = [] { return UnsavedAnswer::discard; };
  window.practise().ask_unsaved = [] { return UnsavedAnswer::discard; };
  window.stage().set_animated(false);
  window.session().set_locks_when_kept(false);  // most tests go on after saving
  window.show();
  if (!QTest::qWaitForWindowExposed(&window)) throw std::runtime_error("The window did not come up.");
  window.activateWindow();
  window.session().start(case_file);
  settle();
  if (!window.session().is_ready()) throw std::runtime_error("The case did not load.");
}

QImage OpenedWindow::shot() {
  (void)window.stage().picture();
  return window.grab().toImage();
}

void OpenedWindow::settle() {
  wait_until([this] { return !window.session().is_working(); });
  QTest::qWait(1);
}

void OpenedWindow::wait_until(const std::function<bool()>& comes_about) {
  if (!QTest::qWaitFor(comes_about, patience_ms))
    throw std::runtime_error("What was waited for did not come about.");
}

void OpenedWindow::type(QLineEdit* edit, const QString& text) {
  edit->setFocus();
  QTest::mouseClick(edit, Qt::LeftButton);
  edit->selectAll();
  QTest::keyClick(edit, Qt::Key_Delete);
  QTest::keyClicks(edit, text);
  QTest::keyClick(edit, Qt::Key_Return);
}

void mark_today(MainWindow& w, double backward_mm) {
  const auto& skin = w.session().head().head.skin();
  const auto& planned = w.session().plan().treatment;
  w.visit().set(TodaysMark::site, skin.closest(planned.pulse - backward_mm * planned.forward));
  w.visit().set(TodaysMark::edge, skin.closest(*planned.mark - backward_mm * planned.forward));
}

}  // namespace scalpmark::window
