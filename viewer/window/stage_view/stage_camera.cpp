#include "viewer/window/stage_view/stage_camera.h"

#include <algorithm>
#include <cmath>

#include "viewer/window/stage_view/turntable.h"

namespace scalpmark::window {

using Eigen::Vector3d;
using viewer::Gaze;

namespace {

constexpr int frame_ms = 16;
constexpr double closest_scale_mm = 8, widest_scale_mm = 400;  // half the picture's height
constexpr double middle_over_tragi_mm = 40;                    // what a head turns about

double ease(double t) {
  return t * t * (3 - 2 * t);
}

}  // namespace

StageCamera::StageCamera(StageSubject& subject, QWidget& over) : subject_(subject), over_(over) {
  clock_.setInterval(frame_ms);
  connect(&clock_, &QTimer::timeout, this, &StageCamera::glide_on);
}

void StageCamera::set_eye(const Eye& eye) {
  aim(*subject_.renderer(), eye);
  emit moved();
}

void StageCamera::stop_gliding() {
  clock_.stop();
  emit gliding_changed();
}

void StageCamera::glide_to(const Eye& to, int glide_ms) {
  stop_gliding();
  glide_ms_ = glide_ms;
  if (!animated_ || !over_.isVisible()) {
    set_eye(to);
    return;
  }
  from_ = eye();
  to_ = to;
  since_.start();
  clock_.start();
  emit gliding_changed();
}

void StageCamera::glide_on() {
  const double t = std::min(1.0, static_cast<double>(since_.elapsed()) / glide_ms_);
  if (t >= 1) stop_gliding();
  set_eye(t >= 1 ? to_ : between(from_, to_, ease(t)));
}

void StageCamera::look(viewer::View view, int glide_ms) {
  if (!on_a_head()) return;
  view_ = view;
  const Eye before = eye();
  subject_.stage().look(view);
  const Eye to = eye();
  aim(*subject_.renderer(), before);
  glide_to(to, glide_ms);
}

void StageCamera::look_at(const Gaze& gaze, const std::optional<Vector3d>& at, double across_mm, int glide_ms,
                          double eye_mm) {
  view_.reset();
  const Eye before = eye();
  if (subject_.is_bare()) {
    subject_.bare().look(gaze, at, across_mm);
  } else {
    subject_.stage().look(gaze);
    if (at && across_mm > 0) {
      Eye close = eye();
      close.focus = *at;
      // What is looked at fills the part of the picture that is not written over, in whose middle it lies.
      close.scale = across_mm / 2 / (1 - std::abs(close.centre_y));
      close.eye_mm = eye_mm;
      aim(*subject_.renderer(), close);
    }
  }
  const Eye to = eye();
  aim(*subject_.renderer(), before);
  glide_to(to, glide_ms);
}

void StageCamera::fit_again() {
  if (!on_a_head()) return;
  stop_gliding();
  if (view_) subject_.stage().look(*view_);
}

void StageCamera::leave_view() {
  stop_gliding();
  emit taken_in_hand();
  view_.reset();
}

void StageCamera::turn(double around_deg, double over_deg) {
  leave_view();
  Eye eye = this->eye();
  const Gaze before = eye.gaze;
  const Vector3d focus = eye.focus;
  eye.gaze = turned(before, on_a_head() ? subject_.plan()->head.axes().up : before.up, around_deg, over_deg);
  // The head turns about its own middle, not about what happens to be in the middle of the picture.
  if (on_a_head()) {
    const geometry::HeadAxes& axes = subject_.plan()->head.axes();
    const Vector3d middle = axes.origin + middle_over_tragi_mm * axes.up;
    const Vector3d off = focus - middle;
    eye.focus = middle +
                off.dot(before.up.cross(before.toward_eye)) * eye.gaze.up.cross(eye.gaze.toward_eye) +
                off.dot(before.up) * eye.gaze.up;
  }
  set_eye(eye);
}

void StageCamera::shift(const QPointF& by) {
  leave_view();
  Eye eye = this->eye();
  const viewer::Sight& sight = subject_.sight();
  eye.focus += -by.x() * sight.mm_per_px * sight.right() + by.y() * sight.mm_per_px * sight.up;
  set_eye(eye);
}

void StageCamera::zoom(double factor, const viewer::Pixel& about) {
  leave_view();
  Eye eye = this->eye();
  const double scale = std::clamp(eye.scale / factor, closest_scale_mm, widest_scale_mm);
  const Vector3d held = subject_.sight().unproject(about);
  eye.focus = held + (eye.focus - held) * (scale / eye.scale);
  eye.scale = scale;
  set_eye(eye);
}

}  // namespace scalpmark::window
