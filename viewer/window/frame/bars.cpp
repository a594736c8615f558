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
  text_->setTextFormat(Qt::PlainText);  // it may repeat what stands in a file
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

}  // namespace scalpmark::window
