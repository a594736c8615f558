#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QTimer>
#include <array>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "geometry/plan/plan.h"
#include "models/heads/load_head.h"
#include "viewer/window/jobs/head_job.h"
#include "viewer/window/session/case_history.h"
#include "viewer/window/session/recovery.h"

namespace scalpmark::window {

/// The four points a head hangs on.
enum class Fiducial { nasion, inion, left_tragus, right_tragus };
inline constexpr std::array<Fiducial, 4> all_fiducials{Fiducial::nasion, Fiducial::inion,
                                                       Fiducial::left_tragus, Fiducial::right_tragus};
[[nodiscard]] Eigen::Vector3d& point_of(geometry::Fiducials& fiducials, Fiducial which);

/// A skin just read on which some of the four points are still to be placed.
struct UnplacedHead {
  models::HeadSource source;
  std::filesystem::path folder;
  geometry::Surface skin;
  std::vector<geometry::Message> notes;
  std::array<std::optional<Eigen::Vector3d>, 4> placed;  ///< in the order of all_fiducials

  [[nodiscard]] bool complete() const;
};

/// The case in work, its head and its plan; everything the window does to them goes through here. Knows no
/// widgets. A new case comes into force only together with the plan solved from it, so the three always
/// belong together; a case that cannot be solved changes nothing and is answered with a sentence.
class Session : public QObject {
  Q_OBJECT
public:
  /// Nothing is loaded yet; start() or open() does.
  explicit Session(const QString& recovery_folder, QObject* parent = nullptr);
  ~Session() override;

  // --- what is in force
  [[nodiscard]] const models::CaseFile& kept() const { return history_.now(); }
  [[nodiscard]] bool is_ready() const { return plan_ != nullptr; }
  /// The head and plan; both there once is_ready().
  [[nodiscard]] const models::LoadedHead& head() const { return *head_; }
  [[nodiscard]] const geometry::Plan& plan() const { return *plan_; }
  [[nodiscard]] const std::optional<UnplacedHead>& unplaced() const { return unplaced_; }
  /// Whether the plan has its tape distances. They come a moment after the plan; `changed` is sent again when
  /// they are there.
  [[nodiscard]] bool has_tapes() const { return has_tapes_; }
  /// Whether tape distances can be looked up anywhere on the head (its distance fields are there).
  [[nodiscard]] bool has_fields() const { return is_ready() && head_->head.has_fields(); }
  /// The same, as whoever lays a coil on this head passes it on so as not to wait.
  [[nodiscard]] geometry::TapeDistances tapes() const {
    return has_fields() ? geometry::TapeDistances::worked_out : geometry::TapeDistances::left_out;
  }
  /// Whether the template's brain is under the head; the plan then says what lies under each placement.
  [[nodiscard]] bool has_cortex() const { return is_ready() && head_->cortex; }
  /// Sentences about it: how far it had to be pushed in, or, where it was wanted and is not there, why not
  /// and what to install.
  [[nodiscard]] const QStringList& cortex_notes() const { return cortex_notes_; }
  /// The head's skin thinned for drawing in motion, where there is one by now.
  [[nodiscard]] const std::optional<geometry::Surface>& thin_skin() const { return thin_; }

  // --- edits
  /// Changes the case by `edit`. Where only the coil or the protocol changed, the new plan is there when this
  /// returns; where the head changed, it is loaded in the background and `changed` comes later. Returns the
  /// sentence of a refusal, empty when there is none so far. `what` names the step for undo; see CaseHistory
  /// for `burst`.
  QString change(const QString& what, const std::function<void(models::CaseFile&)>& edit,
                 const QString& burst = {});
  void end_burst() { history_.end_burst(); }

  [[nodiscard]] const CaseHistory& history() const { return history_; }
  void undo();
  void redo();

