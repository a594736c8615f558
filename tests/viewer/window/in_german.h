#pragma once

#include <QCoreApplication>
#include <QTranslator>
#include <stdexcept>

#include "viewer/window/frame/translation.h"

namespace scalpmark::window {

/// Speaks German while it lives, where that is wanted.
class InGerman {
public:
  explicit InGerman(bool wanted = true) {
    if (wanted && !translate(*QCoreApplication::instance(), QLocale(QLocale::German, QLocale::Germany),
                             {QStringLiteral(SCALPMARK_BINARY_DIR "/translations")}))
      throw std::runtime_error("The German texts are not built.");
  }
  ~InGerman() {
    for (QTranslator* each : QCoreApplication::instance()->findChildren<QTranslator*>()) {
      QCoreApplication::removeTranslator(each);
      delete each;
    }
  }
  InGerman(const InGerman&) = delete;
  InGerman& operator=(const InGerman&) = delete;
};

}  // namespace scalpmark::window
