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
  /// The whole line, also where there is no room for all of it.
  [[nodiscard]] QString text() const { return line_; }
  /// What of it is to be seen.
  [[nodiscard]] QString seen() const { return status_->text(); }
  [[nodiscard]] QPushButton* back() const { return back_; }

signals:
  void back_wanted();

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  /// Parts of the line that do not fit are left out whole: half a number would be another number.
  void fit();

  QString line_;
  QLabel *status_, *in_hand_;
  QPushButton* back_;
};

}  // namespace scalpmark::window
