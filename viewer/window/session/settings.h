#pragma once

#include <QStringList>

#include "viewer/window/fields/length_text.h"

namespace scalpmark::window {

/// What the program remembers about how it is used on this machine; nothing about patients but the names of
/// recent files. Kept where the desktop keeps settings, and written at once.
struct Settings {
  LengthUnit unit = LengthUnit::centimetre;
  bool dark = false;
  bool animated = true;
  bool cautions_seen = false;
  QStringList recent;  ///< newest first

  [[nodiscard]] static Settings read();
  void write() const;
  void used(const QString& file);
};

}  // namespace scalpmark::window
