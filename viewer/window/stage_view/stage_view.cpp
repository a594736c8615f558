#include "viewer/window/stage_view/stage_view.h"

#include <vtkCamera.h>
#include <vtkCommand.h>
#include <vtkGenericOpenGLRenderWindow.h>
#include <vtkOpenGLState.h>
#include <vtkRenderWindowInteractor.h>

#include <QApplication>
#include <QGestureEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPainter>
#include <QPinchGesture>
#include <QPolygonF>
#include <QSurfaceFormat>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "viewer/stage/drawing/aim.h"
#include "viewer/stage/scene/mark.h"
#include "viewer/stage/scene/palette.h"
#include "viewer/window/stage_view/turntable.h"

namespace scalpmark::window {

using Eigen::Vector3d;
using viewer::Gaze;
using viewer::Pixel;

namespace {

constexpr int frame_ms = 16;
constexpr double turn_deg_per_px = 0.4;
constexpr double node_reach_px = 16;   // of a click from a node's mark
constexpr double point_reach_px = 14;  // of a grip from a placed point
constexpr double wheel_notch = 120;
constexpr double zoom_per_notch = 1.15;
constexpr double closest_scale_mm = 8, widest_scale_mm = 400;  // half the picture's height
constexpr int focus_frame_px = 2;
/// A change this soon after the last is one of many (a key held, a wheel turned), and so long after the last
/// of them the picture is at rest.
constexpr int hurry_ms = 200;
constexpr double note_leader_px = 30;  // text further off than that has a line to its mark
constexpr double note_line_px = 3, note_line_lift_mm = 10;  // over the marks it joins
const viewer::TextStyle note_style{15, true, viewer::palette::text, true};

double ease(double t) {
  return t * t * (3 - 2 * t);
}

}  // namespace

StageView::StageView(QWidget* parent) : QVTKOpenGLNativeWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setEnableHiDPI(true);
  grabGesture(Qt::PinchGesture);
  setAccessibleName(tr("Stage"));
  setAccessibleDescription(
      tr("The head with tapes, marks and coil. Arrow keys turn the coil, with Ctrl they move it; 1 to 6 "
         "choose a view. While points are placed, Enter sets one in the middle of the picture and Ctrl with "
         "arrow keys moves it."));
  setMinimumSize(360, 300);

  vtkNew<vtkGenericOpenGLRenderWindow> window;
  window->SetMultiSamples(0);
  setRenderWindow(window);
  // The hand is read from Qt's events below.
  interactor()->SetInteractorStyle(nullptr);
  window->AddRenderer(plan_renderer_);
  for (vtkRenderer* r : {static_cast<vtkRenderer*>(plan_renderer_), bare_renderer_.Get()}) r->UseFXAAOn();
  stage_ = std::make_unique<viewer::Stage>(plan_renderer_);
  bare_ = std::make_unique<BareSkin>(bare_renderer_);
  loupe_ = std::make_unique<Loupe>(window);
  note_ink_ = std::make_unique<viewer::Ink>(plan_renderer_);
  note_text_ = std::make_unique<viewer::Overlay>(plan_renderer_);
  note_observer_ = plan_renderer_->AddObserver(vtkCommand::StartEvent, this, &StageView::draw_notes);

  animation_.setInterval(frame_ms);
  connect(&animation_, &QTimer::timeout, this, [this] {
    const double t = std::min(1.0, static_cast<double>(since_.elapsed()) / glide_ms_);
    const double share = ease(t);
    Eye eye;
    eye.gaze = between(from_.gaze, to_.gaze, share);
    eye.focus = from_.focus + share * (to_.focus - from_.focus);
    eye.scale = from_.scale * std::pow(to_.scale / from_.scale, share);
    eye.centre_x = from_.centre_x + share * (to_.centre_x - from_.centre_x);
    eye.centre_y = from_.centre_y + share * (to_.centre_y - from_.centre_y);
    if (t >= 1) {
      stop_gliding();
      eye = to_;
    }
    set_eye(eye);
  });
  rests_.setSingleShot(true);
  rests_.setInterval(hurry_ms);
  connect(&rests_, &QTimer::timeout, this, [this] {
    choose_quality();
    redraw();
  });
}

