#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>
#include <QWidget>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "viewer/teach/lesson.h"
#include "viewer/teach/mistake.h"
#include "viewer/window/fields/length_text.h"
#include "viewer/window/stage_view/stage_content.h"
#include "viewer/window/steps/rules_picture.h"
#include "viewer/window/teach/lesson_bar.h"
#include "viewer/window/teach/lesson_panel.h"
#include "viewer/window/teach/lesson_player.h"
#include "viewer/window/teach/lesson_room.h"

namespace scalpmark::window {

/// The lesson in the window's Teach mode: the procedure step by step for the session's case, and what comes
/// of one thing done wrong. It follows the case, changes nothing in it, and leaves the worksheet's stage as
/// it was. Keys, wherever the focus is: Space plays and pauses (on a button it presses that), Page Down and
/// Page Up go on and back. Going to a step takes a mistake back; choosing a mistake pauses.
class Teach : public QObject {
  Q_OBJECT
public:
  /// Reads the keys of `window`.
  Teach(LessonRoom& room, QWidget& window);

  [[nodiscard]] LessonPlayer& player() { return player_; }
  /// Stands left of the stage in Teach mode.
  [[nodiscard]] LessonPanel& panel() { return *panel_; }
  /// Stands under it.
  [[nodiscard]] LessonBar& bar() { return *bar_; }
  /// Lies over the stage where the rules are what it is about.
  [[nodiscard]] const RulesPicture& rules() const { return *rules_; }
  [[nodiscard]] const std::vector<viewer::LessonStep>& steps() const { return steps_; }
  /// What comes of the mistake chosen; empty while nothing is done wrong.
  [[nodiscard]] const std::optional<viewer::MistakeOutcome>& outcome() const { return outcome_; }

  void set_unit(LengthUnit unit);
  /// What the lesson puts on the stage now; asked for once there is a plan.
  [[nodiscard]] StageContent stage_content();
  /// Begins to lay the tapes that are new at this step before the eyes of the class.
  void lay_tapes();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void connect_parts();
  /// Lesson and mistake for the case in force, if it is another than last time.
  void follow();
  void work_out_mistake();
  [[nodiscard]] const viewer::LessonStep& step() const {
    return steps_[static_cast<std::size_t>(player_.current())];
  }
  [[nodiscard]] StageContent step_content() const;
  /// The steps' titles and what is said at them.
  void show_steps();
  [[nodiscard]] QString said_at(const viewer::LessonStep& step) const;
  void show_rules();
  void place_rules();
  void show_step();
  void show_mistake();
  void show_text();

  LessonRoom& room_;
  LessonPlayer player_;
  LessonPanel* panel_;
  LessonBar* bar_;
  RulesPicture* rules_;
  bool says_why_ = false;
  std::vector<viewer::LessonStep> steps_;
  std::optional<viewer::MistakeOutcome> outcome_;
  LengthUnit unit_ = LengthUnit::centimetre;
  QTimer laying_;
  QElapsedTimer since_;
  std::set<std::string> fresh_;
  std::optional<geometry::Case> followed_;  ///< the case of steps_ and outcome_
  std::optional<geometry::Head> followed_head_;
};

}  // namespace scalpmark::window
