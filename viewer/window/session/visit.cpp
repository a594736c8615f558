#include "viewer/window/session/visit.h"

#include <cmath>
#include <exception>

#include "geometry/plan/plan_cortex.h"
#include "viewer/words/found_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

Visit::Visit(Session& session, QObject* parent) : QObject(parent), session_(session) {
  // Marks belong to a head; another head starts without any.
  connect(&session, &Session::head_changed, this, &Visit::forget);
  connect(&session, &Session::changed, this, &Visit::find_awaited);
}

void Visit::set(TodaysMark which, const geometry::SurfacePoint& at) {
  marks_[static_cast<std::size_t>(which)] = at;
  readings_[static_cast<std::size_t>(which)] = {};
  found_[static_cast<std::size_t>(which)] = {};
  awaited_[static_cast<std::size_t>(which)] = false;
  work_out();
  // For the tape distances of the coil as laid. Asked for once: whoever gives them up is not asked again.
  if (check_) session_.want_fields();
}

QString Visit::set(TodaysMark which, const geometry::TapeReadings& readings) {
  const auto i = static_cast<std::size_t>(which);
  readings_[i] = readings;
  if (count_of(readings) < 2 || !session_.is_ready()) return {};
  awaited_[i] = !session_.has_fields();
  if (awaited_[i]) {
    session_.want_fields();
    return {};
  }
  QString problem = find(i);
  if (problem.isEmpty()) work_out();
  return problem;
}

QString Visit::find(std::size_t which) {
  try {
    found_[which] = geometry::find_mark(geometry::TapeFinder(session_.head().head), readings_[which]);
    take_found(which);
    return {};
  } catch (const std::exception& error) {
    return viewer::translated(error);
  }
}

void Visit::take_found(std::size_t which) {
  const geometry::FoundMark& found = found_[which];
  marks_[which].reset();
  if (found.taken) marks_[which] = found.places[*found.taken].point;
}

void Visit::choose(TodaysMark which, std::size_t place) {
  const auto i = static_cast<std::size_t>(which);
  if (place >= found_[i].places.size()) return;
  found_[i].taken = place;
  found_[i].nearest_to_plan = false;
  take_found(i);
  work_out();
}

void Visit::choose_nearest_to_plan(TodaysMark which) {
  const auto i = static_cast<std::size_t>(which);
  if (found_[i].places.empty() || !session_.is_ready()) return;
  const geometry::Placement& planned = session_.plan().treatment;
  const geometry::Head& head = session_.head().head;
  geometry::take_nearest(
      found_[i], head,
      head.skin().closest(which == TodaysMark::edge ? planned.mark.value_or(planned.edge) : planned.wanted));
  take_found(i);
  work_out();
}

geometry::TapeReadings Visit::tapes_to_keep(TodaysMark which) const {
  if (count_of(readings(which)) >= 2) return readings(which);
  const auto& at = mark(which);
  if (!at || !session_.has_fields()) return {};
  geometry::TapeReadings tapes = geometry::tapes_to(session_.head().head, *at);
  for (std::optional<double>* mm :
       {&tapes.vertex_mm, &tapes.nasion_mm, &tapes.left_tragus_mm, &tapes.right_tragus_mm})
    *mm = std::round(**mm);
  return tapes;
}

std::optional<TodaysMark> Visit::asked() const {
  for (const TodaysMark which : {TodaysMark::site, TodaysMark::edge})
    if (const geometry::FoundMark& mark = found(which); !mark.places.empty() && !mark.taken) return which;
  return {};
}

QString Visit::about(TodaysMark which) const {
  const geometry::FoundMark& mark = found(which);
  if (mark.places.empty() || !session_.is_ready()) return {};
  return viewer::translated(
      viewer::found_sentence(mark, geometry::apart_mm(session_.head().head, mark.places)));
}

QString Visit::doubt() const {
  for (const TodaysMark which : {TodaysMark::site, TodaysMark::edge})
    if (const geometry::FoundMark& mark = found(which); !mark.places.empty() && !mark.is_sure())
      return about(which);
  return {};
}

void Visit::find_awaited() {
  // Without a mark an edit is nothing to a visit, and whoever shows it need not draw anew.
  if (!marks_[0] && !marks_[1] && !awaited_[0] && !awaited_[1] && !asked() && !check_ && problem_.isEmpty() &&
      brim_ == geometry::BrimReadings{})
    return;
  QString problem;
  for (std::size_t i = 0; i < awaited_.size(); ++i)
    if (awaited_[i] && session_.has_fields()) {
      awaited_[i] = false;
      if (const QString one = find(i); !one.isEmpty()) problem = one;
    } else if (awaited_[i] && !session_.fields_are_wanted()) {
      awaited_[i] = false;
      problem = tr("Working out tape distances was cut short; enter the distances again.");
    }
  work_out();
  if (problem.isEmpty()) return;
  problem_ = problem;
  emit changed();
}

void Visit::forget() {
  marks_ = {};
  readings_ = {};
  found_ = {};
  awaited_ = {};
  brim_ = {};
  work_out();
}

QString Visit::set(const geometry::BrimReadings& readings) {
  brim_ = readings;
  const QString problem = work_out_cap();
  emit changed();
  return problem;
}

QString Visit::work_out_cap() {
  cap_.reset();
  cap_veil_.reset();
  const geometry::BrimHeights& h = brim_.heights;
  const int count = h.nasion_mm.has_value() + h.left_tragus_mm.has_value() + h.right_tragus_mm.has_value() +
                    h.inion_mm.has_value();
  if (count < 2 || !session_.is_ready()) return {};
  try {
    const geometry::Head& head = session_.head().head;
    const geometry::Case& the_case = session_.case_file().the_case;
    cap_ = geometry::cap_today(head, the_case, session_.plan(), brim_, limits_);
    cap_->check.as_laid = geometry::with_cortex(std::move(cap_->check.as_laid), session_.head().cortex.get());
    cap_veil_ = std::make_shared<const geometry::CapVeil>(
        geometry::cap_veil(head, geometry::cap_on(head, the_case.cap.brim_over_nasion_mm), cap_->found.slip));
    return {};
  } catch (const std::exception& error) {
    return viewer::translated(error);
  }
}

void Visit::set_limits(const geometry::CheckLimits& limits) {
  limits_ = limits;
  work_out();
}

void Visit::work_out() {
  check_.reset();
  problem_.clear();
  if (session_.is_ready() && marks_[0] && marks_[1]) try {
      check_ = geometry::check_marks(session_.head().head, session_.case_file().the_case, session_.plan(),
                                     *marks_[0], *marks_[1], limits_, session_.tapes());
      check_->as_laid = geometry::with_cortex(std::move(check_->as_laid), session_.head().cortex.get());
    } catch (const std::exception& error) {
      problem_ = viewer::translated(error);
    }
  if (const QString problem = work_out_cap(); problem_.isEmpty()) problem_ = problem;
  emit changed();
}

}  // namespace scalpmark::window