StageView::~StageView() {
  plan_renderer_->RemoveObserver(note_observer_);
}

// --- what is shown

void StageView::show_plan(const geometry::Head& head, const geometry::Case& entered,
                          const geometry::Plan& plan, const viewer::Shown& shown,
                          std::vector<StageNote> notes) {
  if (bare_shown_) {
    hovering_.reset();
    loupe_->hide();
    renderWindow()->RemoveRenderer(bare_renderer_);
    renderWindow()->AddRenderer(plan_renderer_);
    bare_shown_ = false;
  }
  head_ = head;
  plan_ = plan;
  entered_ = entered;
  placement_ = viewer::placement_shown(plan, shown);
  coil_shown_ = shown.has(viewer::Thing::coil);
  notes_ = std::move(notes);
  stage_->set_pixel_ratio(type_scale_ * devicePixelRatioF());
  stage_->show(head, entered, plan, shown);
  was_shown_ = true;
  one_change();
  redraw();
}

void StageView::show_bare(const UnplacedHead& head) {
  const bool first = !bare_shown_;
  if (first) {
    renderWindow()->RemoveRenderer(plan_renderer_);
    renderWindow()->AddRenderer(bare_renderer_);
    bare_shown_ = true;
  }
  bare_->show(head);
  place_loupe();
  redraw();
}

void StageView::set_wanted_point(Fiducial which) {
  wanted_point_ = which;
  if (!bare_shown_) return;
  place_loupe();
  redraw();
}

void StageView::place_loupe() {
  if (!bare_shown_ || !bare_->skin()) return;
  std::optional<Vector3d> at;
  if (hand_ == Hand::moving_point)
    at = bare_->placed(dragged_point_);
  else if (hovering_ && hand_ == Hand::none) {
    if (const auto point = bare_->skin_at(pixel_of(*hovering_))) at = bare_->position(*point);
  }
  if (!at) at = bare_->placed(wanted_point_);
  // From behind, a loupe would look through the head.
  const geometry::Surface& skin = *bare_->skin();
  if (!at || !viewer::in_sight(skin, *at, skin.smooth_normal(skin.closest(*at)), sight())) {
    loupe_->hide();
    return;
  }
  const QPointF there = position_of(*at);
  loupe_->show(skin, *at, eye().gaze, there.x() > 0.55 * width() && there.y() > 0.5 * height());
}

void StageView::move_wanted_point(double right_mm, double up_mm) {
  const auto& now = bare_->placed(wanted_point_);
  if (!now) return;
  const Vector3d to = *now + right_mm * sight().right() + up_mm * sight().up;
  if (const auto point = bare_->skin_at(sight().project(to)))
    emit fiducial_dragged(wanted_point_, bare_->position(*point));
}

