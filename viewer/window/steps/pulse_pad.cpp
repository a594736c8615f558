#include "viewer/window/steps/pulse_pad.h"

#include <QGridLayout>
#include <QPainter>
#include <QPainterPath>

#include "viewer/window/fields/spot_pad.h"

namespace scalpmark::window {

namespace {

constexpr int spot_width_px = 52, spot_height_px = 44, spot_gap_px = 4, nose_px = 22;

}  // namespace

PulsePad::PulsePad(QWidget* parent) : QWidget(parent) {
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, nose_px + 2, 0, 0);
  grid->setSpacing(spot_gap_px);
  for (std::size_t i = 0; i < places_.size(); ++i) {
    auto* button = new QPushButton;
    button->setObjectName("pulsespot");
    button->setCheckable(true);
    button->setAutoDefault(false);
    button->setFixedSize(spot_width_px, spot_height_px);
    button->setFocusPolicy(Qt::NoFocus);  // the panel's arrow keys go from spot to spot
    places_[i].button = button;
    grid->addWidget(button, static_cast<int>(i / 3), static_cast<int>(i % 3));
    connect(button, &QPushButton::clicked, this, [this, i] {
      places_[i].button->setChecked(true);
      emit chosen(places_[i].spot);
    });
  }
  setFixedSize(3 * spot_width_px + 2 * spot_gap_px, 3 * spot_height_px + 2 * spot_gap_px + nose_px + 2);
  set_side(geometry::Side::left);
}

void PulsePad::set_side(geometry::Side side) {
  for (std::size_t i = 0; i < places_.size(); ++i) {
    const int across = static_cast<int>(i % 3) - 1;  // to the patient's right
    places_[i].spot = {1 - static_cast<int>(i / 3), side == geometry::Side::left ? -across : across};
  }
  label();
}

void PulsePad::label() {
  for (const Place& place : places_) {
    const auto number = geometry::place_in_spiral(place.spot) + 1;
    place.button->setText(place.tally.isEmpty() ? QString::number(number)
                                                : QStringLiteral("%1\n%2").arg(number).arg(place.tally));
    const QString name = spot_name(place.spot.row, place.spot.column);
    place.button->setToolTip(name);
    place.button->setAccessibleName(place.tally.isEmpty()
                                        ? tr("Spot %1: %2").arg(number).arg(name)
                                        : tr("Spot %1: %2, answered %3").arg(number).arg(name, place.tally));
  }
}

void PulsePad::choose(const geometry::GridPosition& spot) {
  for (const Place& place : places_) place.button->setChecked(place.spot == spot);
}

void PulsePad::show_answers(const std::vector<geometry::GridPosition>& spots,
                            const std::vector<geometry::SpotAnswers>& answers) {
  for (Place& place : places_) {
    place.tally.clear();
    for (std::size_t i = 0; i < answers.size(); ++i)
      if (spots[i] == place.spot && answers[i].pulses > 0)
        place.tally = QStringLiteral("%1/%2").arg(answers[i].answers).arg(answers[i].pulses);
  }
  label();
}

QPushButton* PulsePad::button(const geometry::GridPosition& spot) const {
  for (const Place& place : places_)
    if (place.spot == spot) return place.button;
  return nullptr;
}

void PulsePad::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(palette().color(QPalette::WindowText), 2));
  // A nose seen from above: its bridge comes forward from the brow.
  const double middle = width() / 2.0, brow = nose_px - 1;
  QPainterPath nose;
  nose.moveTo(middle - 34, brow);
  nose.quadTo(middle - 9, brow - 1, middle - 7, brow - 9);
  nose.quadTo(middle, 0, middle + 7, brow - 9);
  nose.quadTo(middle + 9, brow - 1, middle + 34, brow);
  painter.drawPath(nose);
}

}  // namespace scalpmark::window
