// What keys do with the tool in the hand.
#include "viewer/window/practise/practise_hand.h"

namespace scalpmark::window {

using Eigen::Vector3d;

bool PractiseHand::take_by_key(int key) {
  switch (key) {
    case Qt::Key_F:
      take(Tool::finger);
      return true;
    case Qt::Key_T:
      take(Tool::tape);
      return true;
    case Qt::Key_P:
      take(Tool::point);
      return true;
    case Qt::Key_L:
      take(Tool::line);
      return true;
    case Qt::Key_X:
      take(Tool::cross);
      return true;
    case Qt::Key_C:
      take(Tool::coil);
      return true;
    case Qt::Key_Escape:
      if (tool_ == Tool::none) return false;
      take(Tool::none);
      return true;
    default:
      return false;
  }
}

bool PractiseHand::key(const QKeyEvent& event) {
  const Qt::KeyboardModifiers with = event.modifiers() & ~Qt::KeypadModifier;
  if (with == Qt::NoModifier && take_by_key(event.key())) return true;
  switch (event.key()) {
    case Qt::Key_Left:
      return arrow(-1, 0, with);
    case Qt::Key_Right:
      return arrow(1, 0, with);
    case Qt::Key_Up:
      return arrow(0, 1, with);
    case Qt::Key_Down:
      return arrow(0, -1, with);
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (tool_ == Tool::none) return false;
      set_down_by_key();
      return true;
    case Qt::Key_H:
      run_.hold_tape();
      return true;
    case Qt::Key_O:
      pulling_by_keys_ = false;
      run_.close_tape();
      return true;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
      let_go();
      tool_ == Tool::coil ? run_.take_coil_off() : run_.lift_tape();
      return true;
    default:
      return false;
  }
}

bool PractiseHand::arrow(double right, double up, Qt::KeyboardModifiers with) {
  if (with & Qt::AltModifier || tool_ == Tool::none) return false;
  const double times = with & Qt::ShiftModifier ? with_shift : 1;
  if (with & Qt::ControlModifier) {
    move_hand(right * times, up * times);
    return true;
  }
  if (tool_ != Tool::coil || right == 0 || !run_.coil()) return false;
  run_.turn_coil(right * times);
  run_.put_coil_down();
  return true;
}

/// Behind the head, where another side of it was looked at since, nobody would see what the hand does.
bool PractiseHand::hand_in_sight() const {
  constexpr double same_skin_mm = 10;
  if (!by_keys_) return false;
  const auto seen = skin_at(stage_.stage().sight().project(*by_keys_));
  return seen && (*seen - *by_keys_).norm() < same_skin_mm;
}

void PractiseHand::move_hand(double right_mm, double up_mm) {
  const viewer::Sight& sight = stage_.stage().sight();
  const auto moved_by = [&](const Vector3d& from) {
    return stage_.stage().skin_at(sight.project(from + right_mm * sight.right() + up_mm * sight.up));
  };
  if (tool_ == Tool::coil) {
    if (!run_.coil()) return;
    if (const auto to = moved_by(run_.coil()->placement.pulse)) {
      run_.lay_coil(*to);
      run_.put_coil_down();
    }
    return;
  }
  const bool fresh = !hand_in_sight();
  if (fresh) by_keys_ = skin_at({sight.width_px / 2.0, sight.height_px / 2.0});
  if (!by_keys_) return;
  if (!fresh)
    if (const auto to = moved_by(*by_keys_)) by_keys_ = run_.head().skin().position(*to);
  if (pulling_by_keys_) run_.pull_tape_to(*by_keys_);
  if (tool_ == Tool::finger && run_.finger()) run_.press_finger(by_keys_);
  emit moved();
}

void PractiseHand::set_down_by_key() {
  const viewer::Sight& sight = stage_.stage().sight();
  if (tool_ == Tool::coil) {
    run_.take_coil();
    run_.put_coil_down();
    return;
  }
  if (!hand_in_sight()) by_keys_ = skin_at({sight.width_px / 2.0, sight.height_px / 2.0});
  if (!by_keys_) return;
  if (tool_ == Tool::finger) {
    run_.press_finger(run_.finger() ? std::nullopt : by_keys_);
  } else if (tool_ == Tool::tape) {
    pulling_by_keys_ = !pulling_by_keys_;
    if (pulling_by_keys_) {
      const auto& tape = run_.tape();
      constexpr double same_place_mm = 4;
      if (tape && !tape->closed && (tape->held_at.back() - *by_keys_).norm() < same_place_mm)
        run_.begin_deed();  // its end is taken up again
      else
        run_.start_tape(*by_keys_);
    } else {
      run_.end_deed();
      if (run_.tape() && near_start(run_.tape()->held_at.back())) run_.close_tape();
    }
  } else {
    draw(*by_keys_, *by_keys_);
  }
  emit moved();
}

}  // namespace scalpmark::window