viewer::Pixel StageView::place_for(const Pixel& at, const StageNote& note) {
  const double scale = stage_->sight().scale, clear = (viewer::reach_px(note.shape) + 4) * scale;
  const viewer::TextSize size = note_text_->measure(note.text.toStdString(), note_style);
  const auto box_at = [&](const Pixel& p) {
    return viewer::Box{p.x, p.y, p.x + size.width, p.y + size.height};
  };
  const Pixel usual{at.x + clear, at.y + clear};
  // What must be seen: the pulse point above all.
  std::vector<viewer::Box> chief;
  for (const viewer::SeenMark& mark : stage_->marks()) {
    if (!mark.visible || mark.thing == viewer::Thing::landmarks || mark.thing == viewer::Thing::grid)
      continue;
    const Pixel there = stage_->project(mark.at);
    const double reach = viewer::reach_px(mark.shape) * scale;
    chief.push_back({there.x - reach, there.y - reach, there.x + reach, there.y + reach});
  }
  std::optional<Pixel> over_a_mark;
  // Outward in rings until the plan's own labels and captions are clear, and its chief marks if they can be.
  for (double away = clear; away < 160 * scale; away += 0.7 * size.height)
    for (const Pixel& p :
         {Pixel{at.x + away, at.y - size.height / 2}, Pixel{at.x - away - size.width, at.y - size.height / 2},
          Pixel{at.x + clear, at.y + away}, Pixel{at.x - clear - size.width, at.y + away},
          Pixel{at.x + clear, at.y - away - size.height},
          Pixel{at.x - clear - size.width, at.y - away - size.height}}) {
      const viewer::Box box = box_at(p);
      if (!box.inside({0, 0, static_cast<double>(stage_->sight().width_px),
                       static_cast<double>(stage_->sight().height_px)}))
        continue;
      const auto hits = [&](const viewer::Box& other) { return other.overlaps(box); };
      const auto& captions = stage_->captions();
      const auto& labels = stage_->labels();
      if (std::none_of(captions.begin(), captions.end(),
                       [&](const auto& caption) { return hits(caption.box); }) &&
          std::none_of(drawn_.begin(), drawn_.end(), [&](const auto& note) { return hits(note.box); }) &&
          std::none_of(labels.begin(), labels.end(), [&](const auto& label) { return hits(label.box); })) {
        if (std::none_of(chief.begin(), chief.end(), hits)) return p;
        if (!over_a_mark) over_a_mark = p;
      }
    }
  return over_a_mark.value_or(usual);
}

void StageView::draw_notes() {
  // Sizes of text are in pixels of the screen already; the widget would scale them again on a dense one.
  renderWindow()->SetDPI(72);
  drawn_.clear();
  note_ink_->begin(stage_->sight());
  note_text_->begin(stage_->sight());
  if (head_) {
    stage_->refresh();
    note_ink_->begin(stage_->sight());
    note_text_->begin(stage_->sight());
    const viewer::Sight& s = stage_->sight();
    for (const StageNote& note : notes_) {
      const Vector3d& place = note.line.empty() ? note.at : note.line[note.line.size() / 2];
      const viewer::Mark mark = viewer::make_mark(viewer::Thing::labels, {}, note.shape, {}, place,
                                                  viewer::calm_normal(head_->skin(), place), note.along);
      if (!note.line.empty()) note_ink_->line(note.line, note_line_px, note.colour, note_line_lift_mm);
      if (!viewer::in_sight(head_->skin(), mark.at, mark.normal, s)) continue;
      if (note.line.empty()) note_ink_->mark(mark, note.colour);
      if (note.text.isEmpty()) continue;
      const Pixel anchor = s.project(mark.at), at = place_for(anchor, note);
      const viewer::TextSize size = note_text_->measure(note.text.toStdString(), note_style);
      const Pixel near{std::clamp(anchor.x, at.x, at.x + size.width),
                       std::clamp(anchor.y, at.y, at.y + size.height)};
      if (std::hypot(near.x - anchor.x, near.y - anchor.y) > note_leader_px * s.scale)
        note_text_->line(anchor, near, 1.1, viewer::palette::quiet_text);
      note_text_->text(note.text.toStdString(), at, note_style);
      drawn_.push_back({note.text, mark.at, {at.x, at.y, at.x + size.width, at.y + size.height}});
    }
  }
  note_ink_->done();
  note_text_->done();
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
  if (!held_ && std::exchange(to_be_drawn_, false)) redraw();
}

void StageView::redraw() {
  if (held_) {
    to_be_drawn_ = true;
    return;
  }
  update();
  draw_now();
}

// Between two frames Qt paints with the same context and leaves its own depth test, under which what is drawn
// flat over the scene hides what is written on it.
void StageView::draw_now() {
  makeCurrent();
  if (auto* window = vtkOpenGLRenderWindow::SafeDownCast(renderWindow()); window && isValid()) {
    window->GetState()->Reset();
    window->GetState()->vtkglDepthFunc(GL_LEQUAL);
  }
  renderWindow()->Render();
}

