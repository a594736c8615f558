#include "viewer/window/frame/window_place.h"

#include <QGuiApplication>
#include <QScreen>
#include <algorithm>

namespace scalpmark::window {

namespace {

/// Before a window was ever shown nobody knows its frame; title bars of the usual desktops are lower.
constexpr QMargins usual_frame{4, 40, 4, 4};

}  // namespace

QSize fitting_size(const QSize& wanted, const QRect& free, const QMargins& frame) {
  return {std::min(wanted.width(), free.width() - frame.left() - frame.right()),
          std::min(wanted.height(), free.height() - frame.top() - frame.bottom())};
}

void place_window(QWidget& window, const QByteArray& kept) {
  // Qt itself brings back what would be off all screens.
  if (!kept.isEmpty() && window.restoreGeometry(kept)) return;
  if (const QScreen* screen = QGuiApplication::primaryScreen())
    window.resize(fitting_size(window.size(), screen->availableGeometry(), usual_frame));
}

}  // namespace scalpmark::window
