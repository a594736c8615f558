#pragma once

#include <QScrollArea>
#include <array>

#include "viewer/window/steps/check_step.h"
#include "viewer/window/steps/keep_step.h"
#include "viewer/window/steps/landmarks_step.h"
#include "viewer/window/steps/measure_step.h"
#include "viewer/window/steps/pulses_step.h"
#include "viewer/window/steps/search_step.h"
#include "viewer/window/steps/treat_step.h"

namespace scalpmark::window {

/// The sheet of paper staff already think in: seven steps from top to bottom, one or several open.
class Worksheet : public QScrollArea {
  Q_OBJECT
public:
  enum StepIndex {
    measure_index,
    landmarks_index,
    search_index,
    pulses_index,
    treat_index,
    check_index,
    keep_index
  };

  Worksheet(Session& session, Visit& visit, PulseLog& log, QWidget* parent = nullptr);

  /// The step that the stage shows.
  [[nodiscard]] StepIndex current() const { return current_; }
  /// Opens a step and shows it; the others stay as they are, or close with `alone`.
  void go_to(StepIndex step, bool alone = true);
  void show_case();
  void set_unit(LengthUnit unit);

  [[nodiscard]] Step* step(StepIndex index) const { return steps_[index]; }
  [[nodiscard]] MeasureStep* measure() const { return measure_; }
  [[nodiscard]] LandmarksStep* landmarks() const { return landmarks_; }
  [[nodiscard]] SearchStep* search() const { return search_; }
  [[nodiscard]] PulsesStep* pulses() const { return pulses_; }
  [[nodiscard]] TreatStep* treat() const { return treat_; }
  [[nodiscard]] CheckStep* check() const { return check_; }
  [[nodiscard]] KeepStep* keep() const { return keep_; }

signals:
  void step_changed();

private:
  void set_current(StepIndex step);

  MeasureStep* measure_;
  LandmarksStep* landmarks_;
  SearchStep* search_;
  PulsesStep* pulses_;
  TreatStep* treat_;
  CheckStep* check_;
  KeepStep* keep_;
  std::array<Step*, 7> steps_{};
  StepIndex current_ = measure_index;
};

}  // namespace scalpmark::window
