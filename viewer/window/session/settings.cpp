#include "viewer/window/session/settings.h"

#include <QSettings>

namespace scalpmark::window {

namespace {

constexpr int recent_files = 8;

}  // namespace

Settings Settings::read() {
  QSettings stored(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("scalpmark"),
                   QStringLiteral("scalpmark"));
  Settings s;
  s.unit = stored.value("unit").toString() == QLatin1String("in") ? LengthUnit::inch : LengthUnit::centimetre;
  s.dark = stored.value("dark", false).toBool();
  s.animated = stored.value("animated", true).toBool();
  s.cautions_seen = stored.value("cautions_seen", false).toBool();
  s.recent = stored.value("recent").toStringList();
  if (const QVariant size = stored.value("type_size"); size.isValid())
    s.type_size = static_cast<TypeSize>(qBound(0, size.toInt(), 2));
  s.window = stored.value("window").toByteArray();
  return s;
}

void Settings::write() const {
  QSettings stored(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("scalpmark"),
                   QStringLiteral("scalpmark"));
  stored.setValue("unit", unit == LengthUnit::inch ? "in" : "cm");
  stored.setValue("dark", dark);
  stored.setValue("animated", animated);
  stored.setValue("cautions_seen", cautions_seen);
  stored.setValue("recent", recent);
  if (type_size) stored.setValue("type_size", static_cast<int>(*type_size));
  stored.setValue("window", window);
}

void Settings::used(const QString& file) {
  recent.removeAll(file);
  recent.prepend(file);
  while (recent.size() > recent_files) recent.removeLast();
}

}  // namespace scalpmark::window
