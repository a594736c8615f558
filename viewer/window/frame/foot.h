#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>

namespace scalpmark::window {

/// The line under the stage that says where the coil is, and, while the coil is in the hand, that it is not
/// where the plan has it, with the way back.
class Foot : public QWidget {
  Q_OBJECT
public:
  explicit Foot(QWidget* parent = nullptr);

  void say(const QString& line);
  /// Whether the coil that is shown is in the hand, and whether it goes back to the start instead of the
  /// site.
  void show_hand(bool in_hand, bool to_start);
  [[nodiscard]] QString text() const { return status_->text(); }
  [[nodiscard]] QPushButton* back() const { return back_; }

signals:
  void back_wanted();

private:
  QLabel *status_, *in_hand_;
  QPushButton* back_;
};

}  // namespace scalpmark::window
