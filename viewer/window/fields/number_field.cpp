#include "viewer/window/fields/number_field.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <algorithm>
#include <cmath>

#include "geometry/base/message.h"
#include "viewer/window/fields/text_entry.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

constexpr double cm_step_mm = 1;       // as on a tape: one small line
constexpr double inch_step_mm = 2.54;  // a tenth

}  // namespace

NumberField::NumberField(const QString& name, const geometry::Range& allowed, QWidget* parent)
    : QWidget(parent), name_(name), allowed_(allowed) {
  label_ = new QLabel(name);
  label_->setWordWrap(true);
  edit_ = new TextEntry;
  edit_->setFixedWidth(entry_width_px);
  edit_->setAlignment(Qt::AlignRight);
  edit_->setMaxLength(24);
  label_->setBuddy(edit_);
  unit_ = new QLabel;
  unit_->setObjectName("quiet");
  problem_ = new QLabel;
  problem_->setObjectName("problem");
  problem_->setWordWrap(true);
  problem_->hide();
  setFocusProxy(edit_);

  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(2);
  grid->addWidget(label_, 0, 0);
  grid->addWidget(edit_, 0, 1);
  grid->addWidget(unit_, 0, 2);
  grid->addWidget(problem_, 1, 0, 1, 3);
  grid->setColumnStretch(0, 1);
  grid->setColumnMinimumWidth(2, 22);

  edit_->installEventFilter(this);
  connect(edit_, &QLineEdit::editingFinished, this, &NumberField::take);
  // While typing, a sentence that no longer holds goes away; a new one waits until the entry is finished.
  connect(edit_, &QLineEdit::textEdited, this, [this](const QString& typed) {
    if (!problem().isEmpty() && read(typed).problem.isEmpty()) set_problem({});
  });
}

void NumberField::set_optional(const QString& placeholder) {
  optional_ = true;
  edit_->setPlaceholderText(placeholder);
}

void NumberField::describe(const QString& unit, const QString& range) {
  unit_->setText(unit);
  edit_->setToolTip(range);
  edit_->setAccessibleName(tr("%1, in %2").arg(name_, unit));
  edit_->setAccessibleDescription(range);
}

void NumberField::set_value(std::optional<double> value) {
  const bool same = value == value_;
  value_ = value;
  if (same && edit_->isModified()) return;
  show_value();
  set_problem({});
}

// A text that is there already stays as it is, with what of it is selected: whoever came with Tab types over
// it.
void NumberField::show_value() {
  const QString text = value_ ? text_of(*value_) : QString();
  if (edit_->text() != text) edit_->setText(text);
  edit_->setModified(false);
}

void NumberField::set_problem(const QString& sentence) {
  problem_->setText(sentence);
  problem_->setVisible(!sentence.isEmpty());
  edit_->setProperty("bad", !sentence.isEmpty());
  // The sentence is read out together with the field.
  edit_->setAccessibleDescription(sentence.isEmpty() ? edit_->toolTip() : sentence);
  edit_->setStyleSheet(edit_->styleSheet());  // looks at the property anew
}

void NumberField::take() {
  if (!edit_->isModified()) return;
  const Reading reading = read(edit_->text());
  if (!reading.problem.isEmpty()) {
    set_problem(reading.problem);
    return;
  }
  if (!reading.value && !optional_) {  // emptied: as it was
    show_value();
    set_problem({});
    return;
  }
  edit_->setModified(false);
  if (reading.value && value_ && text_of(*reading.value) == text_of(*value_)) {
    show_value();
    set_problem({});
    return;
  }
  const QString refusal = commit_ ? commit_(reading.value) : QString();
  if (refusal.isEmpty()) {
    if (reading.value) edit_->setText(text_of(*reading.value));
    set_problem({});
  } else {
    edit_->setModified(true);
    set_problem(refusal);
  }
}

