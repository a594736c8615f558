#include "viewer/window/visit.h"

#include <exception>

namespace scalpmark::window {

Visit::Visit(Session& session, QObject* parent) : QObject(parent), session_(session) {
  // Marks belong to a head; another head starts without any.
  connect(&session, &Session::head_changed, this, &Visit::forget);
  connect(&session, &Session::changed, this, &Visit::work_out);
}

void Visit::set(TodaysMark which, const geometry::SurfacePoint& at) {
  marks_[static_cast<std::size_t>(which)] = at;
  readings_[static_cast<std::size_t>(which)] = {};
  work_out();
}

QString Visit::set(TodaysMark which, const geometry::TapeReadings& readings) {
  const auto i = static_cast<std::size_t>(which);
  readings_[i] = readings;
  const int count = readings.vertex_mm.has_value() + readings.nasion_mm.has_value() +
                    readings.left_tragus_mm.has_value() + readings.right_tragus_mm.has_value();
  if (count < 2 || !session_.is_ready()) return {};
  if (!session_.has_tapes())
    return tr("The tape distances of this head are not worked out yet; enter this again when they are.");
  try {
    const geometry::Placement& planned = session_.plan().treatment;
    const auto& edge = planned.edge_mark.by(session_.kept().entered.coil.mark_rule);
    const geometry::Surface& skin = session_.head().head.skin();
    const geometry::SurfacePoint near =
        skin.closest(which == TodaysMark::edge && edge ? *edge : planned.pulse);
    marks_[i] = geometry::find_by_tapes(session_.head().head, readings, &near).point;
  } catch (const std::exception& error) {
    return QString::fromUtf8(error.what());
  }
  work_out();
  return {};
}

void Visit::forget() {
  marks_ = {};
  readings_ = {};
  work_out();
}

void Visit::set_limits(const geometry::CheckLimits& limits) {
  limits_ = limits;
  work_out();
}

void Visit::work_out() {
  check_.reset();
  problem_.clear();
  if (session_.is_ready() && marks_[0] && marks_[1]) try {
      check_ = geometry::check_marks(session_.head().head, session_.kept().entered, session_.plan(),
                                     *marks_[0], *marks_[1], limits_);
    } catch (const std::exception& error) {
      problem_ = QString::fromUtf8(error.what());
    }
  emit changed();
}

}  // namespace scalpmark::window
