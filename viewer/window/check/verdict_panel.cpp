#include "viewer/window/check/verdict_panel.h"

#include <QGridLayout>
#include <QStyle>
#include <QVariant>

#include "viewer/window/steps/verdict.h"

namespace scalpmark::window {

VerdictPanel::VerdictPanel(QWidget* parent) : QWidget(parent) {
  setObjectName("verdictPanel");
  setAttribute(Qt::WA_StyledBackground);
  const auto label = [](const char* name) {
    auto* made = new QLabel;
    made->setObjectName(name);
    made->setWordWrap(true);
    made->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return made;
  };
  headline_ = label("huge");
  pulse_ = label("large");
  angle_ = label("large");
  reason_ = label("larger");
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(20, 10, 20, 12);
  grid->addWidget(headline_, 0, 0, 2, 1);
  grid->addWidget(pulse_, 0, 1);
  grid->addWidget(angle_, 1, 1);
  grid->addWidget(reason_, 2, 0, 1, 2);
  grid->setColumnStretch(0, 1);
  grid->setColumnStretch(1, 1);
  show_check({}, {});
}

void VerdictPanel::show_check(const std::optional<geometry::Check>& check, const QString& problem,
                              const QString& doubt) {
  const VerdictText text = verdict_text(check, doubt);
  headline_->setText(text.headline);
  pulse_->setText(text.pulse);
  angle_->setText(text.angle);
  reason_->setText(!check && !problem.isEmpty() ? problem : text.reason);
  setProperty("verdict", check && doubt.isEmpty() ? (text.good ? "good" : "bad") : "none");
  for (QWidget* each : {static_cast<QWidget*>(this), static_cast<QWidget*>(headline_)}) {
    style()->unpolish(each);
    style()->polish(each);
  }
}

StageContent check_content(const Worksheet& worksheet, const HeldCoil& coil) {
  StageContent content = worksheet.step(Worksheet::check_index)->stage_content(coil);
  // Whoever opens another step meanwhile wants to see its part of the head.
  content.look = worksheet.step(worksheet.current())->stage_content(coil).look;
  return content;
}

}  // namespace scalpmark::window
