#include "viewer/window/session/visit.h"

#include <cmath>
#include <exception>
#include <utility>

#include "geometry/plan/plan_cortex.h"
#include "viewer/words/found_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

QString name_of(TodaysMark which) {
  return which == TodaysMark::site ? Visit::tr("Today's site mark") : Visit::tr("Today's edge mark");
}

}  // namespace

Visit::Visit(Session& session, QObject* parent) : QObject(parent), session_(session) {
  // Marks belong to a head; another head starts without any.
  connect(&session, &Session::head_changed, this, &Visit::forget);
  connect(&session, &Session::changed, this, &Visit::find_awaited);
}

class Visit::Doing {
public:
  Doing(Visit& visit, QString what) : visit_(visit), what_(std::move(what)), before_(visit.now_) {}
  ~Doing() { emit visit_.did(what_, before_); }
  Doing(const Doing&) = delete;
  Doing& operator=(const Doing&) = delete;

private:
  Visit& visit_;
  QString what_;
  Entered before_;
};

void Visit::restore(const Entered& entered) {
  now_ = entered;
  if (now_.awaited[0] || now_.awaited[1])
    find_awaited();
  else
    work_out();
}

void Visit::set(TodaysMark which, const geometry::SurfacePoint& at) {
  const Doing doing(*this, name_of(which));
  now_.marks[static_cast<std::size_t>(which)] = at;
  now_.readings[static_cast<std::size_t>(which)] = {};
  now_.found[static_cast<std::size_t>(which)] = {};
  now_.awaited[static_cast<std::size_t>(which)] = false;
  work_out();
  // For the tape distances of the coil as laid. Asked for once: whoever gives them up is not asked again.
  if (check_) session_.want_fields();
}

QString Visit::set(TodaysMark which, const geometry::TapeReadings& readings) {
  const Doing doing(*this, name_of(which));
  const auto i = static_cast<std::size_t>(which);
  now_.readings[i] = readings;
  if (!session_.is_ready()) return {};
  now_.awaited[i] = count_of(readings) >= 2 && !session_.has_fields();
  // A mark that other tapes found is not where these say; nor, once there are enough of them, is one that was
  // clicked.
  if (count_of(readings) < 2 || now_.awaited[i]) {
    const bool stale = now_.awaited[i] || !now_.found[i].places.empty();
    if (stale && (now_.marks[i] || !now_.found[i].places.empty())) {
      now_.found[i] = {};
      take_found(i);
      work_out();
    }
    if (now_.awaited[i]) session_.want_fields();
    return {};
  }
  QString problem = find(i);
  work_out();
  return problem;
}

QString Visit::find(std::size_t which) {
  try {
    now_.found[which] = geometry::find_mark(geometry::TapeFinder(session_.head().head), now_.readings[which]);
    take_found(which);
    return {};
  } catch (const std::exception& error) {
    // What was found by other tapes is not where these say.
    now_.found[which] = {};
    take_found(which);
    return viewer::translated(error);
  }
}

void Visit::take_found(std::size_t which) {
  const geometry::FoundMark& found = now_.found[which];
  now_.marks[which].reset();
  if (found.taken) now_.marks[which] = found.places[*found.taken].point;
}

void Visit::choose(TodaysMark which, std::size_t place) {
  const auto i = static_cast<std::size_t>(which);
  if (place >= now_.found[i].places.size()) return;
  const Doing doing(*this, name_of(which));
  now_.found[i].taken = place;
  now_.found[i].nearest_to_plan = false;
  take_found(i);
  work_out();
}

