#pragma once

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace scalpmark::window {

/// Where translations may lie: beside the program, and where packages put them.
[[nodiscard]] QStringList translation_folders();

/// Puts the window's texts into the language of `locale`, where a scalpmark_LANGUAGE.qm for it lies in one of
/// the folders; otherwise they stay English. Qt's own texts (the buttons of boxes) go with them. Whether
/// there was one.
bool translate(QCoreApplication& app, const QLocale& locale, const QStringList& folders);

}  // namespace scalpmark::window
