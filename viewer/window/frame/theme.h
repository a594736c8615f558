#pragma once

#include <QApplication>

#include "viewer/window/fields/type_size.h"

namespace scalpmark::window {

/// Calm greys, one blue for what has the focus or is chosen; light or dark. The stage stays as bright as
/// paper in both, so that marks keep their colours. Letters as large as `type` says.
void apply_theme(QApplication& app, bool dark, TypeSize type = TypeSize::usual);

}  // namespace scalpmark::window
