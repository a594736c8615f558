#pragma once

#include <QCoreApplication>
#include <initializer_list>
#include <string>

namespace scalpmark::viewer {

/// What people read on stage, sheet and in the lesson, for translators: Words::tr("...") is found by lupdate
/// and gives the text in the language of the desktop, English where nobody has translated it. Needs no
/// application object. What the kernel and the readers say is in sentences.h.
class Words {
  Q_DECLARE_TR_FUNCTIONS(Words)
};

/// As the stage and the sheet take it, with %1, %2... filled in.
[[nodiscard]] std::string said(QString text, std::initializer_list<std::string> parts = {});

}  // namespace scalpmark::viewer
