#include "viewer/window/session/settings.h"

#include <QSettings>

namespace scalpmark::window {

namespace {

constexpr int recent_files = 8;

}  // namespace

Settings Settings::read() {
  QSettings kept(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("scalpmark"),
                 QStringLiteral("scalpmark"));
  Settings s;
  s.unit = kept.value("unit").toString() == QLatin1String("in") ? LengthUnit::inch : LengthUnit::centimetre;
  s.dark = kept.value("dark", false).toBool();
  s.animated = kept.value("animated", true).toBool();
  s.cautions_seen = kept.value("cautions_seen", false).toBool();
  s.recent = kept.value("recent").toStringList();
  return s;
}

void Settings::write() const {
  QSettings kept(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("scalpmark"),
                 QStringLiteral("scalpmark"));
  kept.setValue("unit", unit == LengthUnit::inch ? "in" : "cm");
  kept.setValue("dark", dark);
  kept.setValue("animated", animated);
  kept.setValue("cautions_seen", cautions_seen);
  kept.setValue("recent", recent);
}

void Settings::used(const QString& file) {
  recent.removeAll(file);
  recent.prepend(file);
  while (recent.size() > recent_files) recent.removeLast();
}

}  // namespace scalpmark::window
