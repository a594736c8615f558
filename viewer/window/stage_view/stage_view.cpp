#include "viewer/window/stage_view/stage_view.h"

#include <QGestureEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPainter>
#include <QPinchGesture>
#include <QWheelEvent>
#include <utility>

#include "viewer/stage/scene/palette.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

using viewer::Pixel;

namespace {

constexpr int focus_frame_px = 2;
/// A change this soon after the last is one of many (a key held, a wheel turned), and so long after the last
/// of them the picture is at rest.
constexpr int hurry_ms = 200;
/// Letters grow as far as a stage so wide leaves room for numbers and legend beside the head.
constexpr double room_px = 680;

}  // namespace

StageView::StageView(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAttribute(Qt::WA_OpaquePaintEvent);  // the picture covers all of it
  grabGesture(Qt::PinchGesture);
  setAccessibleName(tr("Stage"));
  setAccessibleDescription(
      tr("The head with tapes, marks and coil. Arrow keys turn the coil, with Ctrl they move it; 1 to 6 "
         "choose a view. While points are placed, Enter sets one in the middle of the picture and Ctrl with "
         "arrow keys moves it."));
  setMinimumSize(360, 220);

  subject_ = std::make_unique<StageSubject>(canvas_.window());
  camera_ = std::make_unique<StageCamera>(*subject_, *this);
  loupe_ = std::make_unique<LoupeGuide>(*subject_, canvas_.window());
  hand_ = std::make_unique<StageHand>(*subject_, *camera_, *loupe_, *this);
  connect_parts();
}

StageView::~StageView() = default;

void StageView::connect_parts() {
  connect(camera_.get(), &StageCamera::moved, this, [this] {
    redraw();
    if (!is_bare()) return;
    place_loupe();  // where the pointer or the point is seen now
    redraw();
  });
  connect(camera_.get(), &StageCamera::taken_in_hand, this, &StageView::one_change);
  connect(camera_.get(), &StageCamera::gliding_changed, this, &StageView::choose_quality);
  connect(hand_.get(), &StageHand::coil_moved, this, &StageView::coil_moved);
  connect(hand_.get(), &StageHand::coil_turned, this, &StageView::coil_turned);
  connect(hand_.get(), &StageHand::coil_nudged, this, &StageView::coil_nudged);
  connect(hand_.get(), &StageHand::coil_put_down, this, &StageView::coil_put_down);
  connect(hand_.get(), &StageHand::spot_clicked, this, &StageView::spot_clicked);
  connect(hand_.get(), &StageHand::skin_pointed, this, &StageView::skin_pointed);
  connect(hand_.get(), &StageHand::fiducial_dragged, this, &StageView::fiducial_dragged);
  connect(hand_.get(), &StageHand::drags, this, &StageView::choose_quality);
  connect(hand_.get(), &StageHand::let_go, this, &StageView::let_go);
  connect(hand_.get(), &StageHand::let_go, this, [this] {
    rests_.stop();
    choose_quality();
    redraw();
  });
  connect(hand_.get(), &StageHand::hovers, this, [this] {
    place_loupe();
    redraw();
  });
  rests_.setSingleShot(true);
  rests_.setInterval(hurry_ms);
  connect(&rests_, &QTimer::timeout, this, [this] {
    choose_quality();
    redraw();
  });
}

// --- what is shown

void StageView::show_plan(const geometry::Head& head, const geometry::Case& the_case,
                          const geometry::Plan& plan, const viewer::Shown& shown) {
  if (is_bare()) loupe_->leave();
  subject_->show_plan(head, the_case, plan, shown, type_scale() * devicePixelRatioF());
  one_change();
  redraw();
}

void StageView::show_bare(const UnplacedHead& head) {
  subject_->show_bare(head);
  place_loupe();
  redraw();
}

void StageView::look(const StageLook& from) {
  if (from.close_up)
    look_at(from.close_up->gaze, from.close_up->at, from.close_up->across_mm, from.glide_ms,
            from.close_up->eye_mm);
  else
    look(from.view, from.glide_ms);
}

void StageView::set_wanted_point(Fiducial which) {
  loupe_->set_wanted(which);
  if (!is_bare()) return;
  place_loupe();
  redraw();
}

void StageView::place_loupe() {
  loupe_->place(hand_->dragged_point(), hand_->is_free());
}

void StageView::choose_quality() {
  subject_->set_moving(camera_->is_gliding() || hand_->is_dragging() || rests_.isActive());
}

void StageView::one_change() {
  // Changes that come before the last was drawn are seen as one.
  if (!to_be_drawn_ && since_changed_.isValid() && since_changed_.elapsed() < hurry_ms) rests_.start();
  since_changed_.start();
  choose_quality();
}

void StageView::draw_once(const std::function<void()>& changes) {
  {
    struct Held {  // also where `changes` throws
      bool& held;
      bool before = std::exchange(held, true);
      ~Held() { held = before; }
    } const held{held_};
    changes();
  }
  if (!held_ && to_be_drawn_) redraw();
}

// Where things are in the picture is asked for right after a change; drawn it is once, when Qt paints next,
// however many changes there were.
void StageView::redraw() {
  to_be_drawn_ = true;
  if (held_) return;
  update();
  canvas_.set_size(size_px());
  subject_->refresh();
}

QSize StageView::size_px() const {
  return {qRound(width() * devicePixelRatioF()), qRound(height() * devicePixelRatioF())};
}

