#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <functional>
#include <optional>

#include "viewer/window/session/case_history.h"
#include "viewer/window/session/case_store.h"
#include "viewer/window/session/head_cache.h"
#include "viewer/window/session/head_extras.h"
#include "viewer/window/session/head_jobs.h"
#include "viewer/window/session/placing.h"
#include "viewer/window/session/plan_in_force.h"

namespace scalpmark::window {

/// The case in work, its head and its plan; everything the window does to them goes through here. Knows no
/// widgets. A new case comes into force only together with the plan solved from it, so the three always
/// belong together; a case that cannot be solved changes nothing and is answered with a sentence. What it is
/// made of each keeps one thing: the list of cases, the file, the remembered heads, the job under way, what
/// the head still lacks, the points being placed.
class Session : public QObject {
  Q_OBJECT
public:
  /// Nothing is loaded yet; start() or open() does.
  explicit Session(const QString& recovery_folder, QObject* parent = nullptr);

  // --- what is in force
  [[nodiscard]] const models::CaseFile& case_file() const { return history_.now(); }
  [[nodiscard]] bool is_ready() const { return in_force_.is_ready(); }
  /// The head and plan; both there once is_ready().
  [[nodiscard]] const models::LoadedHead& head() const { return *in_force_.on.head; }
  [[nodiscard]] const geometry::Plan& plan() const { return *in_force_.plan; }
  [[nodiscard]] const std::optional<UnplacedHead>& unplaced() const { return placing_.head(); }
  /// Whether the plan has its tape distances. They come a moment after the plan; `changed` is sent again when
  /// they are there.
  [[nodiscard]] bool has_tapes() const { return in_force_.has_tapes; }
  /// Whether tape distances can be looked up anywhere on the head (its distance fields are there).
  [[nodiscard]] bool has_fields() const { return in_force_.has_fields(); }
  /// The same, as whoever lays a coil on this head passes it on so as not to wait.
  [[nodiscard]] geometry::TapeDistances tapes() const { return in_force_.tapes(); }
  /// Whether the template's brain is under the head; the plan then says what lies under each placement.
  [[nodiscard]] bool has_cortex() const { return in_force_.has_cortex(); }
  /// Sentences about it: how far it had to be pushed in, or, where it was wanted and is not there, why not
  /// and what to install.
  [[nodiscard]] const QStringList& cortex_notes() const { return in_force_.on.cortex_notes; }
  /// The head's skin thinned for drawing in motion, where there is one by now.
  [[nodiscard]] const std::optional<geometry::Surface>& thin_skin() const { return in_force_.on.thin; }

  // --- edits
  /// Changes the case by `edit`. Where only the coil, or lengths on the head, changed, the new plan is there
  /// when this returns; where the head changed, it is loaded in the background and `changed` comes later.
  /// Returns the sentence of a refusal, empty when there is none so far. `what` names the step for undo; see
  /// CaseHistory for `burst`.
  QString change(const QString& what, const std::function<void(models::CaseFile&)>& edit,
                 const QString& burst = {});
  void end_burst() { history_.end_burst(); }
  /// While it is locked, edits that change the plan are refused; so are undo and redo of them. Saving locks,
  /// and so does opening a saved case, as far as set_locks_when_kept() has it so.
  [[nodiscard]] bool is_locked() const { return locked_; }
  void set_locked(bool locked);
  void set_locks_when_kept(bool locks) { locks_when_kept_ = locks; }

  [[nodiscard]] const CaseHistory& history() const { return history_; }
  void undo();
  void redo();

