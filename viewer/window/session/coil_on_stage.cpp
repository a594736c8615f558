#include "viewer/window/session/coil_on_stage.h"

#include "geometry/head/on_head.h"
#include "geometry/paths/walk.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

constexpr int hand_at_rest_ms = 400;
constexpr int one_movement_ms = 1000;  // keys and notches of a wheel that follow each other sooner

bool same_place(const HeldCoil& a, const HeldCoil& b) {
  return a.on == b.on && !a.in_hand() &&
         (a.on != viewer::CoilOn::spot || (a.row == b.row && a.column == b.column));
}

}  // namespace

CoilOnStage::CoilOnStage(Session& session, QObject* parent) : QObject(parent), session_(session) {
  rests_.setSingleShot(true);
  rests_.setInterval(hand_at_rest_ms);
  connect(&rests_, &QTimer::timeout, &session_, &Session::want_fields);
}

void CoilOnStage::lay(const HeldCoil& coil) {
  if (!session_.is_ready()) return;
  coil_ = coil;
  // Its tape distances follow it once the head's fields are there; they are worked out while it rests.
  if (coil.in_hand() && !session_.has_fields())
    rests_.start();
  else
    rests_.stop();
  emit laid();
}

void CoilOnStage::lay_by_hand(const HeldCoil& coil, const QString& what) {
  if (!session_.is_ready()) return;
  const HeldCoil before = coil_;
  lay(coil);
  if (same_place(before, coil)) return;
  QString burst;
  if (coil.in_hand()) {
    if (!since_handled_.isValid() || since_handled_.elapsed() > one_movement_ms) ++movement_;
    since_handled_.start();
    burst = QStringLiteral("%1 %2").arg(what).arg(movement_);
  }
  emit handled(what, before, burst);
}

void CoilOnStage::lay_on(viewer::CoilOn place) {
  HeldCoil coil;
  coil.on = place;
  lay_by_hand(coil, tr("Coil laid down"));
}

void CoilOnStage::follow_spot(int row, int column) {
  HeldCoil coil;
  coil.on = viewer::CoilOn::spot;
  coil.row = row;
  coil.column = column;
  lay(coil);
}

void CoilOnStage::lay_on_spot(int row, int column) {
  HeldCoil coil;
  coil.on = viewer::CoilOn::spot;
  coil.row = row;
  coil.column = column;
  lay_by_hand(coil, tr("Coil laid on a spot"));
}

void CoilOnStage::hold(const geometry::SurfacePoint& at, std::optional<double> angle_deg,
                       const QString& what) {
  if (!session_.is_ready()) return;
  if (const auto held =
          hold_coil(session_.head(), session_.case_file().the_case, at, angle_deg, session_.tapes()))
    lay_by_hand(*held, what);
}

void CoilOnStage::restore(const HeldCoil& coil) {
  HeldCoil now = coil;
  if (coil.in_hand() && session_.is_ready())
    now = hold_coil(session_.head(), session_.case_file().the_case, coil.at, coil.angle_deg, session_.tapes())
              .value_or(HeldCoil{});
  lay(now);
}

void CoilOnStage::move_to(const geometry::SurfacePoint& at) {
  hold(at, coil_.angle_deg, tr("Coil moved"));
}

geometry::SurfacePoint CoilOnStage::pulse_point() const {
  return coil_.in_hand() ? coil_.at
                         : session_.head().head.skin().closest(placement_of(session_.plan(), coil_).pulse);
}

void CoilOnStage::turn(double by_deg) {
  if (!session_.is_ready()) return;
  double angle = placement_of(session_.plan(), coil_).angle_deg + by_deg;
  if (angle > 180) angle -= 360;
  if (angle < -180) angle += 360;
  hold(pulse_point(), angle, tr("Coil turned"));
}

void CoilOnStage::nudge(double forward_mm, double outward_mm) {
  if (!session_.is_ready()) return;
  const auto& head = session_.head().head;
  const geometry::SurfacePoint at = pulse_point();
  const geometry::Directions ways = geometry::directions_at(head, session_.case_file().the_case.side, at);
  const Eigen::Vector3d way = forward_mm * ways.forward + outward_mm * ways.outward;
  try {
    const geometry::Walk walk = geometry::walk(head.skin(), at, way.normalized(), way.norm());
    hold(walk.end, coil_.in_hand() ? coil_.angle_deg : std::nullopt, tr("Coil moved"));
  } catch (const std::exception& error) {
    emit refused(viewer::translated(error));
  }
}

void CoilOnStage::put_back(viewer::CoilOn place) {
  coil_ = {};
  coil_.on = place;
}

void CoilOnStage::follow_case() {
  if (!coil_.in_hand()) return;
  coil_ =
      hold_coil(session_.head(), session_.case_file().the_case, coil_.at, coil_.angle_deg, session_.tapes())
          .value_or(HeldCoil{});
}

}  // namespace scalpmark::window