// --- camera

const viewer::Sight& StageView::sight() const {
  return bare_shown_ ? bare_->sight() : stage_->sight();
}

StageView::Eye StageView::eye() const {
  vtkCamera* camera = renderer()->GetActiveCamera();
  Eye eye;
  eye.gaze.toward_eye = -viewer::vector_of(camera->GetDirectionOfProjection()).normalized();
  const Vector3d up = viewer::vector_of(camera->GetViewUp());
  eye.gaze.up = (up - up.dot(eye.gaze.toward_eye) * eye.gaze.toward_eye).normalized();
  eye.focus = viewer::vector_of(camera->GetFocalPoint());
  eye.scale = camera->GetParallelScale();
  eye.centre_x = camera->GetWindowCenter()[0];
  eye.centre_y = camera->GetWindowCenter()[1];
  return eye;
}

void StageView::aim(const Eye& eye) {
  viewer::aim(*renderer(), eye.focus, eye.gaze, eye.scale);
  renderer()->GetActiveCamera()->SetWindowCenter(eye.centre_x, eye.centre_y);
}

void StageView::set_eye(const Eye& eye) {
  aim(eye);
  redraw();
  if (bare_shown_) {
    place_loupe();  // where the pointer or the point is seen now
    redraw();
  }
}

Gaze StageView::gaze() const {
  return eye().gaze;
}

// In motion nobody sees steps along an edge, and smoothing them costs as much as drawing the head.
void StageView::choose_quality() {
  const bool dragging = dragged_ && hand_ != Hand::none;
  const bool moving = animation_.isActive() || dragging || rests_.isActive();
  stage_->set_moving(moving);
  for (vtkRenderer* r : {static_cast<vtkRenderer*>(plan_renderer_), bare_renderer_.Get()})
    r->SetUseFXAA(!moving);
}

void StageView::one_change() {
  if (since_changed_.isValid() && since_changed_.elapsed() < hurry_ms) rests_.start();
  since_changed_.start();
  choose_quality();
}

void StageView::stop_gliding() {
  animation_.stop();
  choose_quality();
}

void StageView::glide_to(const Eye& to, int glide_ms) {
  stop_gliding();
  glide_ms_ = glide_ms;
  if (!animated_ || !isVisible()) {
    set_eye(to);
    return;
  }
  from_ = eye();
  to_ = to;
  since_.start();
  animation_.start();
  choose_quality();
}

void StageView::look(viewer::View view, int glide_ms) {
  if (bare_shown_ || !head_) return;
  view_ = view;
  const Eye before = eye();
  stage_->look(view);
  const Eye to = eye();
  aim(before);
  glide_to(to, glide_ms);
}

void StageView::look_at(const Gaze& gaze, const std::optional<Vector3d>& at, double across_mm, int glide_ms) {
  view_.reset();
  const Eye before = eye();
  if (bare_shown_) {
    bare_->look(gaze, at, across_mm);
  } else {
    stage_->look(gaze);
    if (at && across_mm > 0) {
      Eye close = eye();
      close.focus = *at;
      close.scale = across_mm / 2;
      aim(close);
    }
  }
  const Eye to = eye();
  aim(before);
  glide_to(to, glide_ms);
}

Vector3d StageView::head_up() const {
  return bare_shown_ || !head_ ? eye().gaze.up : head_->axes().up;
}

void StageView::leave_view() {
  stop_gliding();
  one_change();
  view_.reset();
}

void StageView::turn(double around_deg, double over_deg) {
  leave_view();
  Eye eye = this->eye();
  const Vector3d focus = eye.focus;
  eye.gaze = turned(eye.gaze, head_up(), around_deg, over_deg);
  // The head turns about its own middle, not about what happens to be in the middle of the picture.
  if (head_ && !bare_shown_) {
    const Gaze before = this->eye().gaze;
    const Vector3d middle = head_->axes().origin + 40 * head_->axes().up;
    const Vector3d off = focus - middle;
    eye.focus = middle +
                off.dot(before.up.cross(before.toward_eye)) * eye.gaze.up.cross(eye.gaze.toward_eye) +
                off.dot(before.up) * eye.gaze.up;
  }
  set_eye(eye);
}

