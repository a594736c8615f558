#pragma once

#include <QScrollArea>
#include <array>

#include "viewer/window/fields/type_size.h"
#include "viewer/window/steps/check_step.h"
#include "viewer/window/steps/landmarks_step.h"
#include "viewer/window/steps/measure_step.h"
#include "viewer/window/steps/pulses_step.h"
#include "viewer/window/steps/save_step.h"
#include "viewer/window/steps/search_step.h"
#include "viewer/window/steps/site_step.h"

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
    site_index,
    check_index,
    save_index
  };

  Worksheet(Session& session, Visit& visit, PulseLog& log, QWidget* parent = nullptr);

  /// The step that the stage shows.
  [[nodiscard]] StepIndex current() const { return current_; }
  /// Opens a step and shows it; the others stay as they are, or close with `alone`.
  void go_to(StepIndex step, bool alone = true);
  void show_case();
  void set_unit(LengthUnit unit);
  /// Wide enough for letters of that size.
  void set_type_size(TypeSize size);

  [[nodiscard]] Step* step(StepIndex index) const { return steps_[index]; }
  [[nodiscard]] MeasureStep* measure() const { return measure_; }
  [[nodiscard]] LandmarksStep* landmarks() const { return landmarks_; }
  [[nodiscard]] SearchStep* search() const { return search_; }
  [[nodiscard]] PulsesStep* pulses() const { return pulses_; }
  [[nodiscard]] SiteStep* site() const { return site_; }
  [[nodiscard]] CheckStep* check() const { return check_; }
  [[nodiscard]] SaveStep* save() const { return save_; }

signals:
  void step_changed();

private:
  void set_current(StepIndex step);

  MeasureStep* measure_;
  LandmarksStep* landmarks_;
  SearchStep* search_;
  PulsesStep* pulses_;
  SiteStep* site_;
  CheckStep* check_;
  SaveStep* save_;
  std::array<Step*, 7> steps_{};
  StepIndex current_ = measure_index;
};

}  // namespace scalpmark::window
