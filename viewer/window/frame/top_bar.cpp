#include "viewer/window/frame/top_bar.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QResizeEvent>
#include <QStyle>
#include <QVariant>

namespace scalpmark::window {

TopBar::TopBar(QWidget* parent) : QWidget(parent), modes_(new QButtonGroup(this)) {
  setObjectName("topBar");
  setAttribute(Qt::WA_StyledBackground);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(8, 6, 8, 6);
  const auto add = [row](const QString& name, const QString& tooltip) {
    auto* button = new QPushButton(name);
    button->setObjectName("mode");
    button->setToolTip(tooltip);
    row->addWidget(button);
    return button;
  };
  const auto add_mode = [&](Mode mode, const QString& name, const QString& tooltip) {
    QPushButton* button = add(name, tooltip);
    button->setCheckable(true);
    modes_->addButton(button, static_cast<int>(mode));
  };
  add_mode(Mode::worksheet, tr("Worksheet"), tr("Enter a case, step by step"));
  add_mode(Mode::teach, tr("Teach"), tr("Walk a class through the procedure"));
  add_mode(Mode::practise, tr("Practise"),
           tr("Do the whole job on another head, and see in millimetres what each step costs"));
  add_mode(Mode::check, tr("Check"), tr("Check today's marks, in large type"));
  add_mode(Mode::course, tr("Course"), tr("Look back over all visits of the case"));
  add_mode(Mode::explain, tr("Explain"), tr("Show a patient what happens"));
  row->addStretch(1);
  const auto* picture = add(tr("Picture\u2026"), tr("Save what the stage shows as a picture"));
  const auto* sheet = add(tr("Sheet\u2026"), tr("Save the placement sheet as PDF, A4 or Letter"));
  connect(modes_, &QButtonGroup::idClicked, this,
          [this](int id) { emit mode_wanted(static_cast<Mode>(id)); });
  connect(picture, &QPushButton::clicked, this, &TopBar::picture_wanted);
  connect(sheet, &QPushButton::clicked, this, &TopBar::sheet_wanted);
}

void TopBar::fit() {
  constexpr int saved_px = 2 * (16 - 6);  // a button, see theme.cpp
  const QList<QPushButton*> buttons = findChildren<QPushButton*>();
  const int usual = layout()->sizeHint().width() + (tight_ ? saved_px * static_cast<int>(buttons.size()) : 0);
  const bool tight = usual > width();
  if (tight == tight_) return;
  tight_ = tight;
  setProperty("tight", tight);
  for (QPushButton* button : buttons) {
    style()->unpolish(button);
    style()->polish(button);
    button->updateGeometry();
  }
}

void TopBar::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit();
}

bool TopBar::event(QEvent* event) {
  const bool done = QWidget::event(event);
  if (event->type() == QEvent::LayoutRequest) fit();
  return done;
}

QPushButton* TopBar::button(Mode mode) const {
  return qobject_cast<QPushButton*>(modes_->button(static_cast<int>(mode)));
}

}  // namespace scalpmark::window
