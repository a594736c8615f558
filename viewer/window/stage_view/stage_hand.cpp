#include "viewer/window/stage_view/stage_hand.h"

#include <QApplication>
#include <QPolygonF>
#include <cmath>
#include <limits>
#include <utility>

namespace scalpmark::window {

using Eigen::Vector3d;
using viewer::Pixel;

namespace {

constexpr double turn_deg_per_px = 0.4, turn_step_deg = 3;
constexpr double spot_reach_px = 16;   // of a click from a spot's mark
constexpr double point_reach_px = 14;  // of a grip from a placed point
constexpr double wheel_notch = 120;
constexpr double much = 5;  // times as much with Shift

QPointF point_of(const Pixel& at) {
  return {at.x, at.y};
}

}  // namespace

StageHand::StageHand(StageSubject& subject, StageCamera& camera, LoupeGuide& loupe, QWidget& over)
    : subject_(subject), camera_(camera), loupe_(loupe), over_(over) {}

Pixel StageHand::pixel_of(const QPointF& at) const {
  const double ratio = over_.devicePixelRatioF();
  return {at.x() * ratio, at.y() * ratio};
}

void StageHand::show_cursor() {
  over_.setCursor(pointing_ ? Qt::CrossCursor : Qt::ArrowCursor);
}

void StageHand::set_pointing(bool pointing) {
  pointing_ = pointing;
  show_cursor();
}

bool StageHand::can_move_coil() const {
  return !subject_.is_bare() && subject_.plan() && subject_.plan()->has_coil && coil_movable_;
}

bool StageHand::is_on_coil(const QPointF& at) const {
  if (!can_move_coil()) return false;
  const viewer::Sight& sight = subject_.sight();
  const geometry::Placement& placement = subject_.plan()->placement;
  // A coil behind the head is not taken hold of through it.
  if (placement.normal.dot(sight.toward_eye) < -0.2) return false;
  const Vector3d origin = placement.pulse + placement.lift_mm * placement.normal;
  const Vector3d x = placement.front.cross(placement.normal);
  for (const auto& part : subject_.plan()->the_case.coil.model.parts) {
    QPolygonF outline;
    for (const auto& p : part.outline)
      outline << point_of(
          sight.project(origin + p.x() * x + p.y() * placement.front + part.top_mm * placement.normal));
    if (outline.containsPoint(point_of(pixel_of(at)), Qt::OddEvenFill)) return true;
  }
  return false;
}

void StageHand::press(const QMouseEvent& event) {
  camera_.stop_gliding();
  pressed_at_ = last_at_ = event.localPos();
  dragged_ = false;
  if (event.button() != Qt::LeftButton || event.modifiers() & Qt::ShiftModifier) {
    hand_ = Hand::shifting;
    return;
  }
  if (subject_.is_bare()) {
    if (const auto point =
            subject_.bare().point_near(pixel_of(pressed_at_), point_reach_px * over_.devicePixelRatioF())) {
      dragged_point_ = *point;
      hand_ = Hand::moving_point;
      return;
    }
  }
  if (!pointing_ && is_on_coil(pressed_at_)) {
    hand_ = Hand::moving_coil;
    coil_from_hand_px_ = point_of(subject_.sight().project(subject_.plan()->placement.pulse)) -
                         point_of(pixel_of(pressed_at_));
    over_.setCursor(Qt::ClosedHandCursor);
    return;
  }
  hand_ = Hand::turning;
}

void StageHand::move(const QMouseEvent& event) {
  const QPointF at = event.localPos();
  if (subject_.is_bare()) loupe_.set_pointer(pixel_of(at));
  if (hand_ == Hand::none) {
    if (subject_.is_bare())
      emit hovers();
    else if (!pointing_)
      over_.setCursor(is_on_coil(at) ? Qt::OpenHandCursor : Qt::ArrowCursor);
    return;
  }
  if (!dragged_ && (at - pressed_at_).manhattanLength() < QApplication::startDragDistance() / 2.0) return;
  dragged_ = true;
  emit drags();
  drag(at, at - std::exchange(last_at_, at));
}

void StageHand::drag(const QPointF& to, const QPointF& by) {
  switch (hand_) {
    case Hand::turning:
      camera_.turn(-by.x() * turn_deg_per_px, by.y() * turn_deg_per_px);
      break;
    case Hand::shifting:
      camera_.shift(by * over_.devicePixelRatioF());
      break;
    case Hand::moving_coil: {
      const Pixel pulse{pixel_of(to).x + coil_from_hand_px_.x(), pixel_of(to).y + coil_from_hand_px_.y()};
      if (const auto point = subject_.stage().skin_at(pulse)) emit coil_moved(*point);
      break;
    }
    case Hand::moving_point:
      if (const auto point = subject_.bare().skin_at(pixel_of(to)))
        emit fiducial_dragged(dragged_point_, subject_.bare().position(*point));
      break;
    case Hand::none:
      break;
  }
}

void StageHand::release(const QMouseEvent& event) {
  const Hand hand = std::exchange(hand_, Hand::none);
  show_cursor();
  if (dragged_) {
    emit let_go();
    if (hand == Hand::moving_coil) emit coil_put_down();
  } else if (event.button() == Qt::LeftButton) {
    click(pixel_of(event.localPos()), hand);
  }
}

void StageHand::click(const Pixel& at, Hand hand) {
  if (subject_.is_bare()) {
    if (hand == Hand::moving_point) return;
    if (const auto point = subject_.bare().skin_at(at)) emit skin_pointed(subject_.bare().position(*point));
    return;
  }
  if (!subject_.plan()) return;
  if (pointing_) {
    if (const auto point = subject_.stage().skin_at(at))
      emit skin_pointed(subject_.plan()->head.skin().position(*point));
    return;
  }
  if (coil_movable_) click_node(at);
}

void StageHand::click_node(const Pixel& at) {
  const auto mark = subject_.stage().mark_near(at, spot_reach_px * over_.devicePixelRatioF());
  if (!mark || mark->thing != viewer::Thing::grid) return;
  const geometry::GridSpot* best = nullptr;
  double best_mm = std::numeric_limits<double>::infinity();
  for (const auto& spot : subject_.plan()->plan.grid) {
    const auto& edge_mark = spot.placement.edge_mark.by(subject_.plan()->the_case.coil.laid_by);
    for (const Vector3d& place : {spot.placement.pulse, edge_mark.value_or(spot.placement.pulse)})
      if (const double mm = (place - mark->at).norm(); mm < best_mm) {
        best_mm = mm;
        best = &spot;
      }
  }
  if (best) emit spot_clicked(best->row, best->column);
}

void StageHand::leave() {
  if (!loupe_.has_pointer()) return;
  loupe_.set_pointer({});
  emit hovers();
}

void StageHand::wheel(const QWheelEvent& event) {
  const double notches =
      (event.angleDelta().y() != 0 ? event.angleDelta().y() : event.angleDelta().x()) / wheel_notch;
  if (!(event.modifiers() & Qt::ControlModifier)) {
    camera_.zoom(std::pow(StageCamera::zoom_per_notch, notches), pixel_of(event.position()));
    return;
  }
  if (subject_.plan() && subject_.plan()->has_coil && coil_movable_)
    emit coil_turned(notches * (event.modifiers() & Qt::ShiftModifier ? much : 1));
}

void StageHand::move_wanted_point(double right_mm, double up_mm) {
  const BareSkin& bare = subject_.bare();
  const auto& now = bare.placed(loupe_.wanted());
  if (!now) return;
  const viewer::Sight& sight = subject_.sight();
  const Vector3d to = *now + right_mm * sight.right() + up_mm * sight.up;
  if (const auto point = bare.skin_at(sight.project(to)))
    emit fiducial_dragged(loupe_.wanted(), bare.position(*point));
}

void StageHand::arrow(double right, double up, Qt::KeyboardModifiers with) {
  const bool ctrl = with & Qt::ControlModifier;
  const double times = with & Qt::ShiftModifier ? much : 1;
  if (subject_.is_bare() && ctrl) {
    move_wanted_point(right * times, up * times);
  } else if (with & Qt::AltModifier || !can_move_coil()) {
    camera_.turn(-right * turn_step_deg * times, up * turn_step_deg * times);
  } else if (ctrl) {
    const bool left_side = subject_.plan()->the_case.side == geometry::Side::left;
    emit coil_nudged(up * times, (left_side ? -right : right) * times);
  } else if (right != 0) {
    emit coil_turned(right * times);
  } else {
    camera_.turn(0, up * turn_step_deg * times);
  }
}

bool StageHand::key(const QKeyEvent& event) {
  const Pixel middle = pixel_of(QPointF(over_.width() / 2.0, over_.height() / 2.0));
  switch (event.key()) {
    case Qt::Key_Left:
      arrow(-1, 0, event.modifiers());
      return true;
    case Qt::Key_Right:
      arrow(1, 0, event.modifiers());
      return true;
    case Qt::Key_Up:
      arrow(0, 1, event.modifiers());
      return true;
    case Qt::Key_Down:
      arrow(0, -1, event.modifiers());
      return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space: {
      // Only while points are placed; otherwise the key is the lesson's.
      if (!subject_.is_bare()) return false;
      const viewer::Sight& sight = subject_.sight();
      if (const auto point = subject_.bare().skin_at({sight.width_px / 2.0, sight.height_px / 2.0}))
        emit skin_pointed(subject_.bare().position(*point));
      return true;
    }
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      camera_.zoom(StageCamera::zoom_per_notch, middle);
      return true;
    case Qt::Key_Minus:
      camera_.zoom(1 / StageCamera::zoom_per_notch, middle);
      return true;
    default:
      return false;
  }
}

}  // namespace scalpmark::window