  // --- files
  /// The file of the case; empty when it was never saved.
  [[nodiscard]] const QString& file() const { return store_.file(); }
  [[nodiscard]] bool is_saved() const { return history_.is_saved(); }
  /// Puts a case in force as if just opened (`file` may be empty).
  void start(const models::CaseFile& case_file, const QString& file = {});
  /// Opens a case, a mesh or an MRI by its name's ending. Returns the sentence of a refusal; one that shows
  /// only while loading comes by `refused`.
  QString open(const QString& path);
  /// Reads a skin; its four points are to be placed before it becomes the case's head.
  void open_skin(const models::HeadSource& source, const std::filesystem::path& folder);
  /// Places one of the four points on the unplaced skin, or takes it away.
  void place(Fiducial which, const std::optional<Eigen::Vector3d>& at) { placing_.place(which, at); }
  /// As Placing has them.
  void guess_points(const geometry::Fiducials& at) { placing_.guess(at); }
  void confirm_point(Fiducial which) { placing_.confirm(which); }
  /// Why the four points placed do not make a head; empty when they do or are not all there.
  [[nodiscard]] QString placing_problem() const { return placing_.problem(); }
  /// Makes the skin with its four points the case's head. Returns the sentence of a refusal.
  QString use_placed();
  /// Takes the four points of the case's own scan or MRI up again, to be moved.
  void place_anew();
  void drop_unplaced() { placing_.drop(); }
  /// Returns the sentence of a refusal; the old file is then as it was.
  QString save(const QString& path);
  void recover(const Leftover& leftover);

  [[nodiscard]] Recovery& recovery() { return store_.recovery(); }
  /// Writes the recovery copy now instead of a moment after the last edit.
  void keep_recovery_copy() { store_.keep_copy(); }

  // --- long work
  [[nodiscard]] bool is_working() const { return jobs_.current() != nullptr || extras_.goes_on_soon(); }
  /// Gives up what is being loaded. A head that has its plan already stays, without the tape distances that
  /// were being worked out until work_out_tapes() or want_fields(), or without the cortex until
  /// want_cortex().
  void cancel();
  void work_out_tapes() { extras_.work_out_tapes(); }
  /// Has the head's distance fields worked out after what is under way: for a coil in the hand, and for marks
  /// found by their tape distances. `changed` comes when they are there.
  void want_fields() { extras_.want_fields(); }
  [[nodiscard]] bool fields_are_wanted() const { return extras_.fields_are_wanted(); }
  /// Has the template's brain brought under the head in force, after what is under way. `changed` comes when
  /// it is there; where it cannot be, `no_cortex` says so and all else goes on.
  void want_cortex() { extras_.want_cortex(); }
  /// Where the brain is made from; for tests, which have none or one of their own.
  void set_template_files(models::TemplateFiles files) { extras_.set_template_files(std::move(files)); }
  [[nodiscard]] const models::TemplateFiles& template_files() const { return extras_.template_files(); }

signals:
  /// An edit came into force; not a new step where it went on with the last (see CaseHistory).
  void edited(bool new_step);
  void edit_undone();
  void edit_redone();
  /// Another case came.
  void started();
  /// Case, head or plan were replaced.
  void changed();
  /// Another head came (also sent before `changed`).
  void head_changed();
  void unplaced_changed();
  /// Saved, or edited since.
  void saved_changed();
  void working(const QString& what, double fraction);
  /// No work is under way any more.
  void rested();
  /// A change that had to be loaded first came to nothing; the case is as it was.
  void refused(const QString& sentence);
  void no_cortex(const QString& sentence);

private:
  enum class Purpose { edit, undo, redo, start };
  [[nodiscard]] QString why_locked(const models::CaseFile& edited) const;
  struct Pending {
    models::CaseFile case_file;
    Purpose purpose;
    QString what, burst, file;
    bool unsaved = false;
    std::optional<KnownSkin> known;
  };

  /// Brings a case into force by way of solving it; see change().
  QString put_in_force(Pending pending);
  [[nodiscard]] Pending pending_edit(models::CaseFile case_file, const QString& what,
                                     const QString& burst) const;
  /// Solves on a head and makes both the ones in force. Throws what solve() refuses.
  void commit(const Pending& pending, const PreparedHead& on);
  void step_history(const Pending& pending);
  void start_loading();
  /// The head being loaded is there, and its case solved on it.
  void loaded();
  void loading_failed(const QString& sentence);
  /// Ends what is under way, and forgets the case that waited for it.
  void stop_loading();

  CaseHistory history_;
  CaseStore store_;
  HeadCache heads_;
  PlanInForce in_force_;
  HeadJobs jobs_;
  HeadExtras extras_;
  Placing placing_;
  bool locked_ = false, locks_when_kept_ = true;
  std::optional<Pending> pending_;  // the case whose head is being loaded
};

}  // namespace scalpmark::window
