#pragma once

#include <QLineEdit>
#include <QPushButton>

#include "viewer/window/session/session.h"
#include "viewer/window/steps/step.h"

namespace scalpmark::window {

/// Step 7: the case's label, and what can be kept of it.
class SaveStep : public Step {
  Q_OBJECT
public:
  explicit SaveStep(Session& session, QWidget* parent = nullptr);
  void show_case();
  [[nodiscard]] StageContent stage_content(const HeldCoil& coil) const override;
  [[nodiscard]] QLineEdit* label() const { return label_; }
  [[nodiscard]] QPushButton* save() const { return save_; }
  [[nodiscard]] QPushButton* lock() const { return lock_; }
  [[nodiscard]] QPushButton* numbers() const { return numbers_; }

signals:
  void save_wanted();
  /// The numbers that find the marks again, one at a time in large digits.
  void numbers_wanted();
  void picture_wanted();
  void sheet_wanted();
  void print_wanted();
  void page_wanted();
  void export_wanted();
  void strips_wanted();

private:
  Session& session_;
  QLineEdit* label_;
  QPushButton *save_, *lock_, *numbers_;
  QLabel* where_;
};

}  // namespace scalpmark::window
