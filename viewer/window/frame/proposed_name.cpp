#include "viewer/window/frame/proposed_name.h"

#include <QFileInfo>
#include <QRegularExpression>

#include "viewer/words/words.h"

namespace scalpmark::window {

QString proposed_name(const std::string& label, const QString& case_file, const QDate& date,
                      const QString& ending) {
  constexpr int longest = 80;
  static const QRegularExpression not_in_names(QStringLiteral("[^\\w .-]+"),
                                               QRegularExpression::UseUnicodePropertiesOption);
  QString name = QString::fromStdString(label).replace(not_in_names, QStringLiteral(" ")).simplified();
  // Hidden, where names begin so.
  while (name.startsWith(QLatin1Char('.')) || name.startsWith(QLatin1Char(' '))) name.remove(0, 1);
  name = name.left(longest).trimmed();
  if (name.isEmpty()) name = viewer::Words::tr("Unnamed case");
  const QString file = name + QLatin1Char(' ') + date.toString(Qt::ISODate) + ending;
  return case_file.isEmpty() ? file : QFileInfo(case_file).path() + QLatin1Char('/') + file;
}

}  // namespace scalpmark::window
