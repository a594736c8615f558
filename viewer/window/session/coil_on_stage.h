#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

#include "viewer/window/session/held_coil.h"
#include "viewer/window/session/session.h"

namespace scalpmark::window {

/// The coil that is looked around with: laid on a place of the plan, or held in the hand wherever it can lie
/// on the skin. Nothing here is an edit of the case.
class CoilOnStage : public QObject {
  Q_OBJECT
public:
  explicit CoilOnStage(Session& session, QObject* parent = nullptr);

  [[nodiscard]] const HeldCoil& coil() const { return coil_; }
  void lay_on(viewer::CoilOn place);
  void lay_on_spot(int row, int column);
  /// The same, where something else than the user's hand decides on the spot.
  void follow_spot(int row, int column);
  // By hand; where the coil cannot be laid it stays:
  void move_to(const geometry::SurfacePoint& at);
  void turn(double by_deg);
  /// Along the skin.
  void nudge(double forward_mm, double outward_mm);

  /// Where it lay before or after something that `handled` told of, by what the case says now.
  void restore(const HeldCoil& coil);
  /// The drag is over; the next is another.
  void put_down() { since_handled_.invalidate(); }
  /// Lies there from now on, without a word: who asks shows the stage anew.
  void put_back(viewer::CoilOn place = viewer::CoilOn::treatment);
  /// A coil in the hand stays where it is when the case changes; what it is laid by may have changed. Without
  /// a word, too.
  void follow_case();

signals:
  void laid();
  /// The user laid it there, or moved it; it was there before. What has the same `burst` is one movement.
  void handled(const QString& what, const scalpmark::window::HeldCoil& before, const QString& burst);
  /// Why it cannot be moved on.
  void refused(const QString& sentence);

private:
  [[nodiscard]] geometry::SurfacePoint pulse_point() const;
  void lay(const HeldCoil& coil);
  void lay_by_hand(const HeldCoil& coil, const QString& what);
  void hold(const geometry::SurfacePoint& at, std::optional<double> angle_deg, const QString& what);

  Session& session_;
  HeldCoil coil_;
  QTimer rests_;
  QElapsedTimer since_handled_;
  int movement_ = 0;  ///< counts them
};

}  // namespace scalpmark::window