void NumberField::step_by(double by) {
  const Reading reading = read(edit_->text());
  if (!reading.value) return;
  const double to =
      std::clamp(std::round((*reading.value + by) / step()) * step(), allowed_.low, allowed_.high);
  edit_->setText(text_of(to));
  edit_->setModified(true);
  take();
}

bool NumberField::eventFilter(QObject* watched, QEvent* event) {
  if (watched == edit_ && event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    switch (key->key()) {
      case Qt::Key_Escape:
        if (!edit_->isModified() && problem().isEmpty()) break;
        show_value();
        set_problem({});
        return true;
      case Qt::Key_Up:
        step_by(step());
        return true;
      case Qt::Key_Down:
        step_by(-step());
        return true;
      default:
        break;
    }
  }
  return QWidget::eventFilter(watched, event);
}

LengthField::LengthField(const QString& name, const geometry::Range& allowed_mm, QWidget* parent)
    : NumberField(name, allowed_mm, parent) {
  set_unit(LengthUnit::centimetre);
}

void LengthField::set_unit(LengthUnit unit) {
  shown_in_ = unit;
  describe(unit_name(unit),
           tr("From %1 to %2 %3.")
               .arg(length_text(allowed_.low, unit), length_text(allowed_.high, unit), unit_name(unit)));
  show_value();
  set_problem({});
}

NumberField::Reading LengthField::read(const QString& typed) const {
  const LengthReading reading = read_length(typed, shown_in_, allowed_, name_);
  return {reading.mm, reading.problem};
}

QString LengthField::text_of(double value) const {
  return length_text(value, shown_in_);
}

double LengthField::step() const {
  return shown_in_ == LengthUnit::centimetre ? cm_step_mm : inch_step_mm;
}

AngleField::AngleField(const QString& name, const geometry::Range& allowed_deg, QWidget* parent)
    : NumberField(name, allowed_deg, parent) {
  describe(QStringLiteral("\u00b0"), tr("From %1 to %2 whole degrees.").arg(allowed_.low).arg(allowed_.high));
}

NumberField::Reading AngleField::read(const QString& typed) const {
  const AngleReading reading = read_angle(typed, allowed_, name_);
  return {reading.degrees, reading.problem};
}

QString AngleField::text_of(double value) const {
  return QString::number(std::lround(value));
}

namespace {

/// "0", "7.5": no more decimals than it has, with the language's mark.
QString range_end(double value) {
  return QString::number(value).replace(QLatin1Char('.'), QString::fromStdString(viewer::decimal_mark()));
}

}  // namespace

PlainField::PlainField(const QString& name, const geometry::Range& allowed, const QString& unit, double step,
                       QWidget* parent)
    : NumberField(name, allowed, parent), unit_name_(unit), step_(step) {
  describe(unit, tr("From %1 to %2 %3.").arg(range_end(allowed.low), range_end(allowed.high), unit));
}

NumberField::Reading PlainField::read(const QString& typed) const {
  QString text = typed.simplified();
  if (text.isEmpty()) return {};
  if (text.endsWith(unit_name_, Qt::CaseInsensitive)) text.chop(unit_name_.size());
  bool is_number = false;
  const double value = text.replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&is_number);
  if (is_number && allowed_.holds(value)) return {value, {}};
  return {{},
          tr("%1: type a number from %2 to %3 %4, such as %5; \u201c%6\u201d cannot be used.")
              .arg(name_, range_end(allowed_.low), range_end(allowed_.high), unit_name_,
                   text_of(allowed_.low + 2 * step_), typed.simplified())};
}

QString PlainField::text_of(double value) const {
  // Whole percent, as a stimulator shows them.
  const int decimals = step_ == 1 && unit_name_ == tr("%") && value == std::floor(value) ? 0 : 1;
  return QString::fromStdString(
      geometry::to_text(geometry::Number{value, decimals, true}, viewer::decimal_mark()));
}

}  // namespace scalpmark::window