void StageView::shift(const QPointF& by) {
  leave_view();
  Eye eye = this->eye();
  const double mm = sight().mm_per_px * devicePixelRatioF();
  eye.focus += -by.x() * mm * sight().right() + by.y() * mm * sight().up;
  set_eye(eye);
}

void StageView::zoom(double factor, const QPointF& about) {
  leave_view();
  Eye eye = this->eye();
  const double scale = std::clamp(eye.scale / factor, closest_scale_mm, widest_scale_mm);
  // What is under the pointer stays there.
  const Vector3d held = sight().unproject(pixel_of(about));
  eye.focus = held + (eye.focus - held) * (scale / eye.scale);
  eye.scale = scale;
  set_eye(eye);
}

// --- the hand

Pixel StageView::pixel_of(const QPointF& at) const {
  const double ratio = devicePixelRatioF();
  return {at.x() * ratio, at.y() * ratio};
}

QPointF StageView::position_of(const Vector3d& point) const {
  const Pixel at = sight().project(point);
  const double ratio = devicePixelRatioF();
  return {at.x / ratio, at.y / ratio};
}

bool StageView::on_coil(const QPointF& at) const {
  if (bare_shown_ || !coil_shown_ || !coil_movable_) return false;
  // A coil behind the head is not taken hold of through it.
  if (placement_.normal.dot(sight().toward_eye) < -0.2) return false;
  const Vector3d origin = placement_.pulse + placement_.lift_mm * placement_.normal;
  const Vector3d x = placement_.front.cross(placement_.normal);
  for (const auto& part : entered_.coil_model.parts) {
    QPolygonF outline;
    for (const auto& p : part.outline)
      outline << position_of(origin + p.x() * x + p.y() * placement_.front + part.top_mm * placement_.normal);
    if (outline.containsPoint(at, Qt::OddEvenFill)) return true;
  }
  return false;
}

void StageView::set_pointing(bool pointing) {
  pointing_ = pointing;
  setCursor(pointing ? Qt::CrossCursor : Qt::ArrowCursor);
}

void StageView::mousePressEvent(QMouseEvent* event) {
  stop_gliding();
  pressed_at_ = last_at_ = event->localPos();
  dragged_ = false;
  if (event->button() == Qt::LeftButton && !(event->modifiers() & Qt::ShiftModifier)) {
    if (bare_shown_) {
      if (const auto point = bare_->point_near(pixel_of(pressed_at_), point_reach_px * devicePixelRatioF())) {
        dragged_point_ = *point;
        hand_ = Hand::moving_point;
        return;
      }
    }
    if (!pointing_ && on_coil(pressed_at_)) {
      hand_ = Hand::moving_coil;
      coil_from_hand_ = position_of(placement_.pulse) - pressed_at_;
      setCursor(Qt::ClosedHandCursor);
      return;
    }
    hand_ = Hand::turning;
  } else {
    hand_ = Hand::shifting;
  }
  event->accept();
}

void StageView::mouseMoveEvent(QMouseEvent* event) {
  const QPointF at = event->localPos(), by = at - last_at_;
  if (bare_shown_) hovering_ = at;
  if (hand_ == Hand::none && bare_shown_) {
    place_loupe();
    redraw();
    return;
  }
  if (hand_ == Hand::none) {
    if (!pointing_) setCursor(on_coil(at) ? Qt::OpenHandCursor : Qt::ArrowCursor);
    return;
  }
  if (!dragged_ && (at - pressed_at_).manhattanLength() < QApplication::startDragDistance() / 2.0) return;
  dragged_ = true;
  choose_quality();
  last_at_ = at;
  switch (hand_) {
    case Hand::turning:
      turn(-by.x() * turn_deg_per_px, by.y() * turn_deg_per_px);
      break;
    case Hand::shifting:
      shift(by);
      break;
    case Hand::moving_coil:
      if (const auto point = stage_->skin_at(pixel_of(at + coil_from_hand_))) emit coil_moved(*point);
      break;
    case Hand::moving_point:
      if (const auto point = bare_->skin_at(pixel_of(at)))
        emit fiducial_dragged(dragged_point_, bare_->position(*point));
      break;
    case Hand::none:
      break;
  }
}

