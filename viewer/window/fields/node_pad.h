#pragma once

#include <QPushButton>
#include <QWidget>
#include <array>
#include <optional>

#include "geometry/plan/case.h"

namespace scalpmark::window {

/// The nine nodes as buttons, laid out as one looks down on the head with the nose up. Arrow keys go from
/// node to node.
class NodePad : public QWidget {
  Q_OBJECT
public:
  explicit NodePad(const QString& purpose, QWidget* parent = nullptr);

  /// Which way is outward.
  void set_side(geometry::Side side);
  /// The node that is chosen, if any.
  void choose(std::optional<geometry::HotspotNode> node);
  [[nodiscard]] QPushButton* button(int row, int column) const;

signals:
  void chosen(int row, int column);

protected:
  void keyPressEvent(QKeyEvent* event) override;

private:
  struct Node {
    QPushButton* button = nullptr;
    int row = 0, column = 0;
  };
  void label();

  QString purpose_;
  geometry::Side side_ = geometry::Side::left;
  std::array<Node, 9> nodes_;  // as seen, top row first
};

/// "the start", "1 forward, 1 outward" (in steps of the grid).
[[nodiscard]] QString node_name(int row, int column);

}  // namespace scalpmark::window
