#pragma once

#include <QByteArray>
#include <QStringList>
#include <optional>

#include "viewer/window/fields/length_text.h"
#include "viewer/window/fields/type_size.h"

namespace scalpmark::window {

/// What the program remembers about how it is used on this machine; nothing about patients but the names of
/// recent files. Kept where the desktop keeps settings, and written at once.
struct Settings {
  LengthUnit unit = LengthUnit::centimetre;
  bool dark = false;
  bool animated = true;
  bool cautions_seen = false;
  std::optional<TypeSize> type_size;  ///< empty: what suits the screen
  QByteArray window;                  ///< where it was left and how large, as QWidget::saveGeometry says it
  QStringList recent;                 ///< newest first

  [[nodiscard]] static Settings read();
  void write() const;
  void used(const QString& file);
};

}  // namespace scalpmark::window
