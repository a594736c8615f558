#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QWidget>
#include <memory>
#include <optional>

#include "geometry/hands/tolerance.h"
#include "viewer/window/practise/exercise_run.h"

namespace scalpmark::window {

/// The score of the last try: the pulse at the end, one sentence on the habit to mend, each step in mm and
/// degrees twice (one's own error, and what earlier steps had done to it), and beside the step shown what
/// trained people do. Steps are shown on the stage one after the other, from the one with the largest own
/// error.
class ScorePanel : public QWidget {
  Q_OBJECT
public:
  explicit ScorePanel(ExerciseRun& run, QWidget* parent = nullptr);

  /// The last try of the run. Shows its worst step, or the pulse where nothing stands out.
  void show_score();
  /// How far off careful hands are on this head, once that is known.
  void show_hands(std::shared_ptr<const geometry::Tolerance> hands);

  /// The step shown on the stage; empty: the pulse at the end.
  [[nodiscard]] std::optional<std::size_t> shown_step() const { return shown_; }
  void show_step(std::optional<std::size_t> index);
  [[nodiscard]] std::string initials() const { return initials_->text().trimmed().toStdString(); }
  [[nodiscard]] QTableWidget* table() const { return table_; }
  [[nodiscard]] QString said() const;
  [[nodiscard]] QLineEdit* initials_field() const { return initials_; }
  [[nodiscard]] QPushButton* next() const { return next_; }
  [[nodiscard]] QPushButton* previous() const { return previous_; }
  [[nodiscard]] QPushButton* again() const { return again_; }
  [[nodiscard]] QPushButton* save() const { return save_; }
  [[nodiscard]] QPushButton* other() const { return other_; }

signals:
  void step_shown();

private:
  [[nodiscard]] const geometry::Score& score() const { return run_.scores().back(); }
  [[nodiscard]] std::size_t score_count() const;
  void fill_table();
  void show_text();
  void step_by(int by);

  ExerciseRun& run_;
  std::shared_ptr<const geometry::Tolerance> hands_;
  std::optional<std::size_t> shown_;
  QLabel *pulse_, *habit_, *steady_, *step_, *trained_;
  QTableWidget* table_;
  QLineEdit* initials_;
  QPushButton *previous_, *next_, *again_, *save_, *other_;
};

}  // namespace scalpmark::window
