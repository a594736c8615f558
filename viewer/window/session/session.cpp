#include "viewer/window/session/session.h"

#include <QFileInfo>
#include <utility>

#include "geometry/base/message.h"
#include "geometry/plan/plan_cortex.h"
#include "geometry/plan/solve.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace fs = std::filesystem;

namespace {

QString sentence(const std::exception& error) {
  return viewer::translated(error);
}

bool is_nifti(const QString& path) {
  return path.endsWith(QLatin1String(".nii"), Qt::CaseInsensitive) ||
         path.endsWith(QLatin1String(".nii.gz"), Qt::CaseInsensitive);
}

}  // namespace

Session::Session(const QString& recovery_folder, QObject* parent)
    : QObject(parent),
      history_(models::default_case()),
      store_(history_, recovery_folder),
      extras_(in_force_, heads_, jobs_, history_) {
  connect(&store_, &CaseStore::refused, this, &Session::refused);
  connect(&jobs_, &HeadJobs::working, this, &Session::working);
  connect(&jobs_, &HeadJobs::rested, this, &Session::rested);
  connect(&jobs_, &HeadJobs::laid, this, &Session::loaded);
  connect(&jobs_, &HeadJobs::failed, this, &Session::loading_failed);
  connect(&extras_, &HeadExtras::changed, this, &Session::changed);
  connect(&extras_, &HeadExtras::no_cortex, this, &Session::no_cortex);
  connect(&placing_, &Placing::changed, this, &Session::unplaced_changed);
}

// --- edits

QString Session::change(const QString& what, const std::function<void(models::CaseFile&)>& edit,
                        const QString& burst) {
  models::CaseFile edited = case_file();
  edit(edited);
  if (QString why = why_locked(edited); !why.isEmpty()) return why;
  if (pending_ && jobs_.current()) {
    // The head being loaded gets the change too; the case in force only where it is not about the head.
    const bool about_head = head_key(edited) != head_key(case_file());
    Pending pending = *pending_;
    edit(pending.case_file);
    if (about_head) return put_in_force(std::move(pending));
    pending_->case_file = pending.case_file;
    if (!is_ready()) return {};
  }
  if (edited == case_file()) return {};
  return put_in_force(pending_edit(std::move(edited), what, burst));
}

QString Session::why_locked(const models::CaseFile& edited) const {
  if (!locked_ || same_plan(edited, case_file())) return {};
  return tr(
      "The plan is locked, since it was saved; unlock it to change it (Ctrl+L, or the button in the last step).");
}

void Session::set_locked(bool locked) {
  if (locked == locked_) return;
  locked_ = locked;
  emit saved_changed();
}

void Session::undo() {
  if (!history_.can_undo()) return;
  if (const QString why = why_locked(history_.before()); !why.isEmpty()) {
    emit refused(why);
    return;
  }
  if (const QString problem = put_in_force({history_.before(), Purpose::undo, {}, {}, file(), false, {}});
      !problem.isEmpty())
    emit refused(problem);
}

void Session::redo() {
  if (!history_.can_redo()) return;
  if (const QString why = why_locked(history_.after()); !why.isEmpty()) {
    emit refused(why);
    return;
  }
  if (const QString problem = put_in_force({history_.after(), Purpose::redo, {}, {}, file(), false, {}});
      !problem.isEmpty())
    emit refused(problem);
}

Session::Pending Session::pending_edit(models::CaseFile case_file, const QString& what,
                                       const QString& burst) const {
  Pending pending{std::move(case_file), Purpose::edit, what, burst, file(), false, {}};
  const models::HeadSource &next = pending.case_file.head, &now = this->case_file().head;
  const bool same_file =
      next.kind == now.kind && next.unit == now.unit &&
      head_path(next, pending.case_file.folder) == head_path(now, this->case_file().folder);
  if (is_ready() && next.kind != models::HeadKind::generic && same_file)
    pending.known = KnownSkin{head().head.skin(), head().description, head().notes};
  return pending;
}

QString Session::put_in_force(Pending pending) {
  const PreparedHead* known = heads_.find(pending.case_file);
  if (!known) {
    stop_loading();
    pending_ = std::move(pending);
    start_loading();
    return {};
  }
  try {
    const PreparedHead on = *known;
    // What is being loaded has been overtaken; a plain edit goes into it too (see change()).
    if (pending_ && pending.purpose != Purpose::edit) stop_loading();
    commit(pending, on);
    return {};
  } catch (const std::exception& error) {
    return sentence(error);
  }
}

void Session::commit(const Pending& pending, const PreparedHead& on) {
  const bool other_head = on.head != in_force_.on.head;
  PlanInForce next{on, in_force_.plan, in_force_.has_tapes};
  if (other_head || !next.plan || !same_plan(pending.case_file, case_file())) {
    next.has_tapes = on.head->head.has_fields();
    next.plan = std::make_shared<geometry::Plan>(
        geometry::with_cortex(geometry::solve(on.head->head, pending.case_file.the_case,
                                              next.has_tapes ? geometry::TapeDistances::worked_out
                                                             : geometry::TapeDistances::left_out),
                              on.head->cortex.get()));
  }
  step_history(pending);
  in_force_ = std::move(next);
  if (other_head) extras_.start_over();
  heads_.remember(pending.case_file, in_force_.on);
  store_.belongs_to(pending.file);
  placing_.drop();
  if (other_head) emit head_changed();
  emit changed();
  emit saved_changed();
  extras_.go_on_soon();
}

