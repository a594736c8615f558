#include "viewer/window/frame/bars.h"

#include <QHBoxLayout>
#include <QStyle>
#include <QVBoxLayout>
#include <QVariant>

namespace scalpmark::window {

NoticeBar::NoticeBar(QWidget* parent) : QWidget(parent) {
  setObjectName("notice");
  setAttribute(Qt::WA_StyledBackground);
  auto* row = new QHBoxLayout(this);
  text_ = new QLabel;
  text_->setWordWrap(true);
  text_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  auto* close = new QPushButton(tr("Close"));
  close->setAccessibleName(tr("Close this message"));
  row->addWidget(text_, 1);
  row->addWidget(close);
  connect(close, &QPushButton::clicked, this, &QWidget::hide);
  hide();
}

void NoticeBar::say(const QString& sentence, Kind kind) {
  setProperty("done", kind == Kind::done);
  style()->unpolish(this);
  style()->polish(this);
  text_->setText(sentence);
  setVisible(!sentence.isEmpty());
}

WorkBar::WorkBar(QWidget* parent) : QWidget(parent) {
  setObjectName("workBar");
  setAttribute(Qt::WA_StyledBackground);
  auto* row = new QHBoxLayout(this);
  text_ = new QLabel;
  progress_ = new QProgressBar;
  progress_->setRange(0, 1000);
  progress_->setTextVisible(false);
  progress_->setFixedHeight(10);
  progress_->setAccessibleName(tr("Progress of the work"));
  cancel_ = new QPushButton(tr("Cancel"));
  row->addWidget(text_);
  row->addWidget(progress_, 1);
  row->addWidget(cancel_);
  connect(cancel_, &QPushButton::clicked, this, &WorkBar::cancelled);
  // Every edit is worked on for a moment; a bar that came and went with each would only push the stage about.
  constexpr int a_blink_ms = 700;
  appear_.setSingleShot(true);
  appear_.setInterval(a_blink_ms);
  connect(&appear_, &QTimer::timeout, this, &QWidget::show);
  hide();
}

void WorkBar::rest() {
  appear_.stop();
  hide();
}

void WorkBar::show_work(const QString& what, double fraction) {
  text_->setText(what);
  progress_->setValue(static_cast<int>(1000 * fraction));
  if (!isVisible() && !appear_.isActive()) appear_.start();
}

ExplainPanel::ExplainPanel(QWidget* parent) : QWidget(parent) {
  setObjectName("verdictPanel");
  setAttribute(Qt::WA_StyledBackground);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(40, 20, 24, 24);
  text_ = new QLabel;
  set_brain_shown(false);
  text_->setObjectName("explain");
  text_->setWordWrap(true);
  auto* button = new QPushButton(tr("Done"));
  button->setToolTip(tr("Back to the worksheet (Esc)"));
  heading_ = new QLabel;
  heading_->setObjectName("explainHeading");
  heading_->setWordWrap(true);
  auto* column = new QVBoxLayout;
  column->addWidget(heading_);
  column->addWidget(text_);
  row->addLayout(column, 1);
  row->addWidget(button, 0, Qt::AlignBottom);
  connect(button, &QPushButton::clicked, this, &ExplainPanel::done);
}

void ExplainPanel::set_heading(const QString& heading) {
  heading_->setText(heading);
}

void ExplainPanel::set_brain_shown(bool shown) {
  const QString coil = tr("The flat coil rests gently on your head, and you hear it click.");
  const QString pulse =
      shown
          ? tr("Each click sends a short magnetic pulse through the skin to the part of the brain that "
               "is lit under the green diamond, the place your clinician has chosen; this brain is a drawn "
               "example, not your own.")
          : tr("Each click sends a short magnetic pulse through the skin to the part of the brain under the "
               "green diamond, which is the place your clinician has chosen.");
  text_->setText(coil + QLatin1Char(' ') + pulse);
}

}  // namespace scalpmark::window
