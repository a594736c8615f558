#include "viewer/window/fields/small_length_field.h"

#include <algorithm>

#include "geometry/base/message.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

constexpr double finest_inch_step_mm = 0.254;  // a hundredth, which is what is shown

QString shown_length(double mm, LengthUnit unit) {
  if (unit == LengthUnit::inch) return length_text(mm, unit);
  return QString::fromStdString(geometry::to_text(geometry::Number{mm, 1, true}, viewer::decimal_mark()));
}

/// An end of what is allowed: "15", where a value is "15.0".
QString bound(double mm, LengthUnit unit) {
  if (unit == LengthUnit::inch) return length_text(mm, unit);
  return QString::fromStdString(geometry::to_text(geometry::number(mm), viewer::decimal_mark()));
}

}  // namespace

SmallLengthField::SmallLengthField(const QString& name, const geometry::Range& allowed_mm, double step_mm,
                                   QWidget* parent)
    : NumberField(name, allowed_mm, parent), step_mm_(step_mm) {
  set_unit(LengthUnit::centimetre);
}

void SmallLengthField::set_unit(LengthUnit unit) {
  shown_in_ = unit;
  const QString name = unit == LengthUnit::inch ? unit_name(unit) : tr("mm");
  describe(name, tr("From %1 to %2 %3.").arg(bound(allowed_.low, unit), bound(allowed_.high, unit), name));
  show_value();
  set_problem({});
}

NumberField::Reading SmallLengthField::read(const QString& typed) const {
  QString text = typed.simplified();
  if (shown_in_ == LengthUnit::inch || text.isEmpty()) {
    const LengthReading reading = read_length(text, shown_in_, allowed_, name_);
    return {reading.mm, reading.problem};
  }
  bool is_plain = false;
  text.replace(QLatin1Char(','), QLatin1Char('.'));
  const double mm = text.toDouble(&is_plain);
  // With a unit of its own it is read as anywhere else.
  if (!is_plain) {
    const LengthReading reading = read_length(text, LengthUnit::centimetre, allowed_, name_);
    if (reading.problem.isEmpty()) return {reading.mm, {}};
  } else if (allowed_.holds(mm)) {
    return {mm, {}};
  }
  return {{},
          tr("%1: type a length from %2 to %3 mm, such as %4; \u201c%5\u201d cannot be used.")
              .arg(name_, bound(allowed_.low, shown_in_), bound(allowed_.high, shown_in_),
                   shown_length(allowed_.low + 2 * step_mm_, shown_in_), typed.simplified())};
}

QString SmallLengthField::text_of(double value) const {
  return shown_length(value, shown_in_);
}

double SmallLengthField::step() const {
  return shown_in_ == LengthUnit::inch ? std::max(finest_inch_step_mm, step_mm_) : step_mm_;
}

}  // namespace scalpmark::window
