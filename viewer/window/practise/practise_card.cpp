#include "viewer/window/practise/practise_card.h"

namespace scalpmark::window {

PractiseCard practise_card(const QString& heading) {
  PractiseCard card;
  card.frame = new QFrame;
  card.frame->setObjectName("step");
  card.rows = new QVBoxLayout(card.frame);
  card.rows->setContentsMargins(14, 8, 14, 10);
  card.rows->setSpacing(6);
  auto* label = new QLabel(heading);
  label->setObjectName("cardHeading");
  card.rows->addWidget(label);
  return card;
}

QLabel* practise_text(const char* name) {
  auto* label = new QLabel;
  label->setObjectName(QString::fromLatin1(name));
  label->setWordWrap(true);
  return label;
}

QPushButton* practise_button(const QString& text, const QString& tooltip) {
  auto* button = new QPushButton(text);
  button->setToolTip(tooltip);
  button->setAccessibleDescription(tooltip);
  return button;
}

}  // namespace scalpmark::window
