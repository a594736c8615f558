#include "viewer/window/frame/translation.h"

#include <QLibraryInfo>
#include <QTranslator>

namespace scalpmark::window {

QStringList translation_folders() {
  return {QCoreApplication::applicationDirPath() + QStringLiteral("/translations"),
          QCoreApplication::applicationDirPath() + QStringLiteral("/../share/scalpmark/translations")};
}

bool translate(QCoreApplication& app, const QLocale& locale, const QStringList& folders) {
  auto* texts = new QTranslator(&app);
  for (const QString& folder : folders) {
    if (!texts->load(locale, QStringLiteral("scalpmark"), QStringLiteral("_"), folder)) continue;
    QCoreApplication::installTranslator(texts);
    auto* qt = new QTranslator(&app);
    if (qt->load(locale, QStringLiteral("qtbase"), QStringLiteral("_"),
                 QLibraryInfo::location(QLibraryInfo::TranslationsPath)))
      QCoreApplication::installTranslator(qt);
    else
      delete qt;
    return true;
  }
  delete texts;
  return false;
}

}  // namespace scalpmark::window
