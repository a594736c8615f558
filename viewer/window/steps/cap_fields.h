#pragma once

#include <QLabel>
#include <QPushButton>
#include <array>

#include "viewer/window/fields/number_field.h"
#include "viewer/window/session/visit.h"

namespace scalpmark::window {

/// Part of the check step: where the brim and the arrow of today's cap are, and what to do with the cap.
class CapFields : public QWidget {
  Q_OBJECT
public:
  explicit CapFields(Visit& visit, QWidget* parent = nullptr);

  void show_case();
  void set_unit(LengthUnit unit);
  [[nodiscard]] QPushButton* by_brim() const { return by_brim_; }
  /// Over nasion, left tragus, right tragus, inion; the arrow.
  [[nodiscard]] LengthField* field(std::size_t which) const { return fields_[which]; }
  /// What to do, and what the readings leave open; empty without a slip.
  [[nodiscard]] QString said() const { return said_->text(); }

private:
  Visit& visit_;
  LengthUnit unit_ = LengthUnit::centimetre;
  QPushButton* by_brim_;
  QWidget* rows_;
  std::array<LengthField*, 5> fields_{};
  QLabel* said_;
};

}  // namespace scalpmark::window
