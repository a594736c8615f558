#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "viewer/teach/lesson.h"
#include "viewer/teach/mistake.h"
#include "viewer/window/frame/main_window.h"
#include "viewer/window/teach/lesson_bar.h"
#include "viewer/window/teach/lesson_panel.h"
#include "viewer/window/teach/lesson_parts.h"
#include "viewer/window/teach/lesson_player.h"

namespace scalpmark::window {

/// The lesson in the window's Teach mode: the procedure step by step for the session's case, and what comes
/// of one thing done wrong. It follows the case, changes nothing in it, and leaves the worksheet's stage as
/// it was. Keys, wherever the focus is: Space plays and pauses (on a button it presses that), Page Down and
/// Page Up go on and back. Going to a step takes a mistake back; choosing a mistake pauses.
class Teach : public QObject {
  Q_OBJECT
public:
  /// Belongs to the window.
  explicit Teach(MainWindow& window);

  [[nodiscard]] LessonPlayer& player() { return player_; }
  [[nodiscard]] LessonPanel& panel() { return *panel_; }
  [[nodiscard]] LessonBar& bar() { return *bar_; }
  [[nodiscard]] const std::vector<viewer::LessonStep>& steps() const { return steps_; }
  /// What the mistake chosen does; empty while nothing is spoiled.
  [[nodiscard]] const std::optional<viewer::Spoiled>& spoiled() const { return spoiled_; }

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  [[nodiscard]] bool is_on() const { return window_.mode() == Mode::teach; }
  [[nodiscard]] LessonStage stage_now(const Session& session);
  /// Lesson and mistake for the case in force, if it is another than last time.
  void follow(const Session& session);
  void work_out_mistake(const Session& session);
  void show_step();
  void lay_tapes();
  void show_mistake();
  void show_text();
  void look();

  MainWindow& window_;
  LessonPlayer player_;
  LessonPanel* panel_;
  LessonBar* bar_;
  std::vector<viewer::LessonStep> steps_;
  std::optional<viewer::Spoiled> spoiled_;
  LengthUnit unit_ = LengthUnit::centimetre;
  /// A step's new tapes are laid before the eyes of the class.
  QTimer laying_;
  QElapsedTimer since_;
  std::set<std::string> fresh_;
  std::string followed_;  ///< the case of steps_ and spoiled_
  const void* followed_head_ = nullptr;
};

}  // namespace scalpmark::window
