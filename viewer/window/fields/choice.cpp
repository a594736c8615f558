#include "viewer/window/fields/choice.h"

#include <QVBoxLayout>

namespace scalpmark::window {

Choice::Choice(const QString& name, const std::vector<Option>& options, QWidget* parent, Qt::Orientation way)
    : QWidget(parent), group_(new QButtonGroup(this)) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(2);
  auto* label = new QLabel(name);
  label->setWordWrap(true);
  all->addWidget(label);
  auto* row = new QBoxLayout(way == Qt::Horizontal ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(way == Qt::Horizontal ? 14 : 2);
  for (std::size_t i = 0; i < options.size(); ++i) {
    auto* button = new QRadioButton(options[i].text);
    button->setToolTip(options[i].tooltip);
    button->setAccessibleName(tr("%1: %2").arg(name, options[i].text));
    button->setAccessibleDescription(options[i].tooltip);
    group_->addButton(button, static_cast<int>(i));
    row->addWidget(button);
  }
  row->addStretch(1);
  all->addLayout(row);
  connect(group_, &QButtonGroup::idClicked, this, &Choice::picked);
}

void Choice::choose(int index) {
  if (auto* button = group_->button(index)) button->setChecked(true);
}

QRadioButton* Choice::button(int index) const {
  return qobject_cast<QRadioButton*>(group_->button(index));
}

}  // namespace scalpmark::window
