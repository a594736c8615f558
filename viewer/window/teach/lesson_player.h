#pragma once

#include <QObject>
#include <QTimer>
#include <vector>

namespace scalpmark::window {

/// Which step of a lesson is shown, and the clock that turns the pages. Never blocks: it only answers its
/// timer.
class LessonPlayer : public QObject {
  Q_OBJECT
public:
  explicit LessonPlayer(QObject* parent = nullptr);

  /// How long each step is shown while playing, ms. Stays on the step it is on, as far as there are so many.
  void set_dwell_ms(std::vector<int> dwell_ms);
  /// Times the dwell: below 1 is faster.
  void set_tempo(double factor) { tempo_ = factor; }

  [[nodiscard]] int count() const { return static_cast<int>(dwell_ms_.size()); }
  [[nodiscard]] int current() const { return current_; }
  [[nodiscard]] bool at_end() const { return current_ + 1 >= count(); }
  /// Whether play() would begin with the first step.
  [[nodiscard]] bool starts_anew() const { return at_end() && left_ms_ == 0 && !is_playing(); }
  [[nodiscard]] bool is_playing() const { return timer_.isActive(); }

  /// Playing goes on from there. Steps that are not there are left out of account.
  void go_to(int step);
  void next() { go_to(current_ + 1); }
  void previous() { go_to(current_ - 1); }
  /// From the step it is on, or from the first one when it is on the last.
  void play();
  /// Holds the step; play() goes on with what is left of its time.
  void pause();
  void toggle() { is_playing() ? pause() : play(); }

signals:
  void step_changed();
  void playing_changed();

private:
  void begin_dwell();
  void turn_page();

  std::vector<int> dwell_ms_;
  int current_ = 0;
  double tempo_ = 1;
  QTimer timer_;
  int left_ms_ = 0;  ///< of the step's time, while paused; 0: all of it
};

}  // namespace scalpmark::window
