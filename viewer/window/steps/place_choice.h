#pragma once

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <vector>

#include "geometry/hands/find_by_tapes.h"

namespace scalpmark::window {

/// What the tapes to one mark say of its place, and a button for each place where several fit: A, B, ... as
/// on the stage, and one for the place nearest to the plan.
class PlaceChoice : public QWidget {
  Q_OBJECT
public:
  /// `mark`: its name, for those who hear the buttons.
  explicit PlaceChoice(const QString& mark, QWidget* parent = nullptr);

  /// `sentence`: what is known of the place and what to do; empty hides it all.
  void show_found(const geometry::FoundMark& found, const QString& sentence);
  [[nodiscard]] QPushButton* place(std::size_t index) const { return places_[index]; }
  [[nodiscard]] std::size_t count() const { return places_.size(); }
  [[nodiscard]] QPushButton* nearest() const { return nearest_; }
  [[nodiscard]] QString sentence() const { return sentence_->text(); }

signals:
  void picked(std::size_t index);
  void nearest_picked();

private:
  void make_buttons(std::size_t count);

  QString mark_;
  QLabel* sentence_;
  QHBoxLayout* row_;
  std::vector<QPushButton*> places_;
  QPushButton* nearest_;
};

}  // namespace scalpmark::window
