#include "viewer/window/session/session.h"

#include <QFileInfo>
#include <algorithm>

#include "geometry/base/text.h"
#include "geometry/plan/plan_cortex.h"
#include "geometry/plan/solve.h"
#include "models/files/error.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace fs = std::filesystem;

namespace {

constexpr int autosave_after_ms =
    1500;                              // long enough not to write at every key, short enough not to lose work
constexpr int soon_ms = 120;           // between two edits of one movement, not between two thoughts
constexpr std::size_t heads_kept = 4;  // a large head with its distance fields takes some 100 MB

QString sentence(const std::exception& error) {
  return viewer::translated(error);
}

// A relative head file means something else from another folder.
models::CaseFile moved_to(models::CaseFile kept, const fs::path& folder) {
  if (!kept.head.file.empty()) {
    const fs::path full = fs::absolute(head_path(kept.head, kept.folder)).lexically_normal();
    const fs::path relative = full.lexically_relative(fs::absolute(folder).lexically_normal());
    const bool below = !relative.empty() && *relative.begin() != "..";
    kept.head.file = below ? relative : full;
  }
  kept.folder = folder;
  return kept;
}

// Whether two cases differ in what is computed at all; a name for the sheet changes nothing, nor does how far
// off hands are.
bool same_plan(models::CaseFile a, models::CaseFile b) {
  a.entered.label.clear();
  b.entered.label.clear();
  a.entered.errors = b.entered.errors = {};
  return models::case_json(a) == models::case_json(b);
}

bool is_nifti(const QString& path) {
  return path.endsWith(QLatin1String(".nii"), Qt::CaseInsensitive) ||
         path.endsWith(QLatin1String(".nii.gz"), Qt::CaseInsensitive);
}

}  // namespace

Eigen::Vector3d& point_of(geometry::Fiducials& fiducials, Fiducial which) {
  switch (which) {
    case Fiducial::nasion:
      return fiducials.nasion;
    case Fiducial::inion:
      return fiducials.inion;
    case Fiducial::left_tragus:
      return fiducials.left_tragus;
    case Fiducial::right_tragus:
      break;
  }
  return fiducials.right_tragus;
}

bool UnplacedHead::complete() const {
  return std::all_of(placed.begin(), placed.end(), [](const auto& point) { return point.has_value(); });
}

std::string head_key(const models::CaseFile& kept) {
  std::string key;
  const auto add = [&](double value) { key += geometry::to_text(value, 6) + " "; };
  if (kept.head.kind == models::HeadKind::generic) {
    key = "generic ";
    for (const auto& tape : {kept.entered.tape_mm.nasion_inion_mm, kept.entered.tape_mm.tragus_tragus_mm,
                             kept.entered.tape_mm.circumference_mm})
      if (tape)
        add(*tape);
      else
        key += "- ";
    return key;
  }
  key = head_path(kept.head, kept.folder).string() + " ";
  if (kept.head.unit) add(static_cast<double>(*kept.head.unit));
  if (kept.head.fiducials)
    for (const auto& point : {kept.head.fiducials->nasion, kept.head.fiducials->inion,
                              kept.head.fiducials->left_tragus, kept.head.fiducials->right_tragus})
      for (int i = 0; i < 3; ++i) add(point[i]);
  return key;
}

Session::Session(const QString& recovery_folder, QObject* parent)
    : QObject(parent), history_(models::default_case()), recovery_(recovery_folder) {
  autosave_.setSingleShot(true);
  autosave_.setInterval(autosave_after_ms);
  connect(&autosave_, &QTimer::timeout, this, &Session::keep_recovery_copy);
  soon_.setSingleShot(true);
  soon_.setInterval(soon_ms);
  connect(&soon_, &QTimer::timeout, this, &Session::go_on);
}

Session::~Session() = default;

// --- edits

QString Session::change(const QString& what, const std::function<void(models::CaseFile&)>& edit,
                        const QString& burst) {
  models::CaseFile edited = kept();
  edit(edited);
  if (pending_ && job_) {
    // The head being loaded gets the change too; the case in force only where it is not about the head.
    const bool about_head = head_key(edited) != head_key(kept());
    Pending pending = *pending_;
    edit(pending.kept);
    if (about_head) return put_in_force(std::move(pending));
    pending_->kept = pending.kept;
    if (!is_ready()) return {};
  }
  if (models::case_json(edited) == models::case_json(kept()) && head_key(edited) == head_key(kept()))
    return {};
  return put_in_force(pending_edit(std::move(edited), what, burst));
}

