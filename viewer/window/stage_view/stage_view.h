#pragma once

#include <QVTKOpenGLNativeWidget.h>
#include <vtkNew.h>
#include <vtkRenderer.h>

#include <QElapsedTimer>
#include <QTimer>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "viewer/stage/drawing/blending.h"
#include "viewer/stage/stage.h"
#include "viewer/window/session/held_coil.h"
#include "viewer/window/session/session.h"
#include "viewer/window/stage_view/bare_skin.h"
#include "viewer/window/stage_view/loupe.h"

class QPainter;

namespace scalpmark::window {

/// A mark of today's visit, a landmark that was asked for, a line between two marks: drawn on the stage
/// besides the plan.
struct StageNote {
  viewer::Shape shape = viewer::Shape::disc;
  viewer::Colour colour;
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
  Eigen::Vector3d along = Eigen::Vector3d::UnitX();
  std::vector<Eigen::Vector3d> line;  ///< drawn instead of the shape, with the text at its middle
  QString text;
};
/// A note as it was drawn last.
struct DrawnNote {
  QString text;
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
  viewer::Box box;  ///< of the text
};

/// The stage in the window, and the hand that moves coil and camera on it.
///   drag the coil            moves it over the skin; it stays tangent
///   Ctrl and wheel, arrows   turn the coil (Left, Right; one degree, with Shift five)
///   Ctrl and arrows          move the coil by a millimetre (with Shift five)
///   drag elsewhere           turns the head; wheel zooms; right or middle drag, or Shift and drag, shifts
///   click a node             lays the coil on it
/// While the four points are placed on a skin, a loupe shows it magnified under the pointer or around the
/// point that is set; Enter sets the wanted point in the middle of the picture, Ctrl and arrows move it by a
/// millimetre. What is computed is asked of geometry/ by whoever listens; this widget only says what the hand
/// did.
class StageView : public QVTKOpenGLNativeWidget {
  Q_OBJECT
public:
  static constexpr int usual_glide_ms = 350;

  explicit StageView(QWidget* parent = nullptr);
  ~StageView() override;

  /// Shows a plan; the coil where `shown` says.
  void show_plan(const geometry::Head& head, const geometry::Case& entered, const geometry::Plan& plan,
                 const viewer::Shown& shown, std::vector<StageNote> notes);
  /// What stands in for the head while coil or camera move.
  void set_thin_skin(const std::optional<geometry::Surface>& thin) { stage_->set_thin_skin(thin); }
  /// Shows a skin whose four points are being placed.
  void show_bare(const UnplacedHead& head);
  [[nodiscard]] bool is_bare() const { return bare_shown_; }

  /// Draws only once for all that `changes` has shown and looked at.
  void draw_once(const std::function<void()>& changes);

  /// Turns to a view, in a short movement.
  void look(viewer::View view, int glide_ms = usual_glide_ms);
  /// Looks straight at a point of the plan's head, or of the bare skin, `across_mm` of it filling the
  /// picture.
  void look_at(const viewer::Gaze& gaze, const std::optional<Eigen::Vector3d>& at = {}, double across_mm = 0,
               int glide_ms = usual_glide_ms);
  [[nodiscard]] viewer::Gaze gaze() const;
  /// Movements may be switched off (for pictures and tests, and for people they make dizzy).
  void set_animated(bool animated) { animated_ = animated; }
  [[nodiscard]] bool is_animated() const { return animated_; }
  [[nodiscard]] bool is_moving() const { return animation_.isActive(); }

  /// The point that keys set and move while the four points are placed; the loupe rests on it.
  void set_wanted_point(Fiducial which);
  [[nodiscard]] const Loupe& loupe() const { return *loupe_; }

  /// The next clicks on the skin are wanted as points (fiducials, today's marks) instead of moving the coil.
  void set_pointing(bool pointing);
  [[nodiscard]] bool is_pointing() const { return pointing_; }
  /// The coil follows the hand only where there is one to see.
  void set_coil_movable(bool movable) { coil_movable_ = movable; }

