#include "viewer/window/session/head_extras.h"

#include "geometry/plan/plan_cortex.h"
#include "geometry/plan/solve.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

constexpr int soon_ms = 120;  // between two edits of one movement, not between two thoughts

}  // namespace

HeadExtras::HeadExtras(PlanInForce& in_force, HeadCache& heads, HeadJobs& jobs, const CaseHistory& history,
                       QObject* parent)
    : QObject(parent), in_force_(in_force), heads_(heads), jobs_(jobs), history_(history) {
  soon_.setSingleShot(true);
  soon_.setInterval(soon_ms);
  connect(&soon_, &QTimer::timeout, this, &HeadExtras::go_on);
  connect(&jobs_, &HeadJobs::measured, this, &HeadExtras::measured);
}

void HeadExtras::go_on_soon() {
  if (in_force_.is_ready() && !in_force_.has_tapes && !tapes_given_up_ && !jobs_.current())
    soon_.start();
  else
    go_on();
}

void HeadExtras::go_on() {
  soon_.stop();
  if (!in_force_.is_ready()) return;
  const bool measure = !in_force_.has_tapes && !tapes_given_up_,
             cortex = cortex_wanted_ && !in_force_.has_cortex(),
             fields = fields_wanted_ && !in_force_.has_fields();
  if (!measure && !cortex && !fields) return;
  // What is being loaded comes first; so does what is being worked out for the head in force.
  if (const HeadJob* job = jobs_.current(); job && (!job->head() || job->head() == in_force_.on.head)) return;
  jobs_.end();  // it was for a head that is no longer in force
  if (measure)
    jobs_.begin(tr("Working out tape distances"), [this](const HeadJob& job) { head_is_prepared(job); })
        .measure(in_force_.on.head, history_.now(), in_force_.on.thin);
  else if (cortex)
    jobs_.begin(tr("Laying the brain under the skin"), [this](const HeadJob& job) { cortex_is_there(job); })
        .bring_cortex(in_force_.on.head, template_files_);
  else
    jobs_.begin(tr("Laying tapes over the whole head"), [this](const HeadJob&) { fields_are_there(); })
        .work_out_fields(in_force_.on.head);
}

void HeadExtras::work_out_tapes() {
  if (!in_force_.is_ready() || in_force_.has_tapes || jobs_.current()) return;
  tapes_given_up_ = false;
  go_on();
}

void HeadExtras::want_fields() {
  if (!in_force_.is_ready() || in_force_.has_fields()) return;
  fields_wanted_ = true;
  go_on();
}

void HeadExtras::want_cortex() {
  if (!in_force_.is_ready() || in_force_.has_cortex()) return;
  cortex_wanted_ = true;
  go_on();
}

void HeadExtras::measured() {
  const HeadJob& job = *jobs_.current();
  if (in_force_.has_tapes || job.head() != in_force_.on.head || !same_plan(job.case_file(), history_.now()))
    return;  // edited since
  in_force_.plan = job.plan();
  in_force_.has_tapes = true;
  emit changed();
}

void HeadExtras::head_is_prepared(const HeadJob& job) {
  heads_.set_thin(job.head(), job.thin());
  if (job.head() == in_force_.on.head) in_force_.on.thin = job.thin();
  jobs_.end();
  go_on_soon();
}

void HeadExtras::fields_are_there() {
  jobs_.end();
  if (!in_force_.has_tapes) {
    in_force_.plan = std::make_shared<geometry::Plan>(geometry::with_cortex(
        geometry::solve(in_force_.head(), history_.now().the_case), in_force_.on.head->cortex.get()));
    in_force_.has_tapes = true;
  }
  emit changed();
}

void HeadExtras::cortex_is_there(const HeadJob& job) {
  QStringList notes;
  for (const geometry::Message& note : job.cortex_notes()) notes << viewer::translated(note);
  const auto head = job.with_cortex();  // ours: the job ends before it is used
  heads_.set_cortex(job.head(), head, notes);
  const bool in_force = job.head() == in_force_.on.head;
  cortex_wanted_ = false;
  jobs_.end();
  if (in_force) {
    in_force_.on.cortex_notes = notes;
    if (head) {
      in_force_.on.head = head;
      in_force_.plan =
          std::make_shared<const geometry::Plan>(geometry::with_cortex(*in_force_.plan, head->cortex.get()));
    } else {
      emit no_cortex(notes.join(QLatin1Char(' ')));
    }
    emit changed();
  }
  go_on();
}

void HeadExtras::cancel() {
  const HeadJob* job = jobs_.current();
  if (!job) {
    if (!soon_.isActive()) return;
    soon_.stop();
    tapes_given_up_ = true;
    fields_wanted_ = false;
    emit changed();
    return;
  }
  if (job->brings_cortex()) {
    cortex_wanted_ = false;
    jobs_.end();
    go_on();
    return;
  }
  const bool tapes = job->head() && job->head() == in_force_.on.head;
  if (tapes) {
    tapes_given_up_ = !in_force_.has_tapes;
    fields_wanted_ = false;
  }
  jobs_.end();
  if (!tapes) {
    go_on();  // the head in force stays, and gets what it still lacks
    return;
  }
  emit changed();
}

}  // namespace scalpmark::window