void Session::undo() {
  if (!history_.can_undo()) return;
  if (const QString problem = put_in_force({history_.before(), Purpose::undo, {}, {}, file_, false, {}});
      !problem.isEmpty())
    emit refused(problem);
}

void Session::redo() {
  if (!history_.can_redo()) return;
  if (const QString problem = put_in_force({history_.after(), Purpose::redo, {}, {}, file_, false, {}});
      !problem.isEmpty())
    emit refused(problem);
}

Session::Pending Session::pending_edit(models::CaseFile kept, const QString& what,
                                       const QString& burst) const {
  Pending pending{std::move(kept), Purpose::edit, what, burst, file_, false, {}};
  const models::HeadSource &next = pending.kept.head, &now = this->kept().head;
  const bool same_file = next.kind == now.kind && next.unit == now.unit &&
                         head_path(next, pending.kept.folder) == head_path(now, this->kept().folder);
  if (head_ && next.kind != models::HeadKind::generic && same_file)
    pending.known = KnownSkin{head_->head.skin(), head_->description, head_->notes};
  return pending;
}

QString Session::put_in_force(Pending pending) {
  const Remembered* known = remembered(pending.kept);
  if (!known) {
    stop_job();
    pending_ = std::move(pending);
    start_job();
    return {};
  }
  try {
    const Remembered on = *known;
    // What is being loaded has been overtaken; a plain edit goes into it too (see change()).
    if (pending_ && pending.purpose != Purpose::edit) stop_job();
    commit(pending, on);
    return {};
  } catch (const std::exception& error) {
    return sentence(error);
  }
}

void Session::commit(const Pending& pending, const Remembered& on) {
  const bool other_head = on.head != head_;
  bool with_tapes = has_tapes_;
  std::shared_ptr<const geometry::Plan> plan = plan_;
  if (other_head || !plan || !same_plan(pending.kept, kept())) {
    with_tapes = on.head->head.has_fields();
    plan = std::make_shared<geometry::Plan>(geometry::with_cortex(
        geometry::solve(on.head->head, pending.kept.entered,
                        with_tapes ? geometry::TapeDistances::worked_out : geometry::TapeDistances::left_out),
        on.head->cortex.get()));
  }
  switch (pending.purpose) {
    case Purpose::edit:
      history_.add(pending.kept, pending.what, pending.burst);
      break;
    case Purpose::undo:
      history_.undo();
      break;
    case Purpose::redo:
      history_.redo();
      break;
    case Purpose::start:
      history_.start_over(pending.kept);
      if (pending.unsaved) history_.mark_unsaved();
      break;
  }
  file_ = pending.file;
  head_ = on.head;
  plan_ = std::move(plan);
  has_tapes_ = with_tapes;
  thin_ = on.thin;
  cortex_notes_ = on.cortex_notes;
  if (other_head) tapes_given_up_ = fields_wanted_ = cortex_wanted_ = false;
  remember(pending.kept);
  if (is_saved()) {
    autosave_.stop();
    recovery_.forget();
  } else {
    autosave_.start();
  }
  if (unplaced_) {
    unplaced_.reset();
    emit unplaced_changed();
  }
  if (other_head) emit head_changed();
  emit changed();
  emit saved_changed();
  go_on_soon();
}

// --- long work

HeadJob* Session::new_job() {
  job_ = std::make_unique<HeadJob>();
  HeadJob* const job = job_.get();
  connect(job, &HeadJob::progressed, this, [this, job](const QString& what, double fraction) {
    if (job == job_.get()) emit working(what, fraction);
  });
  connect(job, &HeadJob::measured, this, [this, job] {
    if (job == job_.get()) measured(*job);
  });
  connect(job, &HeadJob::failed, this, [this, job](const QString& problem) {
    if (job != job_.get()) return;
    stop_job();
    emit refused(problem);
    go_on();
  });
  return job;
}

void Session::start_job() {
  HeadJob* const job = new_job();
  connect(job, &HeadJob::laid, this, [this, job] {
    if (job != job_.get()) return;
    const Pending pending = *std::exchange(pending_, std::nullopt);
    try {
      // Settings may have been changed while the head was loaded.
      commit(pending, {{}, job->head(), {}, {}});
    } catch (const std::exception& error) {
      end_job();
      emit refused(sentence(error));
      go_on();
    }
  });
  connect(job, &HeadJob::finished, this, [this, job] {
    if (job == job_.get()) finished(*job);
  });
  emit working(tr("Loading the head"), 0);
  job->load(pending_->kept, pending_->known);
}

