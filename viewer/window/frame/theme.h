#pragma once

#include <QApplication>

namespace scalpmark::window {

/// Calm greys, one blue for what has the focus or is chosen; light or dark. The stage stays as bright as
/// paper in both, so that marks keep their colours.
void apply_theme(QApplication& app, bool dark);

}  // namespace scalpmark::window