void Visit::choose_nearest_to_plan(TodaysMark which) {
  const auto i = static_cast<std::size_t>(which);
  if (now_.found[i].places.empty() || !session_.is_ready()) return;
  const Doing doing(*this, name_of(which));
  const geometry::Placement& planned = session_.plan().treatment;
  const geometry::Head& head = session_.head().head;
  geometry::take_nearest(
      now_.found[i], head,
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
  if (check_ && geometry::site_is_open(session_.case_file().the_case))
    return tr(
        "No spot of the grid has answered yet, so nobody knows where the site is; say which did in the step "
        "of the site first.");
  for (const TodaysMark which : {TodaysMark::site, TodaysMark::edge})
    if (const geometry::FoundMark& mark = found(which); !mark.places.empty() && !mark.is_sure())
      return about(which);
  return {};
}

void Visit::find_awaited() {
  // Without a mark an edit is nothing to a visit, and whoever shows it need not draw anew.
  if (!now_.marks[0] && !now_.marks[1] && !now_.awaited[0] && !now_.awaited[1] && !asked() && !check_ &&
      problem_.isEmpty() && now_.brim == geometry::BrimReadings{})
    return;
  QString problem;
  for (std::size_t i = 0; i < now_.awaited.size(); ++i)
    if (now_.awaited[i] && session_.has_fields()) {
      now_.awaited[i] = false;
      if (const QString one = find(i); !one.isEmpty()) problem = one;
    } else if (now_.awaited[i] && !session_.fields_are_wanted()) {
      now_.awaited[i] = false;
      problem = tr("Working out tape distances was cut short; enter the distances again.");
    }
  work_out();
  if (problem.isEmpty()) return;
  problem_ = problem;
  emit changed();
}

void Visit::start_over() {
  const Doing doing(*this, tr("Check started over"));
  forget();
}

void Visit::forget() {
  const geometry::CheckLimits limits = now_.limits;
  now_ = {};
  now_.limits = limits;
  work_out();
}

QString Visit::set(const geometry::BrimReadings& readings) {
  const Doing doing(*this, tr("Cap"));
  now_.brim = readings;
  QString problem = work_out_cap();
  emit changed();
  return problem;
}

QString Visit::work_out_cap() {
  cap_.reset();
  cap_veil_.reset();
  const geometry::BrimHeights& h = now_.brim.heights;
  const int count = h.nasion_mm.has_value() + h.left_tragus_mm.has_value() + h.right_tragus_mm.has_value() +
                    h.inion_mm.has_value();
  if (count < 2 || !session_.is_ready()) return {};
  try {
    const geometry::Head& head = session_.head().head;
    const geometry::Case& the_case = session_.case_file().the_case;
    cap_ = geometry::cap_today(head, the_case, session_.plan(), now_.brim, now_.limits);
    cap_->check.as_laid = geometry::with_cortex(std::move(cap_->check.as_laid), session_.head().cortex.get());
    cap_veil_ = std::make_shared<const geometry::CapVeil>(
        geometry::cap_veil(head, geometry::cap_on(head, the_case.cap.brim_over_nasion_mm), cap_->found.slip));
    return {};
  } catch (const std::exception& error) {
    return viewer::translated(error);
  }
}

void Visit::set_limits(const geometry::CheckLimits& limits) {
  const Doing doing(*this, tr("Allowed distance and angle"));
  now_.limits = limits;
  work_out();
}

void Visit::work_out() {
  check_.reset();
  moves_ = {};
  problem_.clear();
  if (session_.is_ready() && now_.marks[0] && now_.marks[1]) try {
      check_ = geometry::check_marks(session_.head().head, session_.case_file().the_case, session_.plan(),
                                     *now_.marks[0], *now_.marks[1], now_.limits, session_.tapes());
      check_->as_laid = geometry::with_cortex(std::move(check_->as_laid), session_.head().cortex.get());
      moves_ = geometry::mark_moves(session_.head().head, session_.plan(), *now_.marks[0], *now_.marks[1]);
    } catch (const std::exception& error) {
      problem_ = viewer::translated(error);
    }
  if (const QString problem = work_out_cap(); problem_.isEmpty()) problem_ = problem;
  emit changed();
}

}  // namespace scalpmark::window
