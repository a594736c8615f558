#include "viewer/words/words.h"

namespace scalpmark::viewer {

std::string said(QString text, std::initializer_list<std::string> parts) {
  // All at once in effect: a part is never looked through for the next number, since the highest goes first.
  auto number = static_cast<int>(parts.size());
  for (auto part = std::rbegin(parts); part != std::rend(parts); ++part, --number) {
    const QString place = QLatin1Char('%') + QString::number(number);
    QString filled = QString::fromStdString(*part);
    filled.replace(QLatin1Char('%'), QChar(0xFFFE));  // a part's own signs are none of ours
    text.replace(place, filled);
  }
  text.replace(QChar(0xFFFE), QLatin1Char('%'));
  return text.toStdString();
}

}  // namespace scalpmark::viewer
