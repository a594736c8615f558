#include "viewer/window/fields/length_text.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <cmath>

#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

constexpr double mm_per_cm = 10, mm_per_inch = 25.4;

// What lupdate finds these texts under.
class Lengths {
  Q_DECLARE_TR_FUNCTIONS(Lengths)
};

double mm_per(LengthUnit unit) {
  return unit == LengthUnit::centimetre ? mm_per_cm : mm_per_inch;
}

// "36,2", "36.2", "14 1/4", "1/2"
std::optional<double> number(const QString& text) {
  static const QRegularExpression decimal(QStringLiteral("^[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)$"));
  static const QRegularExpression fraction(QStringLiteral("^(?:(\\d+)\\s+)?(\\d+)\\s*/\\s*(\\d+)$"));
  if (decimal.match(text).hasMatch()) {
    QString plain = text;
    return plain.replace(QLatin1Char(','), QLatin1Char('.')).toDouble();
  }
  if (const auto match = fraction.match(text); match.hasMatch()) {
    const double below = match.captured(3).toDouble();
    if (below == 0) return {};
    return match.captured(1).toDouble() + match.captured(2).toDouble() / below;
  }
  return {};
}

}  // namespace

QString unit_name(LengthUnit unit) {
  return unit == LengthUnit::centimetre ? Lengths::tr("cm") : Lengths::tr("in");
}

QString length_text(double mm, LengthUnit unit) {
  QString text = QString::number(mm / mm_per(unit), 'f', unit == LengthUnit::centimetre ? 1 : 2);
  if (text.toDouble() == 0 && text.startsWith(QLatin1Char('-'))) text = text.mid(1);
  return text.replace(QLatin1Char('.'), QString::fromStdString(viewer::decimal_mark()));
}

QString length_with_unit(double mm, LengthUnit unit) {
  return length_text(mm, unit) + QStringLiteral(" ") + unit_name(unit);
}

std::function<std::string(double)> in_unit(LengthUnit unit) {
  return [unit](double mm) { return length_with_unit(mm, unit).toStdString(); };
}

LengthReading read_length(const QString& typed, LengthUnit unit, const geometry::Range& allowed,
                          const QString& name) {
  QString text = typed.simplified().toLower();
  if (text.isEmpty()) return {};
  double factor = mm_per(unit);
  struct Ending {
    QString text;
    double mm;
  };
  for (const Ending& ending :
       {Ending{QStringLiteral("mm"), 1}, Ending{QStringLiteral("cm"), mm_per_cm},
        Ending{QStringLiteral("in"), mm_per_inch}, Ending{QStringLiteral("\""), mm_per_inch},
        Ending{Lengths::tr("in").toLower(), mm_per_inch},
        Ending{Lengths::tr("inches").toLower(), mm_per_inch}})
    if (text.endsWith(ending.text)) {
      text.chop(ending.text.size());
      text = text.trimmed();
      factor = ending.mm;
      break;
    }
  const std::optional<double> read = number(text);
  if (!read || !std::isfinite(*read))
    return {{},
            Lengths::tr("\u201c%1\u201d must be a number such as %2; this is not one.")
                .arg(name, length_text(std::round((allowed.low + allowed.high) / 2), unit))};
  // A thousandth of a mm forgives what turning inches into mm rounds off.
  const double mm = std::round(*read * factor * 1000) / 1000;
  if (allowed.holds(mm)) return {mm, {}};
  const QString must =
      Lengths::tr("\u201c%1\u201d must be from %2 to %3 %4.")
          .arg(name, length_text(allowed.low, unit), length_text(allowed.high, unit), unit_name(unit));
  // The point was left out, or millimetres were read where centimetres are meant: asked back, not guessed.
  // What is a little too large is not such.
  constexpr double far_over = 5;
  if (mm > far_over * allowed.high && allowed.holds(mm / 10))
    return {{}, must + QLatin1Char(' ') + Lengths::tr("Is it %1?").arg(length_text(mm / 10, unit))};
  return {{}, must};
}

AngleReading read_angle(const QString& typed, const geometry::Range& allowed, const QString& name) {
  QString text = typed.simplified().toLower();
  for (const QString& ending : {QStringLiteral("\u00b0"), QStringLiteral("degrees"), QStringLiteral("deg")})
    if (text.endsWith(ending)) {
      text.chop(ending.size());
      text = text.trimmed();
      break;
    }
  if (text.isEmpty()) return {};
  bool whole = false;
  const int degrees = text.toInt(&whole);
  if (!whole)
    return {{}, Lengths::tr("\u201c%1\u201d must be a whole number of degrees, such as 45.").arg(name)};
  if (!allowed.holds(degrees))
    return {{},
            Lengths::tr("\u201c%1\u201d must be from %2 to %3 degrees.")
                .arg(name)
                .arg(allowed.low)
                .arg(allowed.high)};
  return {static_cast<double>(degrees), {}};
}

}  // namespace scalpmark::window
