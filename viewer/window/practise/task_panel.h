#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QWidget>
#include <array>
#include <map>

#include "viewer/window/fields/length_text.h"
#include "viewer/window/fields/number_field.h"
#include "viewer/window/practise/exercise_run.h"
#include "viewer/window/practise/practise_hand.h"

namespace scalpmark::window {

/// The task at hand: what to do, its steps, the readings to type, the tools, and how to go on. No number of
/// ours but the lengths of the job and, of a lost mark, its written distances.
class TaskPanel : public QWidget {
  Q_OBJECT
public:
  TaskPanel(ExerciseRun& run, PractiseHand& hand, QWidget* parent = nullptr);

  void show_run();
  void show_clock();
  void set_unit(LengthUnit unit);

  [[nodiscard]] QString order() const { return order_->text(); }
  [[nodiscard]] QListWidget* steps() const { return steps_; }
  [[nodiscard]] LengthField* reading(int which) const { return readings_[static_cast<std::size_t>(which)]; }
  [[nodiscard]] QPushButton* tool(Tool tool) const { return tools_.at(tool); }
  [[nodiscard]] QPushButton* hold() const { return hold_; }
  [[nodiscard]] QPushButton* close_tape() const { return close_; }
  [[nodiscard]] QPushButton* next() const { return next_; }
  [[nodiscard]] QPushButton* previous() const { return previous_; }
  [[nodiscard]] QPushButton* end() const { return end_; }

private:
  QWidget* build_task();
  QWidget* build_tools();
  QWidget* build_way_on();
  void show_steps();
  void show_tools();

  ExerciseRun& run_;
  PractiseHand& hand_;
  QLabel *progress_, *clock_, *order_, *how_;
  QListWidget* steps_;
  std::array<LengthField*, 3> readings_{};
  std::map<Tool, QPushButton*> tools_;
  QPushButton *hold_, *close_, *lift_, *undo_, *next_, *previous_, *end_;
};

}  // namespace scalpmark::window
