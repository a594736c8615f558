#pragma once

#include "viewer/window/fields/number_field.h"

namespace scalpmark::window {

/// A small length, typed in millimetres (or inches on request) with or without its unit, handed over in mm.
class SmallLengthField : public NumberField {
  Q_OBJECT
public:
  /// `step_mm`: of the arrow keys.
  SmallLengthField(const QString& name, const geometry::Range& allowed_mm, double step_mm,
                   QWidget* parent = nullptr);
  void set_unit(LengthUnit unit);

private:
  [[nodiscard]] Reading read(const QString& typed) const override;
  [[nodiscard]] QString text_of(double value) const override;
  [[nodiscard]] double step() const override;
  LengthUnit shown_in_ = LengthUnit::centimetre;
  double step_mm_;
};

}  // namespace scalpmark::window
