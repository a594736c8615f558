#include "viewer/sheet/text_without_display.h"

#include <clocale>

namespace scalpmark::viewer {

TextWithoutDisplay::TextWithoutDisplay() {
  if (QCoreApplication::instance() != nullptr) return;
  // What goes wrong is said in our own sentences.
  former_ = qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
  own_ = std::make_unique<QGuiApplication>(count_, arguments_.data());
  // Qt has switched to the user's language; numbers keep their point.
  std::setlocale(LC_NUMERIC, "C");
}

TextWithoutDisplay::~TextWithoutDisplay() {
  if (!own_) return;
  own_.reset();
  qInstallMessageHandler(former_);
}

}  // namespace scalpmark::viewer
