#include "viewer/window/fields/spot_pad.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>

#include "viewer/words/site_words.h"

namespace scalpmark::window {

QString spot_name(int row, int column) {
  return QString::fromStdString(viewer::spot_in_words(row, column));
}

SpotPad::SpotPad(const QString& purpose, QWidget* parent) : QWidget(parent), purpose_(purpose) {
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
  for (std::size_t i = 0; i < spots_.size(); ++i) {
    auto* button = new QPushButton;
    button->setObjectName("spot");
    button->setCheckable(true);
    button->setFixedSize(button_px, button_px);
    button->setAutoDefault(false);
    spots_[i].button = button;
    grid->addWidget(button, 1 + static_cast<int>(i / 3), static_cast<int>(i % 3));
    connect(button, &QPushButton::clicked, this, [this, i] {
      spots_[i].button->setChecked(true);
      emit chosen(spots_[i].row, spots_[i].column);
    });
  }
  grid->setColumnStretch(3, 1);
  set_side(geometry::Side::left);
}

void SpotPad::set_button_px(int px) {
  for (const Spot& spot : spots_) spot.button->setFixedSize(px, px);
}

void SpotPad::set_side(geometry::Side side) {
  side_ = side;
  for (std::size_t i = 0; i < spots_.size(); ++i) {
    spots_[i].row = 1 - static_cast<int>(i / 3);
    const int across = static_cast<int>(i % 3) - 1;  // to the patient's right
    spots_[i].column = side == geometry::Side::left ? -across : across;
  }
  label();
}

void SpotPad::label() {
  for (const Spot& spot : spots_) {
    const bool marked = marked_ && spot.row == marked_->row && spot.column == marked_->column;
    const QString name = marked ? tr("%1, the hotspot").arg(spot_name(spot.row, spot.column))
                                : spot_name(spot.row, spot.column);
    spot.button->setText(marked                              ? QStringLiteral("\u25ef")
                         : spot.row == 0 && spot.column == 0 ? QStringLiteral("0")
                                                             : QString());
    spot.button->setToolTip(name);
    spot.button->setAccessibleName(tr("%1: %2").arg(purpose_, name));
  }
}

void SpotPad::choose(std::optional<geometry::GridPosition> spot) {
  for (const Spot& each : spots_)
    each.button->setChecked(spot && each.row == spot->row && each.column == spot->column);
}

void SpotPad::mark(std::optional<geometry::GridPosition> hotspot) {
  marked_ = hotspot;
  label();
}

QPushButton* SpotPad::button(int row, int column) const {
  for (const Spot& spot : spots_)
    if (spot.row == row && spot.column == column) return spot.button;
  return nullptr;
}

void SpotPad::keyPressEvent(QKeyEvent* event) {
  for (std::size_t i = 0; i < spots_.size(); ++i) {
    if (!spots_[i].button->hasFocus()) continue;
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
      spots_[std::size_t{3} * static_cast<std::size_t>(row) + static_cast<std::size_t>(column)]
          .button->setFocus(Qt::TabFocusReason);
    return;
  }
  QWidget::keyPressEvent(event);
}

}  // namespace scalpmark::window
