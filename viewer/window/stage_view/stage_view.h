#pragma once

#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "viewer/window/stage_view/canvas.h"
#include "viewer/window/stage_view/loupe_guide.h"
#include "viewer/window/stage_view/stage_camera.h"
#include "viewer/window/stage_view/stage_content.h"
#include "viewer/window/stage_view/stage_hand.h"
#include "viewer/window/stage_view/stage_subject.h"

class QPainter;

namespace scalpmark::window {

/// The stage in the window: what it shows (StageSubject), from where (StageCamera), and the hand that moves
/// coil and camera on it (StageHand).
///   drag the coil            moves it over the skin; it stays tangent
///   Ctrl and wheel, arrows   turn the coil (Left, Right; one degree, with Shift five)
///   Ctrl and arrows          move the coil by a millimetre (with Shift five)
///   drag elsewhere           turns the head; wheel zooms; right or middle drag, or Shift and drag, shifts
///   click a spot             lays the coil on it
/// While the four points are placed on a skin, a loupe shows it magnified under the pointer or around the
/// point that is set; Enter sets the wanted point in the middle of the picture, Ctrl and arrows move it by a
/// millimetre. What is computed is asked of geometry/ by whoever listens; this widget only says what the hand
/// did.
class StageView : public QWidget {
  Q_OBJECT
public:
  explicit StageView(QWidget* parent = nullptr);
  ~StageView() override;

  /// Shows a plan; the coil where `shown` says.
  void show_plan(const geometry::Head& head, const geometry::Case& the_case, const geometry::Plan& plan,
                 const viewer::Shown& shown);
  /// What stands in for the head while coil or camera move.
  void set_thin_skin(const std::optional<geometry::Surface>& thin) { subject_->stage().set_thin_skin(thin); }
  /// Shows a skin whose four points are being placed.
  void show_bare(const UnplacedHead& head);
  [[nodiscard]] bool is_bare() const { return subject_->is_bare(); }

  /// Places marks and labels only once for all that `changes` has shown and looked at.
  void draw_once(const std::function<void()>& changes);

  /// Turns to a view, in a short movement.
  void look(viewer::View view, int glide_ms = usual_glide_ms) { camera_->look(view, glide_ms); }
  void look(const StageLook& from);
  /// Looks straight at a point of the plan's head, or of the bare skin, `across_mm` of it filling the
  /// picture.
  void look_at(const viewer::Gaze& gaze, const std::optional<Eigen::Vector3d>& at = {}, double across_mm = 0,
               int glide_ms = usual_glide_ms, double eye_mm = 0) {
    camera_->look_at(gaze, at, across_mm, glide_ms, eye_mm);
  }
  [[nodiscard]] viewer::Gaze gaze() const { return camera_->gaze(); }
  /// Movements may be switched off (for pictures and tests, and for people they make dizzy).
  void set_animated(bool animated) { camera_->set_animated(animated); }
  [[nodiscard]] bool is_animated() const { return camera_->is_animated(); }
  [[nodiscard]] bool is_moving() const { return camera_->is_gliding(); }

  /// The point that keys set and move while the four points are placed; the loupe rests on it.
  void set_wanted_point(Fiducial which);
  [[nodiscard]] const Loupe& loupe() const { return loupe_->loupe(); }

  /// The next clicks on the skin are wanted as points (fiducials, today's marks) instead of moving the coil.
  void set_pointing(bool pointing) { hand_->set_pointing(pointing); }
  [[nodiscard]] bool is_pointing() const { return hand_->is_pointing(); }
  /// The coil follows the hand only where there is one to see.
  void set_coil_movable(bool movable) { hand_->set_coil_movable(movable); }

  /// Whether the stage shows that the keys go to it.
  void set_focus_frame(bool shown) { focus_frame_ = shown; }
  /// How much larger than usual marks and type are, for a class that sits further away; and times how much
  /// the window's letters were chosen larger, as far as the stage has room for numbers and legend beside the
  /// head.
  void set_type_scale(double factor, double chosen = 1);
  [[nodiscard]] double type_scale() const;

  /// By a picture that lies over it: nothing is written there.
  void set_covered(const QRect& part);

  [[nodiscard]] const viewer::Stage& stage() const { return subject_->stage(); }
  [[nodiscard]] const BareSkin& bare() const { return subject_->bare(); }
  /// The picture as it is now.
  [[nodiscard]] QImage picture();
  /// What it is drawn in, whose events tell of each drawing.
  [[nodiscard]] vtkRenderWindow* render_window() const { return canvas_.window(); }
  /// Stage pixel (device pixels) of a widget position.
  [[nodiscard]] viewer::Pixel pixel_of(const QPointF& at) const;
  /// Widget position of a point in space.
  [[nodiscard]] QPointF position_of(const Eigen::Vector3d& point) const;

signals:
  void coil_moved(const geometry::SurfacePoint& to);
  void coil_turned(double by_deg);
  /// Along the skin, mm: forward (toward the nose) and outward.
  void coil_nudged(double forward_mm, double outward_mm);
  void coil_put_down();
  /// What was dragged, coil, point or camera.
  void let_go();
  void spot_clicked(int row, int column);
  void skin_pointed(const Eigen::Vector3d& at);
  void fiducial_dragged(Fiducial which, const Eigen::Vector3d& to);

protected:
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  bool event(QEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

private:
  void connect_parts();
  /// Less where the camera, the coil or the case goes on moving.
  void choose_quality();
  /// Of case, coil or camera; one soon after another is drawn as what moves is, until they rest.
  void one_change();
  /// Places marks and labels at once, and has the picture drawn when Qt paints next.
  void redraw();
  void draw_now();
  void place_loupe();
  /// In pixels of the screen.
  [[nodiscard]] QSize size_px() const;
  void draw_over_picture(QPainter& painter) const;
  void draw_loupe_frame(QPainter& painter) const;

  Canvas canvas_;
  std::unique_ptr<StageSubject> subject_;
  std::unique_ptr<StageCamera> camera_;
  std::unique_ptr<LoupeGuide> loupe_;
  std::unique_ptr<StageHand> hand_;
  bool held_ = false, to_be_drawn_ = false, focus_frame_ = true;
  double type_scale_ = 1, chosen_type_ = 1;
  QTimer rests_;
  QElapsedTimer since_changed_;
};

}  // namespace scalpmark::window
