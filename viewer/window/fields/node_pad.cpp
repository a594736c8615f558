#include "viewer/window/fields/node_pad.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>

namespace scalpmark::window {

namespace {

constexpr int button_px = 34;

}  // namespace

QString node_name(int row, int column) {
  if (row == 0 && column == 0) return NodePad::tr("the start");
  QStringList parts;
  if (row != 0) parts << (row > 0 ? NodePad::tr("one step forward") : NodePad::tr("one step back"));
  if (column != 0)
    parts << (column > 0 ? NodePad::tr("one step outward") : NodePad::tr("one step toward the midline"));
  return parts.join(NodePad::tr(", "));
}

NodePad::NodePad(const QString& purpose, QWidget* parent) : QWidget(parent), purpose_(purpose) {
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setSpacing(4);
  const auto side = [](const QString& text) {
    auto* label = new QLabel(text);
    label->setObjectName("quiet");
    label->setAlignment(Qt::AlignCenter);
    return label;
  };
  grid->addWidget(side(tr("nose")), 0, 0, 1, 3);
  for (std::size_t i = 0; i < nodes_.size(); ++i) {
    auto* button = new QPushButton;
    button->setObjectName("node");
    button->setCheckable(true);
    button->setFixedSize(button_px, button_px);
    button->setAutoDefault(false);
    nodes_[i].button = button;
    grid->addWidget(button, 1 + static_cast<int>(i / 3), static_cast<int>(i % 3));
    connect(button, &QPushButton::clicked, this, [this, i] {
      nodes_[i].button->setChecked(true);
      emit chosen(nodes_[i].row, nodes_[i].column);
    });
  }
  grid->setColumnStretch(3, 1);
  set_side(geometry::Side::left);
}

void NodePad::set_side(geometry::Side side) {
  side_ = side;
  for (std::size_t i = 0; i < nodes_.size(); ++i) {
    nodes_[i].row = 1 - static_cast<int>(i / 3);
    const int across = static_cast<int>(i % 3) - 1;  // to the patient's right
    nodes_[i].column = side == geometry::Side::left ? -across : across;
  }
  label();
}

void NodePad::label() {
  for (const Node& node : nodes_) {
    const QString name = node_name(node.row, node.column);
    node.button->setText(node.row == 0 && node.column == 0 ? QStringLiteral("0") : QString());
    node.button->setToolTip(name);
    node.button->setAccessibleName(tr("%1: %2").arg(purpose_, name));
  }
}

void NodePad::choose(std::optional<geometry::HotspotNode> node) {
  for (const Node& each : nodes_)
    each.button->setChecked(node && each.row == node->row && each.column == node->column);
}

QPushButton* NodePad::button(int row, int column) const {
  for (const Node& node : nodes_)
    if (node.row == row && node.column == column) return node.button;
  return nullptr;
}

void NodePad::keyPressEvent(QKeyEvent* event) {
  for (std::size_t i = 0; i < nodes_.size(); ++i) {
    if (!nodes_[i].button->hasFocus()) continue;
    int row = static_cast<int>(i / 3), column = static_cast<int>(i % 3);
    switch (event->key()) {
      case Qt::Key_Left:
        --column;
        break;
      case Qt::Key_Right:
        ++column;
        break;
      case Qt::Key_Up:
        --row;
        break;
      case Qt::Key_Down:
        ++row;
        break;
      default:
        QWidget::keyPressEvent(event);
        return;
    }
    if (row >= 0 && row < 3 && column >= 0 && column < 3)
      nodes_[std::size_t{3} * static_cast<std::size_t>(row) + static_cast<std::size_t>(column)]
          .button->setFocus(Qt::TabFocusReason);
    return;
  }
  QWidget::keyPressEvent(event);
}

}  // namespace scalpmark::window
