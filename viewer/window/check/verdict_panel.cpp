#include "viewer/window/check/verdict_panel.h"

#include <QGridLayout>
#include <QResizeEvent>
#include <QStyle>
#include <QVariant>
#include <cmath>

namespace scalpmark::window {

namespace {

const char* name_of(VerdictText::Kind kind) {
  switch (kind) {
    case VerdictText::Kind::agrees:
      return "agrees";
    case VerdictText::Kind::move:
      return "move";
    case VerdictText::Kind::unsure:
      return "unsure";
    case VerdictText::Kind::none:
      break;
  }
  return "none";
}

}  // namespace

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
  by_hand_ = label("larger");
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(20, 6, 20, 8);
  grid->setVerticalSpacing(2);
  grid->addWidget(headline_, 0, 0, 2, 1);
  grid->addWidget(pulse_, 0, 1);
  grid->addWidget(angle_, 1, 1);
  grid->addWidget(reason_, 2, 0, 1, 2);
  grid->addWidget(by_hand_, 3, 0, 1, 2);
  grid->setColumnStretch(0, 1);
  grid->setColumnStretch(1, 1);
  show_verdict(verdict_text({}));
}

void VerdictPanel::show_verdict(const VerdictText& text) {
  headline_->setText(text.headline);
  pulse_->setText(text.pulse);
  angle_->setText(text.angle);
  reason_->setText(text.reason);
  by_hand_->setText(text.by_hand);
  for (QLabel* each : {pulse_, angle_, by_hand_}) each->setVisible(!each->text().isEmpty());
  setProperty("verdict", name_of(text.kind));
  for (QWidget* each : {static_cast<QWidget*>(this), static_cast<QWidget*>(headline_)}) {
    style()->unpolish(each);
    style()->polish(each);
  }
  size_type();
}

void VerdictPanel::set_projected(bool projected) {
  projected_ = projected;
  size_type();
}

// As large as it may be: the head over it is what one looks at, and nothing said here is ever cut.
void VerdictPanel::size_type() {
  constexpr double most_share = 0.42, usual = 1, on_wall = 1.5, smallest = 0.6, step = 0.1;
  constexpr double huge_px = 34, large_px = 24, larger_px = 18;
  if (width() < 1) return;
  const double most = most_share * window()->height();
  for (double factor = projected_ ? on_wall : usual;; factor -= step) {
    const auto px = [factor](double at_usual) { return std::lround(factor * at_usual); };
    setStyleSheet(QStringLiteral("QLabel#huge { font-size: %1px; } QLabel#large { font-size: %2px; } "
                                 "QLabel#larger { font-size: %3px; }")
                      .arg(px(huge_px))
                      .arg(px(large_px))
                      .arg(px(larger_px)));
    layout()->invalidate();
    const int height = layout()->heightForWidth(width());
    if (height > most && factor - step > smallest) continue;
    setMinimumHeight(height);
    return;
  }
}

void VerdictPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) size_type();
}

StageContent check_content(const Worksheet& worksheet, const HeldCoil& coil) {
  StageContent content = worksheet.step(Worksheet::check_index)->stage_content(coil);
  // Whoever opens another step meanwhile wants to see its part of the head.
  content.look = worksheet.step(worksheet.current())->stage_content(coil).look;
  return content;
}

}  // namespace scalpmark::window
