#include "viewer/window/teach/lesson_player.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace scalpmark::window {

LessonPlayer::LessonPlayer(QObject* parent) : QObject(parent) {
  timer_.setSingleShot(true);
  connect(&timer_, &QTimer::timeout, this, &LessonPlayer::turn_page);
}

void LessonPlayer::set_dwell_ms(std::vector<int> dwell_ms) {
  dwell_ms_ = std::move(dwell_ms);
  if (current_ >= count()) go_to(count() - 1);
}

void LessonPlayer::begin_dwell() {
  left_ms_ = 0;
  timer_.start(
      std::max(1, static_cast<int>(std::lround(tempo_ * dwell_ms_[static_cast<std::size_t>(current_)]))));
}

void LessonPlayer::go_to(int step) {
  if (step < 0 || step >= count()) return;
  const bool playing = is_playing();
  left_ms_ = 0;
  current_ = step;
  if (playing) begin_dwell();
  emit step_changed();
}

void LessonPlayer::play() {
  if (is_playing() || count() == 0) return;
  const bool anew = starts_anew();
  if (left_ms_ > 0)
    timer_.start(std::exchange(left_ms_, 0));
  else
    begin_dwell();
  emit playing_changed();
  if (anew) go_to(0);
}

void LessonPlayer::pause() {
  if (!is_playing()) return;
  left_ms_ = std::max(1, timer_.remainingTime());
  timer_.stop();
  emit playing_changed();
}

void LessonPlayer::turn_page() {
  if (at_end()) {
    emit playing_changed();
    return;
  }
  ++current_;
  begin_dwell();
  emit step_changed();
}

}  // namespace scalpmark::window
