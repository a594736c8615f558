#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <functional>
#include <optional>

#include "viewer/window/fields/length_text.h"

namespace scalpmark::window {

/// One line to type a number into, with its name, its unit, its range in the tooltip, and room for a sentence
/// underneath when the entry cannot be used. Enter or leaving the field hands the entry over; Escape takes it
/// back; up and down step it. An entry that is refused stays in the field for correction and changes nothing.
class NumberField : public QWidget {
  Q_OBJECT
public:
  static constexpr int entry_width_px = 76;  ///< with letters of the usual size

  /// Hands a number (empty: the field was cleared) to the case; returns the sentence of a refusal.
  using Commit = std::function<QString(std::optional<double>)>;

  void on_commit(Commit commit) { commit_ = std::move(commit); }
  /// What the case says. Leaves an entry that is being typed alone.
  void set_value(std::optional<double> value);
  [[nodiscard]] std::optional<double> value() const { return value_; }
  void set_problem(const QString& sentence);
  [[nodiscard]] QString problem() const { return problem_->text(); }
  [[nodiscard]] QLineEdit* edit() const { return edit_; }
  /// Whether the field may be left empty, and what it then says in grey.
  void set_optional(const QString& placeholder);

protected:
  NumberField(const QString& name, const geometry::Range& allowed, QWidget* parent);

  struct Reading {
    std::optional<double> value;
    QString problem;
  };
  [[nodiscard]] virtual Reading read(const QString& typed) const = 0;
  [[nodiscard]] virtual QString text_of(double value) const = 0;
  [[nodiscard]] virtual double step() const = 0;
  void show_value();
  void describe(const QString& unit, const QString& range);
  bool eventFilter(QObject* watched, QEvent* event) override;

  QString name_;
  geometry::Range allowed_;

private:
  void take();
  void step_by(double by);

  QLabel *label_, *unit_, *problem_;
  QLineEdit* edit_;
  std::optional<double> value_;
  bool optional_ = false;
  Commit commit_;
};

/// A length, typed in centimetres (or inches on request), handed over in mm.
class LengthField : public NumberField {
  Q_OBJECT
public:
  LengthField(const QString& name, const geometry::Range& allowed_mm, QWidget* parent = nullptr);
  void set_unit(LengthUnit unit);

private:
  [[nodiscard]] Reading read(const QString& typed) const override;
  [[nodiscard]] QString text_of(double value) const override;
  [[nodiscard]] double step() const override;
  LengthUnit shown_in_ = LengthUnit::centimetre;
};

/// An angle in whole degrees.
class AngleField : public NumberField {
  Q_OBJECT
public:
  AngleField(const QString& name, const geometry::Range& allowed_deg, QWidget* parent = nullptr);

private:
  [[nodiscard]] Reading read(const QString& typed) const override;
  [[nodiscard]] QString text_of(double value) const override;
  [[nodiscard]] double step() const override { return 1; }
};

/// A number with one decimal in a unit that does not change: millimetres, degrees, how many of 100.
class PlainField : public NumberField {
  Q_OBJECT
public:
  PlainField(const QString& name, const geometry::Range& allowed, const QString& unit, double step,
             QWidget* parent = nullptr);

private:
  [[nodiscard]] Reading read(const QString& typed) const override;
  [[nodiscard]] QString text_of(double value) const override;
  [[nodiscard]] double step() const override { return step_; }
  QString unit_name_;
  double step_;
};

}  // namespace scalpmark::window