void Session::go_on_soon() {
  if (is_ready() && !has_tapes_ && !tapes_given_up_ && !job_)
    soon_.start();
  else
    go_on();
}

void Session::go_on() {
  soon_.stop();
  if (!is_ready()) return;
  const bool measure = !has_tapes_ && !tapes_given_up_, cortex = cortex_wanted_ && !has_cortex(),
             fields = fields_wanted_ && !has_fields();
  if (!measure && !cortex && !fields) return;
  // What is being loaded comes first; so does what is being worked out for the head in force.
  if (job_ && (pending_ || !job_->head() || job_->head() == head_)) return;
  if (job_) end_job();  // for a head that is no longer in force
  HeadJob* const job = new_job();
  if (measure) {
    connect(job, &HeadJob::finished, this, [this, job] {
      if (job == job_.get()) finished(*job);
    });
    emit working(tr("Working out tape distances"), 0);
    job->measure(head_, kept(), thin_);
  } else if (cortex) {
    connect(job, &HeadJob::finished, this, [this, job] {
      if (job == job_.get()) cortex_is_there(*job);
    });
    emit working(tr("Laying the brain under the skin"), 0);
    job->bring_cortex(head_, template_files_);
  } else {
    connect(job, &HeadJob::finished, this, [this, job] {
      if (job == job_.get()) fields_are_there();
    });
    emit working(tr("Laying tapes over the whole head"), 0);
    job->work_out_fields(head_);
  }
}

void Session::work_out_tapes() {
  if (!is_ready() || has_tapes() || job_) return;
  tapes_given_up_ = false;
  go_on();
}

void Session::want_fields() {
  if (!is_ready() || has_fields()) return;
  fields_wanted_ = true;
  go_on();
}

void Session::want_cortex() {
  if (!is_ready() || has_cortex()) return;
  cortex_wanted_ = true;
  go_on();
}

void Session::measured(const HeadJob& job) {
  if (has_tapes_ || job.head() != head_ || !same_plan(job.kept(), kept())) return;  // edited since
  plan_ = job.plan();
  has_tapes_ = true;
  emit changed();
}

void Session::finished(const HeadJob& job) {
  for (Remembered& one : heads_)
    if (one.head == job.head()) one.thin = job.thin();
  if (job.head() == head_) thin_ = job.thin();
  end_job();
  go_on_soon();
}

void Session::fields_are_there() {
  end_job();
  if (!has_tapes_) {
    plan_ = std::make_shared<geometry::Plan>(
        geometry::with_cortex(geometry::solve(head_->head, kept().entered), head_->cortex.get()));
    has_tapes_ = true;
  }
  emit changed();
}

void Session::cortex_is_there(const HeadJob& job) {
  QStringList notes;
  for (const geometry::Message& note : job.cortex_notes()) notes << viewer::translated(note);
  const auto& head = job.with_cortex();
  for (Remembered& one : heads_) {
    if (one.head != job.head()) continue;
    one.cortex_notes = notes;
    if (head) one.head = head;
  }
  const bool in_force = job.head() == head_;
  cortex_wanted_ = false;
  end_job();
  if (in_force) {
    cortex_notes_ = notes;
    if (head) {
      head_ = head;
      plan_ = std::make_shared<const geometry::Plan>(geometry::with_cortex(*plan_, head_->cortex.get()));
    } else {
      emit no_cortex(notes.join(QLatin1Char(' ')));
    }
    emit changed();
  }
  go_on();
}

void Session::end_job() {
  job_->cancel();
  given_up_.erase(
      std::remove_if(given_up_.begin(), given_up_.end(), [](const auto& job) { return job->is_over(); }),
      given_up_.end());
  given_up_.push_back(std::move(job_));  // we may be inside one of its signals
  emit rested();
}

void Session::stop_job() {
  if (!job_) return;
  pending_.reset();
  end_job();
}

void Session::cancel() {
  if (!job_) {
    if (!soon_.isActive()) return;
    soon_.stop();
    tapes_given_up_ = true;
    fields_wanted_ = false;
    emit changed();
    return;
  }
  if (job_->brings_cortex()) {
    cortex_wanted_ = false;
    stop_job();
    go_on();
    return;
  }
  const bool tapes = job_->head() && job_->head() == head_;
  if (tapes) {
    tapes_given_up_ = !has_tapes_;
    fields_wanted_ = false;
  }
  stop_job();
  if (!tapes) {
    go_on();  // the head in force stays, and gets what it still lacks
    return;
  }
  emit changed();
}

