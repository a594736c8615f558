#include "viewer/window/lesson_panel.h"

#include <QSignalBlocker>
#include <QVBoxLayout>

namespace scalpmark::window {

namespace {

constexpr int width_px = 364;  // as the worksheet's, so that the stage keeps its place

QFrame* card(const QString& heading, QWidget* content) {
  auto* frame = new QFrame;
  frame->setObjectName("step");
  auto* column = new QVBoxLayout(frame);
  column->setContentsMargins(14, 8, 14, 10);
  column->setSpacing(6);
  auto* label = new QLabel(heading);
  label->setObjectName("cardHeading");
  label->setBuddy(content);
  column->addWidget(label);
  column->addWidget(content);
  return frame;
}

}  // namespace

LessonPanel::LessonPanel(QWidget* parent) : QScrollArea(parent) {
  setObjectName("worksheet");
  setAccessibleName(tr("Lesson"));
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFixedWidth(width_px);
  setFocusPolicy(Qt::NoFocus);

  steps_ = new QListWidget;
  steps_->setObjectName("lessonSteps");
  steps_->setAccessibleName(tr("Steps of the lesson"));
  steps_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  steps_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  steps_->setToolTip(tr("Page Down and Page Up go to the next and the previous step, Space plays."));
  what_if_ = new WhatIfControls;

  auto* page = new QWidget;
  page->setObjectName("page");
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(8, 8, 8, 8);
  column->setSpacing(6);
  column->addWidget(card(tr("Lesson"), steps_));
  column->addWidget(card(tr("What if one thing goes wrong?"), what_if_));
  column->addStretch(1);
  setWidget(page);

  connect(steps_, &QListWidget::currentRowChanged, this, &LessonPanel::step_wanted);
  connect(steps_, &QListWidget::itemPressed, this,
          [this](const QListWidgetItem* item) { emit step_wanted(steps_->row(item)); });
}

void LessonPanel::set_steps(const QStringList& titles) {
  const QSignalBlocker quiet(steps_);
  const int current = std::max(0, steps_->currentRow());
  while (steps_->count() > titles.size()) delete steps_->takeItem(steps_->count() - 1);
  while (steps_->count() < titles.size()) steps_->addItem(QString());
  for (int i = 0; i < titles.size(); ++i) {
    steps_->item(i)->setText(QStringLiteral("%1  %2").arg(i + 1).arg(titles[i]));
    steps_->item(i)->setData(Qt::AccessibleTextRole, tr("Step %1, %2").arg(i + 1).arg(titles[i]));
  }
  steps_->setCurrentRow(std::min(current, steps_->count() - 1));
  steps_->ensurePolished();
  int height = 2 * steps_->frameWidth() + 4;
  for (int i = 0; i < steps_->count(); ++i) height += steps_->sizeHintForRow(i);
  steps_->setFixedHeight(height);
}

void LessonPanel::set_current(int step) {
  const QSignalBlocker quiet(steps_);
  steps_->setCurrentRow(step);
}

}  // namespace scalpmark::window
