#include "viewer/window/practise/practise_card.h"

#include <QHeaderView>
#include <cmath>

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

void wrap_in_table(QTableWidget& table) {
  table.setWordWrap(true);
  table.verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table.verticalHeader()->setMinimumSectionSize(0);
}

QString in_two_lines(const QString& heading) {
  // At the space nearest to the middle.
  qsizetype best = -1;
  for (qsizetype i = 0; i < heading.size(); ++i)
    if (heading[static_cast<int>(i)] == QLatin1Char(' ') &&
        (best < 0 || std::abs(2 * i - heading.size()) < std::abs(2 * best - heading.size())))
      best = i;
  QString text = heading;
  if (best >= 0) text[static_cast<int>(best)] = QLatin1Char('\n');
  return text;
}

QPushButton* practise_button(const QString& text, const QString& tooltip) {
  auto* button = new QPushButton(text);
  button->setToolTip(tooltip);
  button->setAccessibleDescription(tooltip);
  return button;
}

}  // namespace scalpmark::window
