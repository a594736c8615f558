#include "viewer/window/teach/lesson_tools.h"

#include <QGridLayout>

namespace scalpmark::window {

LessonTools::LessonTools(QWidget* parent) : QWidget(parent) {
  why_ = new QPushButton(tr("Why?"));
  why_->setCheckable(true);
  why_->setToolTip(tr("Says at each step why it is done so"));
  why_->setAccessibleDescription(why_->toolTip());
  other_side_ = new QPushButton;
  other_side_->setToolTip(tr("Moves the case to the other side, as in the search; undo takes it back"));
  other_side_->setAccessibleDescription(other_side_->toolTip());
  speed_ = new QComboBox;
  speed_->setAccessibleName(tr("How fast the lesson plays"));
  speed_->addItem(tr("Plays slowly"), 1.6);
  speed_->addItem(tr("Plays at reading pace"), 1.0);
  speed_->addItem(tr("Plays quickly"), 0.5);
  speed_->setCurrentIndex(1);
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setSpacing(6);
  grid->addWidget(why_, 0, 0);
  grid->addWidget(other_side_, 0, 1);
  grid->addWidget(speed_, 1, 0, 1, 2);
  grid->setColumnStretch(1, 1);
  show_side(true);
  connect(why_, &QPushButton::toggled, this, &LessonTools::why_switched);
  connect(other_side_, &QPushButton::clicked, this, &LessonTools::side_wanted);
  connect(speed_, qOverload<int>(&QComboBox::currentIndexChanged), this,
          [this](int index) { emit tempo_chosen(speed_->itemData(index).toDouble()); });
}

void LessonTools::show_side(bool left) {
  other_side_->setText(left ? tr("Show it on the right") : tr("Show it on the left"));
}

}  // namespace scalpmark::window