void StageView::mouseReleaseEvent(QMouseEvent* event) {
  const Hand hand = std::exchange(hand_, Hand::none);
  setCursor(pointing_ ? Qt::CrossCursor : Qt::ArrowCursor);
  if (dragged_) {
    rests_.stop();
    choose_quality();
    redraw();
    if (hand == Hand::moving_coil) emit coil_put_down();
    return;
  }
  if (event->button() != Qt::LeftButton) return;
  const Pixel at = pixel_of(event->localPos());
  if (bare_shown_) {
    if (hand == Hand::moving_point) return;
    if (const auto point = bare_->skin_at(at)) emit skin_pointed(bare_->position(*point));
    return;
  }
  if (!head_) return;
  if (pointing_) {
    if (const auto point = stage_->skin_at(at)) emit skin_pointed(head_->skin().position(*point));
    return;
  }
  if (!coil_movable_) return;
  if (const auto mark = stage_->mark_near(at, node_reach_px * devicePixelRatioF());
      mark && mark->thing == viewer::Thing::grid) {
    const geometry::GridNode* best = nullptr;
    double best_mm = std::numeric_limits<double>::infinity();
    for (const auto& node : plan_.grid) {
      for (const Vector3d& place :
           {node.placement.pulse,
            node.placement.edge_mark.by(entered_.coil.mark_rule).value_or(node.placement.pulse)})
        if (const double mm = (place - mark->at).norm(); mm < best_mm) {
          best_mm = mm;
          best = &node;
        }
    }
    if (best) emit node_clicked(best->row, best->column);
  }
}

void StageView::leaveEvent(QEvent* event) {
  QVTKOpenGLNativeWidget::leaveEvent(event);
  if (!hovering_) return;
  hovering_.reset();
  place_loupe();
  redraw();
}

void StageView::mouseDoubleClickEvent(QMouseEvent* event) {
  mousePressEvent(event);
}

void StageView::wheelEvent(QWheelEvent* event) {
  const double notches =
      (event->angleDelta().y() != 0 ? event->angleDelta().y() : event->angleDelta().x()) / wheel_notch;
  if (event->modifiers() & Qt::ControlModifier) {
    if (coil_shown_ && coil_movable_)
      emit coil_turned(notches * (event->modifiers() & Qt::ShiftModifier ? 5 : 1));
  } else {
    zoom(std::pow(zoom_per_notch, notches), event->position());
  }
  event->accept();
}

void StageView::keyPressEvent(QKeyEvent* event) {
  const bool ctrl = event->modifiers() & Qt::ControlModifier, alt = event->modifiers() & Qt::AltModifier;
  const double much = event->modifiers() & Qt::ShiftModifier ? 5 : 1;
  const bool coil = coil_shown_ && coil_movable_ && !bare_shown_;
  constexpr double turn_step_deg = 3;
  const auto arrow = [&](double x, double y) {
    if (bare_shown_ && ctrl)
      move_wanted_point(x * much, y * much);
    else if (alt || !coil)
      turn(-x * turn_step_deg * much, y * turn_step_deg * much);
    else if (ctrl)
      emit coil_nudged(y * much, (entered_.side == geometry::Side::left ? -x : x) * much);
    else if (x != 0)
      emit coil_turned(x * much);
    else
      turn(0, y * turn_step_deg * much);
  };
  switch (event->key()) {
    case Qt::Key_Left:
      arrow(-1, 0);
      break;
    case Qt::Key_Right:
      arrow(1, 0);
      break;
    case Qt::Key_Up:
      arrow(0, 1);
      break;
    case Qt::Key_Down:
      arrow(0, -1);
      break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
      // Only while points are placed; otherwise the key is the lesson's.
      if (bare_shown_) {
        const Pixel middle{sight().width_px / 2.0, sight().height_px / 2.0};
        if (const auto point = bare_->skin_at(middle)) emit skin_pointed(bare_->position(*point));
      } else {
        QWidget::keyPressEvent(event);
        return;
      }
      break;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      zoom(zoom_per_notch, QPointF(width() / 2.0, height() / 2.0));
      break;
    case Qt::Key_Minus:
      zoom(1 / zoom_per_notch, QPointF(width() / 2.0, height() / 2.0));
      break;
    default:
      QWidget::keyPressEvent(event);
      return;
  }
  event->accept();
}

