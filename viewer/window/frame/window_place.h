#pragma once

#include <QMargins>
#include <QRect>
#include <QSize>
#include <QWidget>

namespace scalpmark::window {

/// How large a window may be so that it and its frame (title bar, borders) fit on what is free of a screen;
/// no larger than it wants to be.
[[nodiscard]] QSize fitting_size(const QSize& wanted, const QRect& free, const QMargins& frame);

/// Before it is shown: where and as large as it was left (`kept`, of QWidget::saveGeometry), or as large as
/// fits on the screen.
void place_window(QWidget& window, const QByteArray& kept);

}  // namespace scalpmark::window
