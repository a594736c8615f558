#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>
#include <QWidget>
#include <optional>

#include "viewer/window/stage_view/eye.h"
#include "viewer/window/stage_view/stage_content.h"
#include "viewer/window/stage_view/stage_subject.h"

namespace scalpmark::window {

/// The camera of the stage: a hand moves it, or it glides to where it is told to look. Once a hand has moved
/// it, it is on none of the views any more.
class StageCamera : public QObject {
  Q_OBJECT
public:
  static constexpr double zoom_per_notch = 1.15;

  /// Nothing glides while `over` is out of sight.
  StageCamera(StageSubject& subject, QWidget& over);

  /// Turns to a view of the plan, in a short movement.
  void look(viewer::View view, int glide_ms);
  /// Looks straight at a point of the plan's head, or of the bare skin, `across_mm` of it filling the
  /// picture, seen by parallel projection or from an eye so far away.
  void look_at(const viewer::Gaze& gaze, const std::optional<Eigen::Vector3d>& at, double across_mm,
               int glide_ms, double eye_mm = 0);
  [[nodiscard]] viewer::Gaze gaze() const { return eye().gaze; }
  /// Fits the view it is on into a picture of another size.
  void fit_again();

  void set_animated(bool animated) { animated_ = animated; }
  [[nodiscard]] bool is_animated() const { return animated_; }
  [[nodiscard]] bool is_gliding() const { return clock_.isActive(); }
  void stop_gliding();

  // By hand:
  void turn(double around_deg, double over_deg);
  /// By pixels of the picture.
  void shift(const QPointF& by);
  /// What is under `about` stays there.
  void zoom(double factor, const viewer::Pixel& about);

signals:
  /// Another picture is seen.
  void moved();
  /// A hand moves it from now on.
  void taken_in_hand();
  /// Began or ended.
  void gliding_changed();

private:
  [[nodiscard]] Eye eye() const { return eye_of(*subject_.renderer()); }
  void set_eye(const Eye& eye);
  void glide_to(const Eye& to, int glide_ms);
  void glide_on();
  void leave_view();
  [[nodiscard]] bool on_a_head() const { return subject_.plan() && !subject_.is_bare(); }

  StageSubject& subject_;
  QWidget& over_;
  bool animated_ = true;
  QTimer clock_;
  QElapsedTimer since_;
  int glide_ms_ = usual_glide_ms;
  Eye from_, to_;
  std::optional<viewer::View> view_;
};

}  // namespace scalpmark::window
