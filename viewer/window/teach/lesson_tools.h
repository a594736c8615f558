#pragma once

#include <QComboBox>
#include <QPushButton>
#include <QWidget>

namespace scalpmark::window {

/// What a trainer sets while the lesson runs: whether it says why, which side it is about, how fast it plays.
class LessonTools : public QWidget {
  Q_OBJECT
public:
  explicit LessonTools(QWidget* parent = nullptr);

  [[nodiscard]] QPushButton* why() const { return why_; }
  [[nodiscard]] QPushButton* other_side() const { return other_side_; }
  [[nodiscard]] QComboBox* speed() const { return speed_; }
  /// `left`: the side it is about now.
  void show_side(bool left);

signals:
  void why_switched(bool on);
  void side_wanted();
  /// Times the time a step is shown: below 1 is faster.
  void tempo_chosen(double factor);

private:
  QPushButton *why_, *other_side_;
  QComboBox* speed_;
};

}  // namespace scalpmark::window
