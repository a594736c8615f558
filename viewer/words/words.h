#pragma once

#include <QCoreApplication>
#include <QString>
#include <exception>
#include <string>
#include <vector>

#include "geometry/base/message.h"

namespace scalpmark::viewer {

/// What people read on stage, sheet and in the lesson, for translators: Words::tr("...") is found by lupdate
/// and gives the text in the language of the desktop, English where nobody has translated it. Needs no
/// application object.
class Words {
  Q_DECLARE_TR_FUNCTIONS(Words)
};

/// A text of Words::tr as the stage and the sheet take it, with %1 to %9 filled in.
[[nodiscard]] std::string words(const QString& text, const std::vector<std::string>& parts = {});

/// A message in the language of the desktop, English where nobody has translated it, its numbers with that
/// language's decimal mark.
[[nodiscard]] std::string words(const geometry::Message& message);
/// The same for a widget.
[[nodiscard]] QString translated(const geometry::Message& message);
/// What a caught exception says (trouble_words.h).
[[nodiscard]] QString translated(const std::exception& error);

/// What stands before decimals in the language of the desktop: a point, until a translator says a comma.
[[nodiscard]] std::string decimal_mark();

}  // namespace scalpmark::viewer
