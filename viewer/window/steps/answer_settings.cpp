#include "viewer/window/steps/answer_settings.h"

#include <QVBoxLayout>
#include <cmath>

#include "geometry/base/ranges.h"

namespace scalpmark::window {

using geometry::AnswerSettings;

AnswerSettingsFields::AnswerSettingsFields(Session& session, QWidget* parent)
    : QWidget(parent), session_(session) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(8);
  // Side by side the three are wider than the worksheet in German.
  counted_ = new Choice(tr("An answer is a twitch of the"),
                        {{tr("thumb"), tr("The thumb alone")},
                         {tr("index finger"), tr("The index finger alone")},
                         {tr("either"), tr("The thumb or the index finger")}},
                        nullptr, Qt::Vertical);
  rule_ = new Choice(tr("An output is enough with"), {{tr("5 of 10"), tr("Five answers to ten pulses")},
                                                      {tr("4 of 8"), tr("Four answers to eight pulses")}});
  all->addWidget(counted_);
  all->addWidget(rule_);
  step_ = add_step(tr("Step of the output"), &AnswerSettings::step_percent);
  fine_ = add_step(tr("Fine step, with Shift"), &AnswerSettings::fine_percent);
  connect(counted_, &Choice::picked, this, [this](int index) {
    emit refused(change(tr("Answers counted"), [index](AnswerSettings& settings) {
      settings.counted = static_cast<geometry::CountedAnswers>(index);
    }));
  });
  connect(rule_, &Choice::picked, this, [this](int index) {
    change(tr("Counting rule"),
           [index](AnswerSettings& settings) { settings.rule = static_cast<geometry::CountingBy>(index); });
  });
}

PlainField* AnswerSettingsFields::add_step(const QString& name, int AnswerSettings::*setting) {
  auto* field = new PlainField(name, geometry::ranges::output_step_percent, tr("%"), 1);
  layout()->addWidget(field);
  field->on_commit([this, name, setting](std::optional<double> typed) {
    if (std::floor(*typed) != *typed) return tr("Write whole percent, as the stimulator shows.");
    const int percent = static_cast<int>(*typed);
    return change(name, [&](AnswerSettings& settings) {
      settings.*setting = percent;
      // A fine step is never the larger one.
      if (settings.fine_percent <= settings.step_percent) return;
      (setting == &AnswerSettings::fine_percent ? settings.step_percent : settings.fine_percent) = percent;
    });
  });
  return field;
}

QString AnswerSettingsFields::change(const QString& what, const std::function<void(AnswerSettings&)>& edit) {
  return session_.change(what, [&](models::CaseFile& case_file) { edit(case_file.the_case.answers); });
}

void AnswerSettingsFields::show_case() {
  const AnswerSettings& settings = session_.case_file().the_case.answers;
  counted_->choose(static_cast<int>(settings.counted));
  rule_->choose(static_cast<int>(settings.rule));
  step_->set_value(settings.step_percent);
  fine_->set_value(settings.fine_percent);
}

}  // namespace scalpmark::window