  // --- files
  /// The file of the case; empty when it was never saved.
  [[nodiscard]] const QString& file() const { return file_; }
  [[nodiscard]] bool is_saved() const { return history_.is_saved(); }
  /// Puts a case in force as if just opened (`file` may be empty).
  void start(const models::CaseFile& kept, const QString& file = {});
  /// Opens a case, a mesh or an MRI by its name's ending. Returns the sentence of a refusal; one that shows
  /// only while loading comes by `refused`.
  QString open(const QString& path);
  /// Reads a skin; its four points are to be placed before it becomes the case's head.
  void open_skin(const models::HeadSource& source, const std::filesystem::path& folder);
  /// Places one of the four points on the unplaced skin.
  void place(Fiducial which, const Eigen::Vector3d& at);
  /// Why the four points placed do not make a head; empty when they do or are not all there.
  [[nodiscard]] QString placing_problem() const;
  /// Makes the skin with its four points the case's head. Returns the sentence of a refusal.
  QString use_placed();
  /// Takes the four points of the case's own scan or MRI up again, to be moved.
  void place_anew();
  void drop_unplaced();
  /// Returns the sentence of a refusal; the old file is then as it was.
  QString save(const QString& path);
  void recover(const Leftover& leftover);

  [[nodiscard]] Recovery& recovery() { return recovery_; }
  /// Writes the recovery copy now instead of a moment after the last edit.
  void keep_recovery_copy();

  // --- long work
  [[nodiscard]] bool is_working() const { return job_ != nullptr || soon_.isActive(); }
  /// Gives up what is being loaded. A head that has its plan already stays, without the tape distances that
  /// were being worked out until work_out_tapes() or want_fields(), or without the cortex until
  /// want_cortex().
  void cancel();
  void work_out_tapes();
  /// Has the head's distance fields worked out after what is under way: for a coil in the hand, and for marks
  /// found by their tape distances. `changed` comes when they are there.
  void want_fields();
  [[nodiscard]] bool fields_are_wanted() const { return fields_wanted_; }
  /// Has the template's brain brought under the head in force, after what is under way. `changed` comes when
  /// it is there; where it cannot be, `no_cortex` says so and all else goes on.
  void want_cortex();
  /// Where the brain is made from; for tests, which have none or one of their own.
  void set_template_files(models::TemplateFiles files) { template_files_ = std::move(files); }
  [[nodiscard]] const models::TemplateFiles& template_files() const { return template_files_; }

signals:
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
  struct Pending {
    models::CaseFile kept;
    Purpose purpose;
    QString what, burst, file;
    bool unsaved = false;
    std::optional<KnownSkin> known;
  };

  struct Remembered {
    std::string key;
    std::shared_ptr<const models::LoadedHead> head;
    std::optional<geometry::Surface> thin;
    QStringList cortex_notes;
  };

  /// Brings a case into force by way of solving it; see change().
  QString put_in_force(Pending pending);
  [[nodiscard]] Pending pending_edit(models::CaseFile kept, const QString& what, const QString& burst) const;
  /// Solves on a head and makes both the ones in force. Throws what solve() refuses.
  void commit(const Pending& pending, const Remembered& on);
  void start_job();
  /// Sees to it that the plan in force gets its tape distances, unless the user gave them up, and the head
  /// its cortex and its fields, if they are wanted.
  void go_on();
  /// The same once no edit has come for a moment: whoever turns a wheel waits for the last number only.
  void go_on_soon();
  void measured(const HeadJob& job);
  void finished(const HeadJob& job);
  void fields_are_there();
  void cortex_is_there(const HeadJob& job);
  HeadJob* new_job();
  void end_job();
  void stop_job();
  [[nodiscard]] const Remembered* remembered(const models::CaseFile& kept) const;
  void remember(const models::CaseFile& kept);

  CaseHistory history_;
  std::shared_ptr<const models::LoadedHead> head_;
  std::shared_ptr<const geometry::Plan> plan_;
  std::optional<geometry::Surface> thin_;
  bool has_tapes_ = false, tapes_given_up_ = false, fields_wanted_ = false, cortex_wanted_ = false;
  QStringList cortex_notes_;
  models::TemplateFiles template_files_;
  std::optional<UnplacedHead> unplaced_;
  QString file_;

  std::vector<Remembered> heads_;  // the last few, so that undo over another head is immediate

  std::unique_ptr<HeadJob> job_;
  std::vector<std::unique_ptr<HeadJob>> given_up_;  // cancelled, their threads still ending
  std::optional<Pending> pending_;

  Recovery recovery_;
  QTimer autosave_, soon_;
};

/// What tells one head from another: source and, for the generic head, the tapes it is scaled to.
[[nodiscard]] std::string head_key(const models::CaseFile& kept);

}  // namespace scalpmark::window