  /// Whether the stage shows that the keys go to it.
  void set_focus_frame(bool shown) { focus_frame_ = shown; }
  /// How much larger than usual marks and type are, for a class that sits further away.
  void set_type_scale(double factor) { type_scale_ = factor; }
  /// The notes in sight.
  [[nodiscard]] const std::vector<DrawnNote>& drawn_notes() const { return drawn_; }

  [[nodiscard]] const viewer::Stage& stage() const { return *stage_; }
  [[nodiscard]] const BareSkin& bare() const { return *bare_; }
  /// The picture as it is now.
  [[nodiscard]] QImage picture();
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
  void node_clicked(int row, int column);
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
  void paintGL() override;

private:
  enum class Hand { none, turning, shifting, moving_coil, moving_point };
  struct Eye {
    viewer::Gaze gaze;
    Eigen::Vector3d focus = Eigen::Vector3d::Zero();
    double scale = 100, centre_x = 0, centre_y = 0;
  };

  [[nodiscard]] vtkRenderer* renderer() const { return bare_shown_ ? bare_renderer_ : plan_renderer_; }
  [[nodiscard]] const viewer::Sight& sight() const;
  [[nodiscard]] Eye eye() const;
  void aim(const Eye& eye);
  void set_eye(const Eye& eye);
  void glide_to(const Eye& to, int glide_ms = usual_glide_ms);
  /// Less where the camera, the coil or the case goes on moving.
  void choose_quality();
  /// Of case, coil or camera; one soon after another is drawn as what moves is, until they rest.
  void one_change();
  void stop_gliding();
  /// A hand moves the camera from now on.
  void leave_view();
  void turn(double around_deg, double over_deg);
  void shift(const QPointF& by);
  void zoom(double factor, const QPointF& about);
  [[nodiscard]] bool on_coil(const QPointF& at) const;
  void draw_notes();
  [[nodiscard]] viewer::Pixel place_for(const viewer::Pixel& at, const StageNote& note);
  void redraw();
  void draw_now();
  /// Puts the loupe where the pointer is, else on the point dragged or wanted; away where there is nothing.
  void place_loupe();
  void move_wanted_point(double right_mm, double up_mm);
  void draw_loupe_frame(QPainter& painter) const;
  [[nodiscard]] Eigen::Vector3d head_up() const;

  vtkNew<viewer::BlendingRenderer> plan_renderer_;
  vtkNew<vtkRenderer> bare_renderer_;
  std::unique_ptr<viewer::Stage> stage_;
  std::unique_ptr<BareSkin> bare_;
  std::unique_ptr<Loupe> loupe_;
  std::unique_ptr<viewer::Ink> note_ink_;
  std::unique_ptr<viewer::Overlay> note_text_;
  unsigned long note_observer_ = 0;
  bool bare_shown_ = false, was_shown_ = false;
  bool held_ = false, to_be_drawn_ = false;

  std::optional<geometry::Head> head_;
  geometry::Plan plan_;
  geometry::Case entered_;
  geometry::Placement placement_;
  bool coil_shown_ = false;
  std::vector<StageNote> notes_;
  std::vector<DrawnNote> drawn_;
  double type_scale_ = 1;

  Hand hand_ = Hand::none;
  QPointF pressed_at_, last_at_, coil_from_hand_;
  bool dragged_ = false;
  bool pointing_ = false, coil_movable_ = true, animated_ = true, focus_frame_ = true;
  Fiducial dragged_point_ = Fiducial::nasion, wanted_point_ = Fiducial::nasion;
  std::optional<QPointF> hovering_;  // over a bare skin
  QTimer animation_, rests_;
  QElapsedTimer since_, since_changed_;
  int glide_ms_ = usual_glide_ms;
  Eye from_, to_;
  std::optional<viewer::View>
      view_;  // re-fitted when the window is resized, until the camera is moved by hand
};

}  // namespace scalpmark::window
