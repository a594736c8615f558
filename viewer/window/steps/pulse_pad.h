#pragma once

#include <QPushButton>
#include <QWidget>
#include <array>
#include <vector>

#include "geometry/answers/visit_answers.h"
#include "geometry/base/side.h"

namespace scalpmark::window {

/// The nine spots as large buttons, laid out as one looks down on the head, with the nose drawn above. Each
/// says its number in the order they are proposed, and how many of its pulses were answered.
class PulsePad : public QWidget {
  Q_OBJECT
public:
  explicit PulsePad(QWidget* parent = nullptr);

  /// Which way is outward.
  void set_side(geometry::Side side);
  /// The spot at hand.
  void choose(const geometry::GridPosition& spot);
  /// Of each spot in the order of `spots`; empty: no pulse anywhere.
  void show_answers(const std::vector<geometry::GridPosition>& spots,
                    const std::vector<geometry::SpotAnswers>& answers);
  [[nodiscard]] QPushButton* button(const geometry::GridPosition& spot) const;

signals:
  void chosen(geometry::GridPosition spot);

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  struct Place {
    QPushButton* button = nullptr;
    geometry::GridPosition spot;
    QString tally;
  };
  void label();

  std::array<Place, 9> places_;  // as seen, top row first
};

}  // namespace scalpmark::window
