#pragma once

#include <QAction>
#include <QButtonGroup>
#include <QLabel>
#include <QMainWindow>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>
#include <memory>

#include "viewer/window/frame/bars.h"
#include "viewer/window/frame/dialogs.h"
#include "viewer/window/jobs/coil_contact.h"
#include "viewer/window/jobs/hand_tolerance.h"
#include "viewer/window/jobs/output_job.h"
#include "viewer/window/session/held_coil.h"
#include "viewer/window/session/session.h"
#include "viewer/window/session/settings.h"
#include "viewer/window/session/visit.h"
#include "viewer/window/stage_view/stage_view.h"
#include "viewer/window/steps/verdict.h"
#include "viewer/window/steps/worksheet.h"
#include "viewer/window/teach/lesson_parts.h"

class QPrinter;
class QSlider;

namespace scalpmark::window {

/// Who looks at the window: the one who enters the case, a class, a technician at the chair, a patient.
enum class Mode { worksheet, teach, check, explain };

/// The window: worksheet on the left, stage on the right, and what goes around them.
class MainWindow : public QMainWindow {
  Q_OBJECT
public:
  explicit MainWindow(QWidget* parent = nullptr);

  [[nodiscard]] Session& session() { return session_; }
  [[nodiscard]] Visit& visit() { return visit_; }
  [[nodiscard]] Worksheet& worksheet() { return *worksheet_; }
  [[nodiscard]] StageView& stage() { return *stage_; }
  [[nodiscard]] const HeldCoil& coil() const { return coil_; }
  [[nodiscard]] WorkBar& work() { return *work_; }
  [[nodiscard]] QString status_text() const { return status_->text(); }
  [[nodiscard]] QString notice_text() const { return notice_->text(); }
  [[nodiscard]] Mode mode() const { return mode_; }
  void set_mode(Mode mode);
  /// How much of the skin is left to be seen, 0 to 1; below 1 the template's brain is shown under it.
  void set_skin_opacity(double opacity);
  [[nodiscard]] double skin_opacity() const { return skin_opacity_; }
  [[nodiscard]] QPushButton* mode_button(Mode mode) const;

  /// Gives a lesson its place in Teach mode, and the button for it on the bar.
  void set_lesson(LessonParts lesson);
  /// What lengths are shown and typed in.
  void set_unit(LengthUnit unit);
  /// Brings the stage up to date with the session, the coil and the mode.
  void refresh_stage();

  /// Shows the gaps under the coil, or leaves them out.
  void set_gaps(bool on);
  [[nodiscard]] const CoilContact& under_coil() const { return under_coil_; }
  [[nodiscard]] const HandTolerance& by_hand() const { return by_hand_; }

  /// Lays the coil on a place of the plan, or somewhere on the skin.
  void lay_coil(const HeldCoil& coil);

  /// Opens a case, or a head to be placed, as if chosen in the file dialog. Says in the notice what went
  /// wrong.
  void open_path(const QString& path);
  /// Saves without asking where. Whether it worked.
  bool save_to(const QString& path);

  /// The same for a sheet and a picture. They are made in the background; a notice says when they are there.
  void save_sheet_to(const QString& path, viewer::Paper paper);
  void save_picture_to(const QString& path);
  void print_sheet();
  [[nodiscard]] bool is_writing() const { return output_ != nullptr; }

  /// Questions to the user; tests answer them in their own way.
  using Answer = UnsavedAnswer;
  std::function<Answer()> ask_unsaved;
  std::function<bool(const Leftover&)> ask_recover;
  std::function<std::unique_ptr<QPrinter>()> ask_printer;  ///< nothing: not to be printed

  /// The first start's note, leftovers of a crash, and the case to begin with (empty: the demo case).
  void begin(const QString& path);

protected:
  void closeEvent(QCloseEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

private:
  void build_bar(QVBoxLayout* into);
  void build_centre(QVBoxLayout* into);
  void build_foot(QVBoxLayout* into);
  void build_menus();
  void connect_all();

  void show_session();
  void show_title();
  void show_explain_heading();
  void show_recent();
  void show_notice(const QString& sentence);
  void show_unplaced();
  void face_fiducial(Fiducial which);
  void turn_bare_head();
  [[nodiscard]] viewer::Shown shown_now() const;
  /// The skin as looked through, and what is then seen under it.
  void look_through_skin(viewer::Shown& shown) const;
  [[nodiscard]] bool looks_through_skin() const { return mode_ == Mode::explain || skin_opacity_ < 1; }
  void want_cortex();
  void say_no_cortex();
  [[nodiscard]] std::vector<StageNote> notes_now() const;
  void add_looked_into(viewer::Shown& shown);
  void connect_looked_into();
  void look_for_step();
  /// Both: what the step shows, from where it is looked at.
  void show_step();
  void point_on_skin(const Eigen::Vector3d& at);
  void nudge_coil(double forward_mm, double outward_mm);
  void turn_coil(double by_deg);

  /// Whether the case may be left: saved, or the user said so.
  bool may_leave();
  void open();
  void open_head();
  bool save();
  bool save_as();
  void save_picture();
  void save_sheet();
  void copy_picture();
  [[nodiscard]] std::unique_ptr<QPrinter> choose_printer();
  OutputJob* new_output(const QString& done);
  void give_up_output();

  Settings settings_;
  Session session_;
  Visit visit_;
  HeldCoil coil_;
  QTimer coil_rests_;
  double from_site_mm_ = 0;
  Mode mode_ = Mode::worksheet;
  Qt::WindowStates before_explain_;
  double skin_opacity_ = 1;
  bool legend_ = true, numbers_ = true, gaps_ = false, gaps_asked_ = false;
  CoilContact under_coil_;
  HandTolerance by_hand_;
  QString no_cortex_;              // why there is none, to be said
  bool label_in_explain_ = false;  // never remembered: a patient's room has other people's eyes
  /// What the stage shows in place of the plan's; worked out when it is first shown.
  std::shared_ptr<const std::vector<geometry::Landmark>> other_landmarks_;

  OutputJob* output_ = nullptr;  // a child of the window while it is at work
  bool close_when_written_ = false;

  Worksheet* worksheet_;
  StageView* stage_;
  VerdictPanel* verdict_;
  NoticeBar* notice_;
  WorkBar* work_;
  ExplainPanel* explain_;
  QWidget *bar_, *foot_;
  QLabel* status_;
  QVBoxLayout* stage_column_;
  QButtonGroup* modes_;
  QHBoxLayout* centre_row_;
  std::optional<LessonParts> lesson_;
  LengthUnit unit_ = LengthUnit::centimetre;
  QAction* gaps_action_ = nullptr;
  QAction *undo_ = nullptr, *redo_ = nullptr, *save_action_ = nullptr, *brain_ = nullptr;
  QSlider* skin_slider_ = nullptr;
  QMenu* recent_menu_ = nullptr;
  int bare_up_ = 0;
  bool fresh_head_ = true;
};

/// The case that the window opens with.
[[nodiscard]] models::CaseFile demo_case();

}  // namespace scalpmark::window
