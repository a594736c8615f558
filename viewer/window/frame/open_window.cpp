#include "viewer/window/frame/open_window.h"

#include <QVTKOpenGLNativeWidget.h>
#include <vtkObject.h>

#include <QApplication>
#include <QIcon>
#include <QSurfaceFormat>

#include "geometry/base/message.h"
#include "viewer/picture/display.h"
#include "viewer/window/frame/main_window.h"
#include "viewer/window/frame/translation.h"
#include "viewer/window/frame/window_place.h"
#include "viewer/words/error.h"

namespace scalpmark::window {

int open_window(const std::string& case_file) {
  // Qt would end the program without a word of ours.
  if (!viewer::display_answers())
    throw viewer::ViewerError(geometry::Message::of(
        "There is no display to open the window on; set DISPLAY, or use scalpmark solve or scalpmark "
        "picture."));
#ifdef Q_OS_LINUX
  qputenv("QT_QPA_PLATFORM", "xcb");  // what VTK draws on
#endif
  QSurfaceFormat format = QVTKOpenGLNativeWidget::defaultFormat();
  format.setSamples(0);
  QSurfaceFormat::setDefaultFormat(format);
  QCoreApplication::setAttribute(Qt::AA_EnableHighDpiScaling);
  QCoreApplication::setAttribute(Qt::AA_UseHighDpiPixmaps);
  vtkObject::GlobalWarningDisplayOff();  // what goes wrong is said in our own sentences

  int count = 1;
  char name[] = "scalpmark";
  char* arguments[] = {name, nullptr};
  QApplication app(count, arguments);
  QCoreApplication::setApplicationName(QStringLiteral("scalpmark"));
  // By which a desktop finds the program's name and icon.
  QGuiApplication::setDesktopFileName(QStringLiteral("scalpmark"));
  QApplication::setWindowIcon(QIcon::fromTheme(QStringLiteral("scalpmark")));
  translate(app, QLocale(), translation_folders());
  MainWindow window;
  place_window(window, window.settings().window);
  window.show();
  window.files().begin(QString::fromStdString(case_file));
  return QApplication::exec();
}

}  // namespace scalpmark::window
