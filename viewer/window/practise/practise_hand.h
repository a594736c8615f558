#pragma once

#include <QKeyEvent>
#include <QMouseEvent>
#include <QObject>
#include <optional>

#include "viewer/window/practise/exercise_run.h"
#include "viewer/window/stage_view/stage_view.h"

namespace scalpmark::window {

/// What can be in the trainee's hand.
enum class Tool { none, finger, tape, point, line, cross, coil };

/// Mouse and keys on the stage during an exercise: what they do with the tool in the hand. What is no
/// business of a tool's (a drag beside the head, arrows with Alt) it leaves to the stage, which turns the
/// head.
///   F, T, P, L, X, C         finger, tape, pencil point, line, cross, coil; Esc puts the tool away
///   press or drag            feels, pulls the tape (by its end: pulls it on), draws; the coil is carried by
///                            its handle and turned by its wings
///   right button, or H       holds the tape where its end is; O closes it around the head
///   Ctrl and arrows          move the hand by a millimetre (with Shift five)
///   Space, Enter             set the tool down there, and lift it
///   Left, Right              turn the coil by a degree (with Shift five), as Ctrl and wheel do
///   Delete                   takes tape or coil off the head
class PractiseHand : public QObject {
  Q_OBJECT
public:
  PractiseHand(StageView& stage, ExerciseRun& run);

  [[nodiscard]] Tool tool() const { return tool_; }
  void take(Tool tool);
  /// Where keys hold the tool; empty while a mouse does.
  [[nodiscard]] const std::optional<Eigen::Vector3d>& by_keys() const { return by_keys_; }
  /// Listens, or leaves everything to the stage.
  void set_listening(bool listening);
  /// Nothing is in its grip any more: another task.
  void let_go();

signals:
  void tool_changed(Tool tool);
  /// The hand that keys move is elsewhere.
  void moved();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  static constexpr double with_shift = 5;  // times as much
  enum class Grip { none, feeling, pulling, drawing, carrying, turning };

  bool press(const QMouseEvent& event);
  bool move(const QMouseEvent& event);
  bool release(const QMouseEvent& event);
  bool wheel(const QWheelEvent& event);
  bool key(const QKeyEvent& event);
  bool arrow(double right, double up, Qt::KeyboardModifiers with);
  bool take_by_key(int key);
  void set_down_by_key();
  void move_hand(double right_mm, double up_mm);

  bool grip_coil(const QPointF& at);
  bool grip_skin(const QPointF& at);
  void pull_to(const QPointF& at);
  [[nodiscard]] std::optional<Eigen::Vector3d> skin_at(const viewer::Pixel& at) const;
  /// The part of the coil that is seen there: "handle", or any other; empty beside it.
  [[nodiscard]] std::string coil_part_at(const QPointF& at) const;
  [[nodiscard]] bool is_near(const Eigen::Vector3d& place, const QPointF& at) const;
  [[nodiscard]] bool hand_in_sight() const;
  [[nodiscard]] bool near_start(const Eigen::Vector3d& end) const;
  /// Along the picture's horizontal, which is how a line is drawn that nobody has given a direction.
  [[nodiscard]] Eigen::Vector3d across_picture() const;
  void draw(const Eigen::Vector3d& from, const Eigen::Vector3d& to);
  void show_cursor(const QPointF& at);

  StageView& stage_;
  ExerciseRun& run_;
  Tool tool_ = Tool::none;
  Grip grip_ = Grip::none;
  bool listening_ = false, pulling_by_keys_ = false;
  QPointF last_at_, coil_from_hand_px_;
  Eigen::Vector3d pressed_on_ = Eigen::Vector3d::Zero(), drawn_to_ = Eigen::Vector3d::Zero();
  std::optional<Eigen::Vector3d> by_keys_;
};

}  // namespace scalpmark::window