bool StageView::event(QEvent* event) {
  if (event->type() == QEvent::Gesture) {
    if (const auto* pinch =
            static_cast<QPinchGesture*>(static_cast<QGestureEvent*>(event)->gesture(Qt::PinchGesture))) {
      zoom(pinch->scaleFactor(), mapFromGlobal(pinch->centerPoint().toPoint()));
      return true;
    }
  }
  if (event->type() == QEvent::NativeGesture) {
    const auto* gesture = static_cast<QNativeGestureEvent*>(event);
    if (gesture->gestureType() == Qt::ZoomNativeGesture) {
      zoom(1 + gesture->value(), gesture->localPos());
      return true;
    }
  }
  // Mouse, wheel and keys are ours; the base class would hand them to VTK, which has no part in this.
  switch (event->type()) {
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonRelease:
    case QEvent::MouseButtonDblClick:
    case QEvent::MouseMove:
    case QEvent::Wheel:
    case QEvent::KeyPress:
    case QEvent::FocusIn:
    case QEvent::FocusOut:
      return QOpenGLWidget::event(event);  // NOLINT(bugprone-parent-virtual-call): past VTK, on purpose
    default:
      return QVTKOpenGLNativeWidget::event(event);
  }
}

void StageView::resizeEvent(QResizeEvent* event) {
  QVTKOpenGLNativeWidget::resizeEvent(event);
  if (!was_shown_ || bare_shown_) return;
  stop_gliding();
  if (view_) stage_->look(*view_);
}

void StageView::focusInEvent(QFocusEvent* event) {
  QVTKOpenGLNativeWidget::focusInEvent(event);
  update();
}

void StageView::focusOutEvent(QFocusEvent* event) {
  QVTKOpenGLNativeWidget::focusOutEvent(event);
  update();
}

void StageView::paintGL() {
  QVTKOpenGLNativeWidget::paintGL();
  const bool framed = hasFocus() && focus_frame_;
  if (!framed && !loupe_->is_shown()) return;
  QPainter painter(this);
  if (loupe_->is_shown()) draw_loupe_frame(painter);
  if (!framed) return;
  painter.setPen(QPen(palette().color(QPalette::Highlight), focus_frame_px));
  painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

void StageView::draw_loupe_frame(QPainter& painter) const {
  const QRectF share = loupe_->place();
  const QRectF box(share.left() * width(), share.top() * height(), share.width() * width(),
                   share.height() * height());
  const auto colour = [](viewer::Colour c) { return QColor(c.red, c.green, c.blue); };
  painter.setPen(QPen(colour(viewer::palette::quiet_text), 2));
  painter.drawRect(box);
  // A cross open in the middle, so that the point itself stays in sight.
  const QPointF middle = box.center();
  for (const auto& [pen_px, c] :
       {std::pair(4.0, viewer::palette::halo), std::pair(1.5, viewer::palette::text)}) {
    painter.setPen(QPen(colour(c), pen_px));
    for (const QPointF& way : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)})
      painter.drawLine(middle + 5 * way, middle + 22 * way);
  }
}

QImage StageView::picture() {
  rests_.stop();
  choose_quality();
  draw_now();
  return grabFramebuffer();
}

}  // namespace scalpmark::window
