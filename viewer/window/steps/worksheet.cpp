#include "viewer/window/steps/worksheet.h"

#include <QApplication>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>
#include <cmath>

namespace scalpmark::window {

namespace {

constexpr int width_px = 364;

}  // namespace

Worksheet::Worksheet(Session& session, Visit& visit, PulseLog& log, QWidget* parent) : QScrollArea(parent) {
  setObjectName("worksheet");
  setAccessibleName(tr("Worksheet"));
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFixedWidth(width_px);
  setFocusPolicy(Qt::NoFocus);

  measure_ = new MeasureStep(session);
  landmarks_ = new LandmarksStep(session);
  search_ = new SearchStep(session);
  pulses_ = new PulsesStep(session, log);
  site_ = new SiteStep(session);
  check_ = new CheckStep(session, visit, log);
  save_ = new SaveStep(session);
  steps_ = {measure_, landmarks_, search_, pulses_, site_, check_, save_};

  auto* page = new QWidget;
  page->setObjectName("page");
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(8, 8, 8, 8);
  column->setSpacing(6);
  for (Step* step : steps_) column->addWidget(step);
  column->addStretch(1);
  setWidget(page);

  for (std::size_t i = 0; i < steps_.size(); ++i)
    connect(steps_[i], &Step::entered, this, [this, i] { go_to(static_cast<StepIndex>(i)); });
  // Once the sentence has its height.
  for (Step* step : steps_)
    connect(step, &Step::said_problem, this, [this](QWidget* where) {
      QTimer::singleShot(0, this, [this, where] {
        if (where->isVisible()) ensureWidgetVisible(where, 0, 40);
        horizontalScrollBar()->setValue(0);
      });
    });
  // Working in an open step makes it the one the stage is about.
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
    for (std::size_t i = 0; now && i < steps_.size(); ++i)
      if (steps_[i]->isAncestorOf(now) && now != steps_[i]->heading() && steps_[i]->is_open())
        set_current(static_cast<StepIndex>(i));
  });
  go_to(measure_index);
}

void Worksheet::set_current(StepIndex step) {
  if (step == current_) return;
  current_ = step;
  for (std::size_t i = 0; i < steps_.size(); ++i) steps_[i]->set_current(i == static_cast<std::size_t>(step));
  emit step_changed();
}

void Worksheet::go_to(StepIndex step, bool alone) {
  // Ctrl and a click leaves the others open.
  const bool keep = !alone || QApplication::keyboardModifiers() & Qt::ControlModifier;
  for (std::size_t i = 0; i < steps_.size(); ++i) {
    if (i == static_cast<std::size_t>(step))
      steps_[i]->set_open(true);
    else if (!keep)
      steps_[i]->set_open(false);
  }
  if (step == pulses_index) pulses_->show_case();
  if (step == current_) steps_[step]->set_current(true);
  set_current(step);
  QTimer::singleShot(0, this, [this, step] {
    ensureWidgetVisible(steps_[step], 0, 0);
    // Higher than the window: what is worked in at every pulse is in sight, with the visit over it.
    constexpr int visit_row_px = 56;
    if (step == pulses_index) ensureWidgetVisible(pulses_->panel(), 0, visit_row_px);
    horizontalScrollBar()->setValue(0);
  });
}

void Worksheet::show_case() {
  measure_->show_case();
  landmarks_->show_case();
  search_->show_case();
  pulses_->show_case();
  site_->show_case();
  check_->show_case();
  save_->show_case();
}

void Worksheet::set_type_size(TypeSize size) {
  const auto px = [factor = factor_of(size)](int usual) {
    return static_cast<int>(std::lround(factor * usual));
  };
  setFixedWidth(px(width_px));
  for (const NumberField* field : findChildren<NumberField*>())
    field->edit()->setFixedWidth(px(NumberField::entry_width_px));
  for (SpotPad* pad : findChildren<SpotPad*>()) pad->set_button_px(px(SpotPad::button_px));
}

void Worksheet::set_unit(LengthUnit unit) {
  measure_->set_unit(unit);
  search_->set_unit(unit);
  site_->set_unit(unit);
  check_->set_unit(unit);
}

}  // namespace scalpmark::window
