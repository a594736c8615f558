#pragma once

#include <QObject>
#include <QScrollArea>
#include <functional>
#include <memory>
#include <optional>

#include "models/exercises/result_file.h"
#include "viewer/practise/class_results.h"
#include "viewer/sheet/sheet.h"
#include "viewer/window/jobs/latest_work.h"
#include "viewer/window/practise/class_panel.h"
#include "viewer/window/practise/exercise_run.h"
#include "viewer/window/practise/practise_card.h"
#include "viewer/window/practise/practise_hand.h"
#include "viewer/window/practise/score_panel.h"
#include "viewer/window/practise/setup_panel.h"
#include "viewer/window/practise/task_panel.h"
#include "viewer/window/session/session.h"
#include "viewer/window/session/unsaved_answer.h"
#include "viewer/window/stage_view/stage_view.h"

namespace scalpmark::window {

/// The window's Practise mode: an exercise is chosen, done, scored and done again; results of a class are put
/// together. It shows its own head on the stage and changes nothing in the case.
class Practise : public QObject {
  Q_OBJECT
public:
  Practise(Session& session, StageView& stage, QWidget& window);

  /// Whether to replace a file of another kind that is there.
  std::function<bool(const QString& path)> ask_replace;
  /// What becomes of an exercise whose result is not saved.
  std::function<UnsavedAnswer()> ask_unsaved;
  /// Where a file goes; empty: nowhere.
  std::function<QString(const QString& title, const QString& name, const QString& filter)> ask_target;

  /// Stands left of the stage.
  [[nodiscard]] QWidget& column() { return *scroll_; }
  [[nodiscard]] SetupPanel& setup_panel() { return *setup_; }
  [[nodiscard]] TaskPanel& task_panel() { return *task_; }
  [[nodiscard]] ScorePanel& score_panel() { return *score_; }
  [[nodiscard]] ClassPanel& class_panel() { return *class_; }
  [[nodiscard]] ExerciseRun& run() { return run_; }
  [[nodiscard]] PractiseHand& hand() { return *hand_; }
  enum class Page { setup, task, score, class_page };
  [[nodiscard]] Page page() const { return page_; }
  [[nodiscard]] const std::optional<viewer::ClassResults>& class_results() const { return results_; }
  /// Something is being worked out in the background.
  [[nodiscard]] bool is_working() const {
    return beginning_.is_waiting() || judging_.is_waiting() || gathering_.is_waiting();
  }

  /// The window shows this mode from now on, or no longer.
  void set_shown(bool shown);
  void refresh_stage();
  /// Turns the stage to what is at hand.
  void look();
  /// From a side of the head; of a coil by the operator's eye, and never straight down on it.
  void look_from(viewer::View view);
  void set_unit(LengthUnit unit);

  void begin();
  void open_exercise(const QString& path);
  void save_exercise_to(const QString& path);
  /// Whether the exercise may be left: nothing was put down since its result was saved, or the user said so.
  [[nodiscard]] bool may_leave();
  // Whether it worked:
  bool save_result();
  bool save_result_to(const QString& path);
  /// The results of a class, from the files dropped or chosen.
  void take_results(const QStringList& files);
  void save_class_page_to(const QString& path, viewer::Paper paper);
  void save_table_to(const QString& path);

signals:
  /// A sentence for the user; `done` where it says that something is done. Empty: nothing to say any more.
  void notice(const QString& sentence, bool done);
  void working(const QString& what, double fraction);
  void rested();
  void undo_changed();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void build();
  void connect_run();
  void connect_files();
  void go_to(Page page);
  void show_head_of_case();
  /// What is not chosen in an exercise is the case's: lengths, coil, rules; not of one from a file.
  void take_case();
  void show_class_on_stage();
  void judge();
  /// With the head of the window's case, where that is whose head it is done on.
  [[nodiscard]] models::ExerciseSetup with_own_head(models::ExerciseSetup setup) const;
  void size_column();
  void scroll_to_top();
  void take_usual_tool();
  [[nodiscard]] bool may_write(const QString& path, const char* format);
  /// Writes by `write`, says what came of it, and whether it worked.
  bool write(const QString& path, const char* format, const std::function<void()>& write);

  Session& session_;
  StageView& stage_;
  QWidget& window_;
  ExerciseRun run_;
  PractiseHand* hand_;
  QScrollArea* scroll_;
  PractisePages* pages_;
  SetupPanel* setup_;
  TaskPanel* task_;
  ScorePanel* score_;
  ClassPanel* class_;
  LatestWork beginning_, judging_, gathering_;
  Page page_ = Page::setup;
  bool shown_ = false, setup_is_shown_ = false, setup_is_of_file_ = false;
  std::optional<viewer::View> view_;
  std::shared_ptr<const geometry::Tolerance> hands_, class_hands_;
  std::optional<viewer::ClassResults> results_;
};

}  // namespace scalpmark::window