const Session::Remembered* Session::remembered(const models::CaseFile& kept) const {
  const std::string key = head_key(kept);
  for (const Remembered& one : heads_)
    if (one.key == key) return &one;
  return nullptr;
}

void Session::remember(const models::CaseFile& kept) {
  const std::string key = head_key(kept);
  heads_.erase(
      std::remove_if(heads_.begin(), heads_.end(), [&](const Remembered& one) { return one.key == key; }),
      heads_.end());
  heads_.insert(heads_.begin(), {key, head_, thin_, cortex_notes_});
  if (heads_.size() > heads_kept) heads_.resize(heads_kept);
}

// --- files

void Session::start(const models::CaseFile& kept, const QString& file) {
  if (const QString problem = put_in_force({kept, Purpose::start, {}, {}, file, false, {}});
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

void Session::open_skin(const models::HeadSource& source, const fs::path& folder) {
  stop_job();
  HeadJob* const job = new_job();
  connect(job, &HeadJob::finished, this, [this, job, source, folder] {
    if (job != job_.get()) return;
    unplaced_ = UnplacedHead{source, folder, job->skin()->skin, job->skin()->notes, {}};
    end_job();
    emit unplaced_changed();
    go_on();
  });
  emit working(tr("Reading %1").arg(QString::fromStdString(source.file.filename().string())), 0);
  job->read_skin(source, folder);
}

void Session::place(Fiducial which, const Eigen::Vector3d& at) {
  if (!unplaced_) return;
  unplaced_->placed[static_cast<std::size_t>(which)] = at;
  emit unplaced_changed();
}

namespace {

geometry::Fiducials fiducials_of(const UnplacedHead& head) {
  geometry::Fiducials fiducials;
  for (const Fiducial each : all_fiducials)
    point_of(fiducials, each) = *head.placed[static_cast<std::size_t>(each)];
  return fiducials;
}

}  // namespace

QString Session::placing_problem() const {
  if (!unplaced_ || !unplaced_->complete()) return {};
  try {
    (void)geometry::place_fiducials(unplaced_->skin, fiducials_of(*unplaced_));
    return {};
  } catch (const std::exception& error) {
    return sentence(error);
  }
}

QString Session::use_placed() {
  if (!unplaced_ || !unplaced_->complete()) return tr("Place all four points first.");
  if (QString problem = placing_problem(); !problem.isEmpty()) return problem;
  const UnplacedHead& from = *unplaced_;
  models::CaseFile edited = kept();
  edited.head = from.source;
  edited.head.file = head_path(from.source, from.folder);
  edited.head.fiducials = fiducials_of(from);
  const QString name = QString::fromStdString(from.source.file.filename().string());
  Pending pending = pending_edit(std::move(edited), tr("Head from %1").arg(name), {});
  pending.known = KnownSkin{from.skin, geometry::Message::verbatim(name.toStdString()), from.notes};
  return put_in_force(std::move(pending));
}

void Session::place_anew() {
  if (!is_ready() || !kept().head.fiducials) return;
  unplaced_ = UnplacedHead{kept().head, kept().folder, head_->head.skin(), head_->notes, {}};
  geometry::Fiducials now = head_->head.fiducials().at;
  for (const Fiducial each : all_fiducials)
    unplaced_->placed[static_cast<std::size_t>(each)] = point_of(now, each);
  emit unplaced_changed();
}

void Session::drop_unplaced() {
  if (!unplaced_) return;
  unplaced_.reset();
  emit unplaced_changed();
}

QString Session::save(const QString& path) {
  try {
    const QFileInfo info(path);
    const models::CaseFile moved = moved_to(kept(), info.absolutePath().toStdString());
    models::write_case(info.absoluteFilePath().toStdString(), moved);
    history_.replace_now(moved);
    if (head_) remember(moved);
    file_ = info.absoluteFilePath();
    history_.mark_saved();
    history_.end_burst();
    autosave_.stop();
    recovery_.forget();
    emit saved_changed();
    return {};
  } catch (const std::exception& error) {
    return sentence(error);
  }
}

void Session::recover(const Leftover& leftover) {
  if (const QString problem = put_in_force({leftover.kept, Purpose::start, {}, {}, leftover.file, true, {}});
      !problem.isEmpty())
    emit refused(problem);
}

void Session::keep_recovery_copy() {
  if (is_saved()) return;
  try {
    recovery_.keep(kept(), file_);
  } catch (const std::exception& error) {
    emit refused(sentence(error));
  }
}

}  // namespace scalpmark::window
