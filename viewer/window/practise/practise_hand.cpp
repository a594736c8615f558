#include "viewer/window/practise/practise_hand.h"

#include <QPolygonF>
#include <QWheelEvent>
#include <cmath>
#include <utility>

namespace scalpmark::window {

using Eigen::Vector3d;
using viewer::Pixel;
using PencilKind = ExerciseRun::PencilKind;

namespace {

constexpr double grip_px = 16;        // of a press from the tape's end
constexpr double line_begins_mm = 3;  // a pencil that has gone so far draws in that direction
constexpr double closes_mm = 12;      // a tape's end this near to its zero closes it round the head
constexpr double wheel_notch_eighths = 120;

QPointF point_in_picture(const Pixel& at) {
  return {at.x, at.y};
}

bool is_pencil(Tool tool) {
  return tool == Tool::point || tool == Tool::line || tool == Tool::cross;
}

PencilKind kind_of(Tool tool) {
  return tool == Tool::point ? PencilKind::point : tool == Tool::line ? PencilKind::line : PencilKind::cross;
}

}  // namespace

PractiseHand::PractiseHand(StageView& stage, ExerciseRun& run) : stage_(stage), run_(run) {
  stage_.installEventFilter(this);
}

void PractiseHand::set_listening(bool listening) {
  listening_ = listening;
  let_go();
  if (!listening) stage_.unsetCursor();
}

void PractiseHand::let_go() {
  grip_ = Grip::none;
  pulling_by_keys_ = false;
  run_.end_deed();
}

void PractiseHand::take(Tool tool) {
  let_go();
  if (tool == Tool::coil) run_.take_coil();
  if (tool != Tool::finger) run_.press_finger({});
  const bool other = std::exchange(tool_, tool) != tool;
  if (other) emit tool_changed(tool);
}

// --- where things are in the picture

std::optional<Vector3d> PractiseHand::skin_at(const Pixel& at) const {
  const auto point = stage_.stage().skin_at(at);
  if (!point) return {};
  return run_.head().skin().position(*point);
}

std::string PractiseHand::coil_part_at(const QPointF& at) const {
  const auto& here = run_.coil();
  if (!here) return {};
  const viewer::Sight& sight = stage_.stage().sight();
  const geometry::Placement& placement = here->placement;
  if (placement.normal.dot(sight.way_to_eye(placement.pulse)) < -0.2) return {};  // behind the head
  const Vector3d origin = placement.pulse + placement.lift_mm * placement.normal;
  const Vector3d right = placement.front.cross(placement.normal);
  std::string found;
  for (const auto& part : run_.answers().the_case.coil.model.parts) {
    QPolygonF outline;
    for (const auto& flat : part.outline) {
      const Vector3d p = geometry::bent({flat.x(), flat.y(), part.top_mm}, part.bend_deg);
      outline << point_in_picture(
          sight.project(origin + p.x() * right + p.y() * placement.front + p.z() * placement.normal));
    }
    if (!outline.containsPoint(point_in_picture(stage_.pixel_of(at)), Qt::OddEvenFill)) continue;
    if (found.empty() || part.name == "handle") found = part.name;
  }
  return found;
}

bool PractiseHand::is_near(const Vector3d& place, const QPointF& at) const {
  const QPointF away = stage_.position_of(place) - at;
  return std::hypot(away.x(), away.y()) < grip_px;
}

Vector3d PractiseHand::across_picture() const {
  return stage_.stage().sight().right();
}

// --- mouse

bool PractiseHand::grip_coil(const QPointF& at) {
  const std::string part = coil_part_at(at);
  if (part.empty()) return false;
  run_.begin_deed();
  grip_ = part == "handle" ? Grip::carrying : Grip::turning;
  coil_from_hand_px_ = point_in_picture(stage_.stage().project(run_.coil()->placement.pulse)) -
                       point_in_picture(stage_.pixel_of(at));
  stage_.setCursor(Qt::ClosedHandCursor);
  return true;
}

bool PractiseHand::grip_skin(const QPointF& at) {
  if (!coil_part_at(at).empty()) return false;  // the coil is in the way
  const auto& tape = run_.tape();
  if (tool_ == Tool::tape && tape && !tape->closed && is_near(tape->held_at.back(), at)) {
    run_.begin_deed();
    grip_ = Grip::pulling;
    return true;
  }
  const auto place = skin_at(stage_.pixel_of(at));
  if (!place) return false;
  pressed_on_ = drawn_to_ = *place;
  if (tool_ == Tool::finger) {
    run_.press_finger(place);
    grip_ = Grip::feeling;
  } else if (tool_ == Tool::tape) {
    run_.start_tape(*place);
    grip_ = Grip::pulling;
  } else {
    grip_ = Grip::drawing;
  }
  return true;
}

bool PractiseHand::press(const QMouseEvent& event) {
  const QPointF at = event.localPos();
  last_at_ = at;
  if (grip_ == Grip::pulling && event.button() == Qt::RightButton) {
    run_.hold_tape();
    return true;
  }
  if (event.button() != Qt::LeftButton || event.modifiers() & (Qt::AltModifier | Qt::ShiftModifier) ||
      tool_ == Tool::none)
    return false;
  pulling_by_keys_ = false;
  if (std::exchange(by_keys_, std::nullopt)) emit moved();
  return tool_ == Tool::coil ? grip_coil(at) : grip_skin(at);
}

void PractiseHand::pull_to(const QPointF& at) {
  if (const auto place = skin_at(stage_.pixel_of(at))) run_.pull_tape_to(*place);
}

bool PractiseHand::move(const QMouseEvent& event) {
  const QPointF at = event.localPos();
  switch (grip_) {
    case Grip::none:
      if (event.buttons() != Qt::NoButton) return false;
      show_cursor(at);
      return true;
    case Grip::feeling:
      run_.press_finger(skin_at(stage_.pixel_of(at)));
      break;
    case Grip::pulling:
      pull_to(at);
      break;
    case Grip::drawing:
      if (const auto place = skin_at(stage_.pixel_of(at))) drawn_to_ = *place;
      break;
    case Grip::carrying: {
      const Pixel hand = stage_.pixel_of(at);
      if (const auto point =
              stage_.stage().skin_at({hand.x + coil_from_hand_px_.x(), hand.y + coil_from_hand_px_.y()}))
        run_.lay_coil(*point);
      break;
    }
    case Grip::turning: {
      const QPointF pulse = stage_.position_of(run_.coil()->placement.pulse);
      const QPointF before = last_at_ - pulse, now = at - pulse;
      // Clockwise in the picture, whose y goes down; on the left side that is toward the midline.
      const double turned = std::atan2(before.x() * now.y() - before.y() * now.x(),
                                       before.x() * now.x() + before.y() * now.y());
      const bool left = run_.answers().the_case.side == geometry::Side::left;
      run_.turn_coil((left ? 1 : -1) * geometry::degrees(turned));
      break;
    }
  }
  last_at_ = at;
  return true;
}

bool PractiseHand::near_start(const Vector3d& end) const {
  const auto& tape = run_.tape();
  return tape && tape->held_at.size() > 3 && (end - tape->held_at.front()).norm() < closes_mm;
}

bool PractiseHand::release(const QMouseEvent& event) {
  if (event.button() == Qt::RightButton && grip_ == Grip::pulling) return true;
  if (event.button() != Qt::LeftButton) return grip_ != Grip::none;
  const Grip grip = std::exchange(grip_, Grip::none);
  switch (grip) {
    case Grip::none:
      return false;
    case Grip::feeling:
      run_.press_finger({});
      break;
    case Grip::pulling:
      run_.end_deed();
      if (run_.tape() && near_start(run_.tape()->held_at.back())) run_.close_tape();
      break;
    case Grip::drawing:
      draw(pressed_on_, drawn_to_);
      break;
    case Grip::carrying:
    case Grip::turning:
      run_.put_coil_down();
      break;
  }
  show_cursor(event.localPos());
  return true;
}

void PractiseHand::draw(const Vector3d& from, const Vector3d& to) {
  const Vector3d way = to - from;
  if (is_pencil(tool_)) run_.draw(kind_of(tool_), from, way.norm() > line_begins_mm ? way : across_picture());
}

bool PractiseHand::wheel(const QWheelEvent& event) {
  if (!(event.modifiers() & Qt::ControlModifier) || !run_.coil()) return false;
  const double notches = event.angleDelta().y() / wheel_notch_eighths;
  run_.turn_coil(notches * (event.modifiers() & Qt::ShiftModifier ? with_shift : 1));
  run_.put_coil_down();
  return true;
}

void PractiseHand::show_cursor(const QPointF& at) {
  const bool on_coil = tool_ == Tool::coil && !coil_part_at(at).empty();
  stage_.setCursor(on_coil                                       ? Qt::OpenHandCursor
                   : tool_ == Tool::none || tool_ == Tool::coil  ? Qt::ArrowCursor
                   : stage_.stage().skin_at(stage_.pixel_of(at)) ? Qt::CrossCursor
                                                                 : Qt::ArrowCursor);
}

// --- events

bool PractiseHand::eventFilter(QObject* watched, QEvent* event) {
  if (!listening_ || !run_.is_on() || watched != &stage_) return false;
  switch (event->type()) {
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonDblClick:
      if (!press(*static_cast<QMouseEvent*>(event))) return false;
      stage_.setFocus(Qt::MouseFocusReason);
      return true;
    case QEvent::MouseMove:
      return move(*static_cast<QMouseEvent*>(event));
    case QEvent::MouseButtonRelease:
      return release(*static_cast<QMouseEvent*>(event));
    case QEvent::Wheel:
      return wheel(*static_cast<QWheelEvent*>(event));
    case QEvent::KeyPress:
      return key(*static_cast<QKeyEvent*>(event));
    default:
      return false;
  }
}

}  // namespace scalpmark::window
