#pragma once

#include <QAction>
#include <QButtonGroup>
#include <QLabel>
#include <QMainWindow>
#include <QProgressBar>
#include <QPushButton>
#include <QSlider>
#include <QVBoxLayout>

#include "viewer/window/held_coil.h"
#include "viewer/window/lesson_parts.h"
#include "viewer/window/session.h"
#include "viewer/window/settings.h"
#include "viewer/window/stage_view.h"
#include "viewer/window/verdict.h"
#include "viewer/window/visit.h"
#include "viewer/window/worksheet.h"

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
  [[nodiscard]] QString status_text() const { return status_->text(); }
  [[nodiscard]] QString notice_text() const { return notice_bar_->isHidden() ? QString() : notice_->text(); }
  [[nodiscard]] Mode mode() const { return mode_; }
  void set_mode(Mode mode);
  [[nodiscard]] QPushButton* mode_button(Mode mode) const;

  /// Gives a lesson its place in Teach mode, and the button for it on the bar.
  void set_lesson(LessonParts lesson);
  /// Brings the stage up to date with the session, the coil and the mode.
  void refresh_stage();

  /// Lays the coil on a place of the plan, or somewhere on the skin.
  void lay_coil(const HeldCoil& coil);

  /// Opens a case, or a head to be placed, as if chosen in the file dialog. Says in the notice what went
  /// wrong.
  void open_path(const QString& path);
  /// Saves without asking where. Whether it worked.
  bool save_to(const QString& path);

  /// Questions to the user; tests answer them in their own way.
  enum class Answer { save, discard, cancel };
  std::function<Answer()> ask_unsaved;
  std::function<bool(const Leftover&)> ask_recover;

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
  void show_recent();
  void show_notice(const QString& sentence);
  void show_unplaced();
  void face_fiducial(Fiducial which);
  void turn_bare_head();
  [[nodiscard]] viewer::Shown shown_now() const;
  [[nodiscard]] std::vector<StageNote> notes_now() const;
  void look_for_step();
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
  void show_about();
  void show_keys();
  void set_unit(LengthUnit unit);

  Settings settings_;
  Session session_;
  Visit visit_;
  HeldCoil coil_;
  double from_site_mm_ = 0;
  Mode mode_ = Mode::worksheet;
  double skin_opacity_ = 1;
  bool legend_ = true, numbers_ = true;
  std::optional<geometry::Plan> plan_with_landmarks_;

  Worksheet* worksheet_;
  StageView* stage_;
  VerdictPanel* verdict_;
  QWidget *bar_, *notice_bar_, *work_bar_, *foot_, *explain_bar_;
  QLabel *notice_, *work_text_, *status_, *explain_text_;
  QProgressBar* work_progress_;
  QPushButton* cancel_;
  QVBoxLayout* stage_column_;
  QButtonGroup* modes_;
  QHBoxLayout* centre_row_;
  std::optional<LessonParts> lesson_;
  QAction *undo_ = nullptr, *redo_ = nullptr, *save_action_ = nullptr;
  QMenu* recent_menu_ = nullptr;
  int bare_up_ = 0;
  bool fresh_head_ = true;
};

/// The case that the window opens with.
[[nodiscard]] models::CaseFile demo_case();

}  // namespace scalpmark::window