void Session::step_history(const Pending& pending) {
  switch (pending.purpose) {
    case Purpose::edit:
      emit edited(history_.add(pending.case_file, pending.what, pending.burst));
      break;
    case Purpose::undo:
      history_.undo();
      emit edit_undone();
      break;
    case Purpose::redo:
      history_.redo();
      emit edit_redone();
      break;
    case Purpose::start:
      history_.start_over(pending.case_file);
      if (pending.unsaved) history_.mark_unsaved();
      locked_ = locks_when_kept_ && !pending.file.isEmpty() && !pending.unsaved;
      emit started();
      break;
  }
}

// --- long work

void Session::start_loading() {
  jobs_.begin(tr("Loading the head"), [this](const HeadJob& job) { extras_.head_is_prepared(job); })
      .load(pending_->case_file, pending_->known);
}

void Session::loaded() {
  const Pending pending = *std::exchange(pending_, std::nullopt);
  try {
    // Settings may have been changed while the head was loaded.
    commit(pending, {jobs_.current()->head(), {}, {}});
  } catch (const std::exception& error) {
    jobs_.end();
    emit refused(sentence(error));
    extras_.go_on();
  }
}

void Session::loading_failed(const QString& sentence) {
  stop_loading();
  emit refused(sentence);
  extras_.go_on();
}

void Session::stop_loading() {
  pending_.reset();
  jobs_.end();
}

void Session::cancel() {
  pending_.reset();
  extras_.cancel();
}

// --- files

void Session::start(const models::CaseFile& case_file, const QString& file) {
  if (const QString problem = put_in_force({case_file, Purpose::start, {}, {}, file, false, {}});
      !problem.isEmpty())
    emit refused(problem);
}

QString Session::open(const QString& path) {
  if (path.endsWith(QLatin1String(".json"), Qt::CaseInsensitive)) {
    try {
      const models::CaseFile opened = models::read_case(path.toStdString());
      heads_.clear();  // the head's file may have changed since it was read
      return put_in_force({opened, Purpose::start, {}, {}, QFileInfo(path).absoluteFilePath(), false, {}});
    } catch (const std::exception& error) {
      return sentence(error);
    }
  }
  if (!QFileInfo(path).isFile()) return tr("There is no file %1; choose another.").arg(path);
  models::HeadSource source;
  source.kind = is_nifti(path) ? models::HeadKind::mri : models::HeadKind::mesh;
  source.file = fs::absolute(path.toStdString());
  open_skin(source, {});
  return {};
}

QString Session::save(const QString& path) {
  try {
    const models::CaseFile moved = store_.write(path);
    history_.replace_now(moved);
    if (is_ready()) heads_.remember(moved, in_force_.on);
    history_.mark_saved();
    history_.end_burst();
    locked_ = locks_when_kept_;
    emit saved_changed();
    return {};
  } catch (const std::exception& error) {
    return sentence(error);
  }
}

void Session::recover(const Leftover& leftover) {
  if (const QString problem =
          put_in_force({leftover.case_file, Purpose::start, {}, {}, leftover.file, true, {}});
      !problem.isEmpty())
    emit refused(problem);
}

// --- the four points

void Session::open_skin(const models::HeadSource& source, const fs::path& folder) {
  stop_loading();
  jobs_
      .begin(tr("Reading %1").arg(QString::fromStdString(source.file.filename().string())),
             [this, source, folder](const HeadJob& job) {
               UnplacedHead head{source, folder, job.skin()->skin, job.skin()->notes, {}};
               jobs_.end();
               placing_.begin(std::move(head));
               extras_.go_on();
             })
      .read_skin(source, folder);
}

QString Session::use_placed() {
  if (!unplaced() || !unplaced()->complete()) return tr("Place all four points first.");
  if (QString problem = placing_problem(); !problem.isEmpty()) return problem;
  const UnplacedHead& from = *unplaced();
  models::CaseFile edited = case_file();
  edited.head = from.source;
  edited.head.file = head_path(from.source, from.folder);
  edited.head.fiducials = from.fiducials();
  if (QString why = why_locked(edited); !why.isEmpty()) return why;
  const QString name = QString::fromStdString(from.source.file.filename().string());
  Pending pending = pending_edit(std::move(edited), tr("Head from %1").arg(name), {});
  pending.known = KnownSkin{from.skin, geometry::Message::verbatim(name.toStdString()), from.notes};
  return put_in_force(std::move(pending));
}

void Session::place_anew() {
  if (!is_ready() || !case_file().head.fiducials) return;
  UnplacedHead again{case_file().head, case_file().folder, head().head.skin(), head().notes, {}};
  geometry::Fiducials now = head().head.fiducials().at;
  for (const Fiducial each : all_fiducials)
    again.placed[static_cast<std::size_t>(each)] = point_of(now, each);
  placing_.begin(std::move(again));
}

}  // namespace scalpmark::window
