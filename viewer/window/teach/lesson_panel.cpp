#include "viewer/window/teach/lesson_panel.h"

#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

namespace scalpmark::window {

namespace {

// In a window 800 high as wide as the worksheet, so that the stage keeps its place.
constexpr double panel_width_px = 364, usual_height_px = 800, largest_scale = 1.6;
constexpr double list_px = 17, kind_px = 16, text_px = 14, field_px = 76;

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
  setFocusPolicy(Qt::NoFocus);

  steps_ = new QListWidget;
  steps_->setObjectName("lessonSteps");
  steps_->setAccessibleName(tr("Steps of the lesson"));
  steps_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  steps_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  steps_->setToolTip(tr("Page Down and Page Up go to the next and the previous step, Space plays."));
  tools_ = new LessonTools;
  what_if_ = new WhatIfControls;

  auto* page = new QWidget;
  page->setObjectName("page");
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(8, 8, 8, 8);
  column->setSpacing(6);
  QFrame* lesson = card(tr("Lesson"), steps_);
  lesson->layout()->addWidget(tools_);
  column->addWidget(lesson);
  column->addWidget(card(tr("What if something goes wrong?"), what_if_));
  column->addStretch(1);
  setWidget(page);

  size_type();

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
  fit_list();
}

void LessonPanel::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  size_type();
}

void LessonPanel::size_type() {
  const double scale = std::clamp(window()->height() / usual_height_px, 1.0, largest_scale);
  if (scale == scale_) return;
  scale_ = scale;
  const auto px = [scale](double at_800) { return static_cast<int>(std::lround(scale * at_800)); };
  setFixedWidth(px(panel_width_px));
  setStyleSheet(QStringLiteral(
                    "QListWidget#lessonSteps { font-size: %1px; } QRadioButton#whatIf { font-size: %2px; } "
                    "QLabel, QRadioButton, QCheckBox, QLineEdit, QPushButton, QComboBox { font-size: %3px; } "
                    "QLabel#cardHeading { font-size: %4px; }")
                    .arg(px(list_px))
                    .arg(px(kind_px))
                    .arg(px(text_px))
                    .arg(px(text_px + 1)));
  for (const NumberField* field : what_if_->findChildren<NumberField*>())
    field->edit()->setFixedWidth(px(field_px));
  fit_list();
}

void LessonPanel::fit_list() {
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
