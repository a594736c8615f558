#pragma once

#include <QPushButton>
#include <QWidget>
#include <array>
#include <optional>

#include "geometry/plan/case.h"

namespace scalpmark::window {

/// The nine spots as buttons, laid out as one looks down on the head with the nose up. Arrow keys go from
/// spot to spot.
class SpotPad : public QWidget {
  Q_OBJECT
public:
  static constexpr int button_px = 34;  ///< with letters of the usual size

  explicit SpotPad(const QString& purpose, QWidget* parent = nullptr);
  void set_button_px(int px);

  /// Which way is outward.
  void set_side(geometry::Side side);
  /// The spot that is chosen, if any.
  void choose(std::optional<geometry::GridPosition> spot);
  /// The spot that answered, marked with the hotspot's ring whatever is chosen.
  void mark(std::optional<geometry::GridPosition> hotspot);
  [[nodiscard]] QPushButton* button(int row, int column) const;

signals:
  void chosen(int row, int column);

protected:
  void keyPressEvent(QKeyEvent* event) override;

private:
  struct Spot {
    QPushButton* button = nullptr;
    int row = 0, column = 0;
  };
  void label();

  QString purpose_;
  geometry::Side side_ = geometry::Side::left;
  std::array<Spot, 9> spots_;  // as seen, top row first
  std::optional<geometry::GridPosition> marked_;
};

/// "the start", "1 forward, 1 outward" (in steps of the grid).
[[nodiscard]] QString spot_name(int row, int column);

}  // namespace scalpmark::window
