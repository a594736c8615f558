#pragma once

#include <QKeyEvent>
#include <QMouseEvent>
#include <QObject>
#include <QWheelEvent>
#include <QWidget>
#include <optional>

#include "viewer/window/stage_view/loupe_guide.h"
#include "viewer/window/stage_view/stage_camera.h"
#include "viewer/window/stage_view/stage_subject.h"

namespace scalpmark::window {

/// What mouse, wheel and keys do on the stage: they move the coil, a point that is being placed, or else the
/// camera. Says what the hand did; where a coil or a point may lie is decided by whoever listens.
class StageHand : public QObject {
  Q_OBJECT
public:
  /// Reads the events of `over`, which shows the cursor.
  StageHand(StageSubject& subject, StageCamera& camera, LoupeGuide& loupe, QWidget& over);

  /// The next clicks on the skin are wanted as points instead of moving the coil.
  void set_pointing(bool pointing);
  [[nodiscard]] bool is_pointing() const { return pointing_; }
  /// The coil follows the hand only where there is one to see.
  void set_coil_movable(bool movable) { coil_movable_ = movable; }

  /// Moves something with a button held down.
  [[nodiscard]] bool is_dragging() const { return dragged_ && hand_ != Hand::none; }
  [[nodiscard]] bool is_free() const { return hand_ == Hand::none; }
  [[nodiscard]] std::optional<Fiducial> dragged_point() const {
    return hand_ == Hand::moving_point ? std::optional(dragged_point_) : std::nullopt;
  }

  void press(const QMouseEvent& event);
  void move(const QMouseEvent& event);
  void release(const QMouseEvent& event);
  void wheel(const QWheelEvent& event);
  /// Whether the key means something here.
  bool key(const QKeyEvent& event);
  /// The pointer left the stage.
  void leave();

signals:
  // See StageView for these:
  void coil_moved(const geometry::SurfacePoint& to);
  void coil_turned(double by_deg);
  void coil_nudged(double forward_mm, double outward_mm);
  void coil_put_down();
  void spot_clicked(int row, int column);
  void skin_pointed(const Eigen::Vector3d& at);
  void fiducial_dragged(Fiducial which, const Eigen::Vector3d& to);
  /// Goes on dragging.
  void drags();
  /// What was dragged is let go.
  void let_go();
  /// The pointer moved over a bare skin, or left it.
  void hovers();

private:
  enum class Hand { none, turning, shifting, moving_coil, moving_point };

  [[nodiscard]] viewer::Pixel pixel_of(const QPointF& at) const;
  [[nodiscard]] bool can_move_coil() const;
  [[nodiscard]] bool is_on_coil(const QPointF& at) const;
  void drag(const QPointF& to, const QPointF& by);
  void click(const viewer::Pixel& at, Hand hand);
  void click_node(const viewer::Pixel& at);
  /// An arrow key, to the right and up.
  void arrow(double right, double up, Qt::KeyboardModifiers with);
  void move_wanted_point(double right_mm, double up_mm);
  void show_cursor();

  StageSubject& subject_;
  StageCamera& camera_;
  LoupeGuide& loupe_;
  QWidget& over_;
  Hand hand_ = Hand::none;
  QPointF pressed_at_, last_at_, coil_from_hand_px_;
  bool dragged_ = false, pointing_ = false, coil_movable_ = true;
  Fiducial dragged_point_ = Fiducial::nasion;
};

}  // namespace scalpmark::window
