#include "viewer/window/steps/answer_settings.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "geometry/base/ranges.h"

namespace scalpmark::window {

using geometry::AnswerSettings;

AnswerSettingsFields::AnswerSettingsFields(Session& session, QWidget* parent)
    : QWidget(parent), session_(session) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(8);
  counted_ =
      new Choice(tr("An answer is a twitch of the"), {{tr("thumb"), tr("The thumb alone")},
                                                      {tr("index finger"), tr("The index finger alone")},
                                                      {tr("either"), tr("The thumb or the index finger")}});
  rule_ = new Choice(tr("An output is enough with"), {{tr("5 of 10"), tr("Five answers to ten pulses")},
                                                      {tr("4 of 8"), tr("Four answers to eight pulses")}});
  all->addWidget(counted_);
  all->addWidget(rule_);
  step_ = add_step(tr("Step of the output"), &AnswerSettings::step_percent);
  fine_ = add_step(tr("Fine step, with Shift"), &AnswerSettings::fine_percent);
  connect(counted_, &Choice::picked, this, [this](int index) {
    change(tr("Answers counted"), [index](AnswerSettings& settings) {
      settings.counted = static_cast<geometry::CountedAnswers>(index);
    });
  });
  connect(rule_, &Choice::picked, this, [this](int index) {
    change(tr("Counting rule"),
           [index](AnswerSettings& settings) { settings.rule = static_cast<geometry::CountingBy>(index); });
  });
}

QSpinBox* AnswerSettingsFields::add_step(const QString& name, int AnswerSettings::*setting) {
  auto* row = new QHBoxLayout;
  auto* label = new QLabel(name);
  auto* box = new QSpinBox;
  box->setRange(static_cast<int>(geometry::ranges::output_step_percent.low),
                static_cast<int>(geometry::ranges::output_step_percent.high));
  box->setSuffix(tr(" %"));
  box->setAccessibleName(name);
  box->setKeyboardTracking(false);
  box->setFocusPolicy(Qt::StrongFocus);
  box->installEventFilter(this);
  label->setBuddy(box);
  row->addWidget(label, 1);
  row->addWidget(box);
  qobject_cast<QVBoxLayout*>(layout())->addLayout(row);
  connect(box, qOverload<int>(&QSpinBox::valueChanged), this, [this, name, setting](int percent) {
    change(name, [&](AnswerSettings& settings) {
      settings.*setting = percent;
      // A fine step is never the larger one.
      if (settings.fine_percent <= settings.step_percent) return;
      (setting == &AnswerSettings::fine_percent ? settings.step_percent : settings.fine_percent) = percent;
    });
  });
  return box;
}

// A wheel that scrolls the worksheet changes no step on its way.
bool AnswerSettingsFields::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Wheel && !qobject_cast<QWidget*>(watched)->hasFocus()) {
    event->ignore();
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

void AnswerSettingsFields::change(const QString& what, const std::function<void(AnswerSettings&)>& edit) {
  emit refused(session_.change(
      what, [&](models::CaseFile& case_file) { edit(case_file.the_case.answers); }, what));
}

void AnswerSettingsFields::show_case() {
  const AnswerSettings& settings = session_.case_file().the_case.answers;
  counted_->choose(static_cast<int>(settings.counted));
  rule_->choose(static_cast<int>(settings.rule));
  const QSignalBlocker quiet_step(step_), quiet_fine(fine_);
  step_->setValue(settings.step_percent);
  fine_->setValue(settings.fine_percent);
}

}  // namespace scalpmark::window
