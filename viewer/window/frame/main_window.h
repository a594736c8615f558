#pragma once

#include <QLabel>
#include <QMainWindow>
#include <QVBoxLayout>
#include <memory>

#include "viewer/window/check/verdict_panel.h"
#include "viewer/window/course/course_panel.h"
#include "viewer/window/explain/explain_panel.h"
#include "viewer/window/frame/bars.h"
#include "viewer/window/frame/case_files.h"
#include "viewer/window/frame/foot.h"
#include "viewer/window/frame/looked_into.h"
#include "viewer/window/frame/looks.h"
#include "viewer/window/frame/menus.h"
#include "viewer/window/frame/mode.h"
#include "viewer/window/frame/next_mark.h"
#include "viewer/window/frame/output.h"
#include "viewer/window/frame/point_placing.h"
#include "viewer/window/frame/stage_column.h"
#include "viewer/window/frame/stage_director.h"
#include "viewer/window/frame/start_page.h"
#include "viewer/window/frame/tapes_question.h"
#include "viewer/window/frame/through_skin.h"
#include "viewer/window/frame/top_bar.h"
#include "viewer/window/frame/undo_links.h"
#include "viewer/window/practise/practise.h"
#include "viewer/window/session/coil_on_stage.h"
#include "viewer/window/session/pulse_log.h"
#include "viewer/window/session/session.h"
#include "viewer/window/session/settings.h"
#include "viewer/window/session/visit.h"
#include "viewer/window/stage_view/stage_view.h"
#include "viewer/window/steps/worksheet.h"
#include "viewer/window/teach/teach.h"

namespace scalpmark::window {

/// The window: worksheet on the left, stage on the right, and what goes around them. It puts the parts
/// together, and passes on who is asked for what.
class MainWindow : public QMainWindow {
  Q_OBJECT
public:
  explicit MainWindow(QWidget* parent = nullptr);

  [[nodiscard]] Session& session() { return session_; }
  [[nodiscard]] Visit& visit() { return visit_; }
  [[nodiscard]] PulseLog& log() { return log_; }
  [[nodiscard]] Worksheet& worksheet() { return *worksheet_; }
  [[nodiscard]] Teach& teach() { return *teach_; }
  [[nodiscard]] Practise& practise() { return *practise_; }
  [[nodiscard]] StageView& stage() { return *stage_; }
  [[nodiscard]] CaseFiles& files() { return files_; }
  [[nodiscard]] Output& output() { return output_; }
  [[nodiscard]] const HeldCoil& coil() const { return coil_.coil(); }
  [[nodiscard]] WorkBar& work() { return *work_; }
  [[nodiscard]] StartPage& start_page() { return *start_page_; }
  [[nodiscard]] Menus& menus() { return *menus_; }
  [[nodiscard]] NextMark& next_mark() { return *next_mark_; }
  [[nodiscard]] ExplainPanel& explain() { return *explain_; }
  [[nodiscard]] QString status_text() const { return foot_->text(); }
  [[nodiscard]] Foot& foot() { return *foot_; }
  [[nodiscard]] UndoList& undo_list() { return undo_; }
  [[nodiscard]] TapesQuestion& tapes_question() { return *tapes_question_; }
  [[nodiscard]] QString notice_text() const { return notice_->text(); }
  [[nodiscard]] const CoilContact& under_coil() const { return looked_into_->under_coil(); }
  [[nodiscard]] const CourseCheck& course_check() const { return course_check_; }
  [[nodiscard]] CoursePanel& course() { return *course_; }
  [[nodiscard]] const HandTolerance& by_hand() const { return looked_into_->by_hand(); }

  [[nodiscard]] Mode mode() const { return director_->mode(); }
  void set_mode(Mode mode);
  [[nodiscard]] QPushButton* mode_button(Mode mode) const { return bar_->button(mode); }
  /// Shows the gaps under the coil, or leaves them out.
  void set_gaps(bool on) { looked_into_->set_gaps(on); }
  /// Shows the induced field under the coil, or leaves it out.
  void set_field(bool on) { looked_into_->set_field(on); }
  /// How much of the skin is left to be seen, 0 to 1; below 1 the template's brain is shown under it.
  void set_skin_opacity(double opacity) { through_skin_.set_opacity(opacity); }
  [[nodiscard]] const Settings& settings() const { return settings_; }
  [[nodiscard]] double skin_opacity() const { return through_skin_.opacity(); }
  /// What lengths are shown and typed in.
  void set_unit(LengthUnit unit);

  /// Brings the stage up to date with the session, the coil and the mode.
  void refresh_stage() { director_->refresh_stage(); }

protected:
  void closeEvent(QCloseEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

private:
  void build();
  void connect_session();
  void connect_worksheet();
  void connect_stage();
  void connect_files();
  void connect_menus();
  void connect_looks();
  void connect_practise();

  void show_session();
  void show_title();
  void show_notice(const QString& sentence) { notice_->say(sentence); }
  void show_unplaced();
  void show_today();
  void show_found_landmark();
  void point_on_skin(const Eigen::Vector3d& at);
  void step_changed();
  void lay_on_spot();
  [[nodiscard]] StageContent content_of_course();
  void output_is_over(bool written);
  void put_coil_back();
  void show_undo();
  void take_dropped(const QStringList& files);

  Settings settings_;
  Session session_;
  Visit visit_;
  PulseLog log_;
  CourseCheck course_check_;
  CoilOnStage coil_;
  UndoList undo_;
  ThroughSkin through_skin_;
  CaseFiles files_;
  Output output_;
  Qt::WindowStates before_explain_;
  bool close_when_written_ = false, fresh_head_ = true;

  Worksheet* worksheet_;
  StageColumn* column_;
  StartPage* start_page_;
  NextMark* next_mark_;
  StageView* stage_;
  Menus* menus_;
  TopBar* bar_;
  NoticeBar* notice_;
  TapesQuestion* tapes_question_;
  WorkBar* work_;
  VerdictPanel* verdict_;
  CoursePanel* course_;
  ExplainPanel* explain_;
  Foot* foot_;
  std::unique_ptr<Looks> looks_;
  std::unique_ptr<LookedInto> looked_into_;
  std::unique_ptr<PointPlacing> placing_;
  std::unique_ptr<UndoLinks> undo_links_;
  std::unique_ptr<StageDirector> director_;
  std::unique_ptr<Teach> teach_;
  std::unique_ptr<Practise> practise_;
};

}  // namespace scalpmark::window
