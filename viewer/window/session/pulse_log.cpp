#include "viewer/window/session/pulse_log.h"

#include <algorithm>

#include "geometry/base/ranges.h"

namespace scalpmark::window {

using geometry::GridPosition;
using geometry::SeenAnswer;

PulseLog::PulseLog(Session& session, QObject* parent)
    : QObject(parent), session_(session), clock_([] { return QDateTime::currentDateTime(); }) {
  // Another head is another patient's, or another file: what was at hand belongs to the one before.
  connect(&session, &Session::head_changed, this, [this] {
    is_chosen_ = false;
    shown_.reset();
    spot_ = {};
    output_percent_ = geometry::CountingSteps{}.first_percent;
  });
}

geometry::Date PulseLog::today() const {
  const QDate day = clock_().date();
  return {day.year(), day.month(), day.day()};
}

// --- at hand

void PulseLog::set_spot(const GridPosition& spot) {
  if (spot == spot_) return;
  spot_ = spot;
  emit changed();
  emit spot_changed();
}

void PulseLog::step_spot(int by) {
  const int count = static_cast<int>(geometry::spiral.size());
  const int next = (static_cast<int>(geometry::place_in_spiral(spot_)) + by % count + count) % count;
  set_spot(geometry::spiral[static_cast<std::size_t>(next)]);
}

void PulseLog::set_output(int percent) {
  const int kept = std::clamp(percent, static_cast<int>(geometry::ranges::output_percent.low),
                              static_cast<int>(geometry::ranges::output_percent.high));
  if (kept == output_percent_) return;
  output_percent_ = kept;
  emit changed();
}

void PulseLog::step_output(int by, bool fine) {
  const geometry::AnswerSettings& steps = session_.case_file().the_case.answers;
  set_output(output_percent_ + by * (fine ? steps.fine_percent : steps.step_percent));
}

// --- visits

std::optional<std::size_t> PulseLog::shown() const {
  const geometry::Visits& visits = session_.case_file().the_case.visits;
  if (is_chosen_) {
    if (!shown_ || *shown_ < visits.size()) return shown_;
    return {};  // its visit was undone
  }
  if (!visits.empty() && visits.back()->date == today()) return visits.size() - 1;
  return {};
}

void PulseLog::show_visit(std::optional<std::size_t> visit) {
  is_chosen_ = true;
  shown_ = visit;
  emit changed();
  emit other_visit_shown();
}

const geometry::Visit* PulseLog::visit() const {
  const auto at = shown();
  return at ? &*session_.case_file().the_case.visits[*at] : nullptr;
}

bool PulseLog::is_open() const {
  const geometry::Visit* now = visit();
  return now && now->date == today();
}

QString PulseLog::edit_visit(const QString& what, const std::function<void(geometry::Visit&)>& edit) {
  return edit_at(shown(), what, edit);
}

QString PulseLog::edit_today(const QString& what, const std::function<void(geometry::Visit&)>& edit) {
  return edit_at(is_open() ? shown() : std::nullopt, what, edit);
}

QString PulseLog::edit_at(std::optional<std::size_t> visit, const QString& what,
                          const std::function<void(geometry::Visit&)>& edit) {
  const std::size_t count = session_.case_file().the_case.visits.size();
  if (!visit && count >= geometry::most_visits)
    return tr("A case holds at most %1 visits; begin another case.").arg(geometry::most_visits);
  const bool was_chosen = std::exchange(is_chosen_, true);
  const auto was_shown = std::exchange(shown_, visit.value_or(count));
  QString problem = session_.change(what, [&](models::CaseFile& case_file) {
    geometry::Visits& visits = case_file.the_case.visits;
    geometry::Visit edited;
    edited.date = today();
    if (visit) edited = *visits[*visit];
    edit(edited);
    if (visit)
      visits[*visit] = edited;
    else
      visits.emplace_back(edited);
  });
  if (!problem.isEmpty()) {
    is_chosen_ = was_chosen;
    shown_ = was_shown;
    return problem;
  }
  session_.keep_recovery_copy();
  return {};
}

// --- pulses

QString PulseLog::log(SeenAnswer answer) {
  const QTime now = clock_().time();
  const geometry::LoggedPulse pulse{
      spot_, output_percent_, answer, geometry::TimeOfDay{now.hour(), now.minute(), now.second()}, {}};
  const geometry::Visit* open = is_open() ? visit() : nullptr;
  if (open && open->pulses.size() >= geometry::most_pulses)
    return tr("A visit holds at most %1 pulses; begin another.").arg(geometry::most_pulses);
  return edit_at(open ? shown() : std::nullopt, tr("Pulse"),
                 [&](geometry::Visit& visit) { visit.pulses.push_back(pulse); });
}

QString PulseLog::take_back() {
  const geometry::Visit* now = visit();
  if (!now || now->pulses.empty()) return tr("There is no pulse to take back.");
  return edit_visit(tr("Pulse taken back"), [](geometry::Visit& visit) { visit.pulses.pop_back(); });
}

QString PulseLog::correct(std::size_t pulse, SeenAnswer answer) {
  const geometry::Visit* now = visit();
  if (!now || pulse >= now->pulses.size() || now->pulses[pulse].answer == answer) return {};
  return edit_visit(tr("Pulse corrected"), [&](geometry::Visit& visit) {
    geometry::LoggedPulse& corrected = visit.pulses[pulse];
    if (!corrected.corrected_from) corrected.corrected_from = corrected.answer;
    corrected.answer = answer;
  });
}

// --- what they say

PulseLog::Asked PulseLog::asked_now() const {
  const geometry::Case& the_case = session_.case_file().the_case;
  Asked asked{{}, the_case.answers, the_case.hotspot, {session_.plan().start.pulse}};
  if (const auto at = shown()) asked.visit = the_case.visits[*at];
  for (const geometry::GridSpot& spot : session_.plan().grid) asked.pulses.push_back(spot.placement.pulse);
  return asked;
}

const std::shared_ptr<const geometry::VisitAnswers>& PulseLog::answers() {
  if (!session_.is_ready()) return answers_;
  Asked now = asked_now();
  if (answers_ && asked_ == now) return answers_;
  answers_ = std::make_shared<const geometry::VisitAnswers>(
      geometry::visit_answers(session_.plan(), session_.case_file().the_case, *now.visit));
  asked_ = std::move(now);
  return answers_;
}

const std::shared_ptr<const geometry::ThresholdAtSpot>& PulseLog::threshold() {
  if (!session_.is_ready()) return threshold_;
  Asked now = asked_now();
  if (threshold_asked_ == now && threshold_spot_ == spot_) return threshold_;
  // The map's own threshold is that of the hotspot; it need not be worked out twice.
  const auto& known = answers()->threshold;
  const auto found = known && known->spot == spot_
                         ? known
                         : geometry::threshold_at(session_.case_file().the_case, *now.visit, spot_);
  threshold_ = found ? std::make_shared<const geometry::ThresholdAtSpot>(*found) : nullptr;
  threshold_asked_ = std::move(now);
  threshold_spot_ = spot_;
  return threshold_;
}

}  // namespace scalpmark::window