void StageView::draw_now() {
  to_be_drawn_ = false;
  canvas_.set_size(size_px());
  canvas_.draw();
}

Pixel StageView::pixel_of(const QPointF& at) const {
  const double ratio = devicePixelRatioF();
  return {at.x() * ratio, at.y() * ratio};
}

QPointF StageView::position_of(const Eigen::Vector3d& point) const {
  const Pixel at = subject_->sight().project(point);
  const double ratio = devicePixelRatioF();
  return {at.x / ratio, at.y / ratio};
}

// --- events

void StageView::mousePressEvent(QMouseEvent* event) {
  hand_->press(*event);
  event->accept();
}

void StageView::mouseMoveEvent(QMouseEvent* event) {
  hand_->move(*event);
}

void StageView::mouseReleaseEvent(QMouseEvent* event) {
  hand_->release(*event);
}

void StageView::mouseDoubleClickEvent(QMouseEvent* event) {
  mousePressEvent(event);
}

void StageView::leaveEvent(QEvent* event) {
  QWidget::leaveEvent(event);
  hand_->leave();
}

void StageView::wheelEvent(QWheelEvent* event) {
  hand_->wheel(*event);
  event->accept();
}

void StageView::keyPressEvent(QKeyEvent* event) {
  if (hand_->key(*event))
    event->accept();
  else
    QWidget::keyPressEvent(event);
}

bool StageView::event(QEvent* event) {
  if (event->type() == QEvent::Gesture) {
    if (const auto* pinch =
            static_cast<QPinchGesture*>(static_cast<QGestureEvent*>(event)->gesture(Qt::PinchGesture))) {
      camera_->zoom(pinch->scaleFactor(), pixel_of(mapFromGlobal(pinch->centerPoint().toPoint())));
      return true;
    }
  }
  if (event->type() == QEvent::NativeGesture) {
    const auto* gesture = static_cast<QNativeGestureEvent*>(event);
    if (gesture->gestureType() == Qt::ZoomNativeGesture) {
      camera_->zoom(1 + gesture->value(), pixel_of(gesture->localPos()));
      return true;
    }
  }
  return QWidget::event(event);
}

void StageView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  canvas_.set_size(size_px());
  subject_->stage().set_pixel_ratio(type_scale() * devicePixelRatioF());
  camera_->fit_again();
}

void StageView::set_covered(const QRect& part) {
  const double ratio = devicePixelRatioF();
  std::optional<viewer::Box> box;
  if (!part.isEmpty())
    box = viewer::Box{ratio * part.left(), ratio * part.top(), ratio * (part.right() + 1),
                      ratio * (part.bottom() + 1)};
  if (subject_->stage().set_covered(box)) redraw();
}

void StageView::set_type_scale(double factor, double chosen) {
  type_scale_ = factor;
  chosen_type_ = chosen;
}

double StageView::type_scale() const {
  return type_scale_ * std::min(chosen_type_, std::max(1.0, width() / room_px));
}

void StageView::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void StageView::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

void StageView::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  if (!canvas_.begin()) {
    painter.fillRect(rect(), palette().window());
    painter.drawText(
        rect(), Qt::AlignCenter | Qt::TextWordWrap,
        viewer::translated(geometry::Message::of(
            "The display has no OpenGL 3.2, which the stage is drawn with; install the Debian package "
            "libgl1-mesa-dri.")));
    return;
  }
  // Also for the first time, in another size, or on a screen of another density.
  if (to_be_drawn_ || canvas_.picture().size() != size_px()) draw_now();
  const double ratio = devicePixelRatioF();
  painter.save();
  painter.scale(1 / ratio, 1 / ratio);  // pixel for pixel
  painter.drawImage(0, 0, canvas_.picture());
  painter.restore();
  draw_over_picture(painter);
}

void StageView::draw_over_picture(QPainter& painter) const {
  if (loupe().is_shown()) draw_loupe_frame(painter);
  if (!hasFocus() || !focus_frame_) return;
  painter.setPen(QPen(palette().color(QPalette::Highlight), focus_frame_px));
  painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

void StageView::draw_loupe_frame(QPainter& painter) const {
  const QRectF share = loupe().place();
  const QRectF box(share.left() * width(), share.top() * height(), share.width() * width(),
                   share.height() * height());
  const auto colour = [](viewer::Colour c) { return QColor(c.red, c.green, c.blue); };
  painter.setPen(QPen(colour(viewer::palette::quiet_text), 2));
  painter.drawRect(box);
  // Ticks at its rim point at the middle, where the point itself stays in sight.
  constexpr double tick_share = 0.12;
  const QPointF middle = box.center();
  for (const auto& [pen_px, c] :
       {std::pair(4.0, viewer::palette::halo), std::pair(2.0, viewer::palette::text)}) {
    painter.setPen(QPen(colour(c), pen_px));
    for (const QPointF& way : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)})
      painter.drawLine(middle + box.width() / 2 * way, middle + (0.5 - tick_share) * box.width() * way);
  }
}

QImage StageView::picture() {
  rests_.stop();
  choose_quality();
  canvas_.begin();
  draw_now();
  QImage picture = canvas_.picture().copy();
  if (picture.isNull()) return picture;
  picture.setDevicePixelRatio(devicePixelRatioF());
  QPainter painter(&picture);
  draw_over_picture(painter);
  return picture;
}

}  // namespace scalpmark::window
