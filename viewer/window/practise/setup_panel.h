#pragma once

#include <QCheckBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QWidget>
#include <vector>

#include "models/exercises/exercise_file.h"
#include "viewer/window/fields/choice.h"
#include "viewer/window/fields/spot_pad.h"

namespace scalpmark::window {

/// Chooses an exercise: the head (by number, or the case's own), the side, the spot that answers, the tasks,
/// the limits. What is not chosen here (lengths, coil, rules) is the case's.
class SetupPanel : public QWidget {
  Q_OBJECT
public:
  explicit SetupPanel(QWidget* parent = nullptr);

  /// As an exercise file, or the window's case, has it.
  void show_setup(const models::ExerciseSetup& setup);
  [[nodiscard]] models::ExerciseSetup setup() const;
  /// Lengths, coil and rules of this case from now on; what is chosen here stays.
  void take_case(const geometry::Case& the_case) { setup_.the_case = the_case; }
  /// The exercise is on a head that its file brings along, not on that of the window's case.
  [[nodiscard]] bool brings_head() const { return !setup_.exercise.drawn_head && !setup_.folder.empty(); }
  /// A sentence about the exercise; empty: none.
  void set_problem(const QString& sentence);
  [[nodiscard]] QString problem() const { return problem_->text(); }
  void set_busy(bool busy);

  [[nodiscard]] Choice* head() const { return head_; }
  [[nodiscard]] QSpinBox* number() const { return number_; }
  [[nodiscard]] Choice* side() const { return side_; }
  [[nodiscard]] SpotPad* spot() const { return spot_; }
  [[nodiscard]] QCheckBox* task(geometry::Task task) const { return tasks_[static_cast<std::size_t>(task)]; }
  [[nodiscard]] QSpinBox* minutes() const { return minutes_; }
  [[nodiscard]] QSpinBox* tries() const { return tries_; }
  [[nodiscard]] QPushButton* begin() const { return begin_; }
  [[nodiscard]] QPushButton* open() const { return open_; }
  [[nodiscard]] QPushButton* save() const { return save_; }
  [[nodiscard]] QPushButton* results() const { return results_; }

signals:
  /// Another choice was made.
  void chosen();

private:
  QWidget* build_head();
  QWidget* build_tasks();
  QWidget* build_limits();
  void show_own_head();

  models::ExerciseSetup setup_;
  Choice *head_, *side_;
  QSpinBox *number_, *minutes_, *tries_;
  SpotPad* spot_;
  geometry::GridPosition answers_;
  QLineEdit* title_;
  std::vector<QCheckBox*> tasks_;
  QLabel* problem_;
  QPushButton *begin_, *open_, *save_, *results_, *all_, *none_;
};

}  // namespace scalpmark::window
