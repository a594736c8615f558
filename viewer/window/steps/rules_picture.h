#pragma once

#include <QWidget>
#include <optional>

#include "geometry/plan/side_view.h"
#include "viewer/words/numbers.h"

namespace scalpmark::window {

/// The three marking rules explained in one small picture: the coil flat, the head round, the three marks of
/// its front edge and the gap under it, seen from beside the coil.
class RulesPicture : public QWidget {
  Q_OBJECT
public:
  explicit RulesPicture(QWidget* parent = nullptr);

  /// `chosen`: the rule the coil is laid by, drawn strong. Nothing hides it all.
  void show_view(const std::optional<geometry::SideView>& view, geometry::MarkRule chosen);
  [[nodiscard]] const std::optional<geometry::SideView>& view() const { return view_; }
  /// What the picture says, for those who hear it.
  [[nodiscard]] QString said() const { return accessibleDescription(); }
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  [[nodiscard]] QFont letters(int width) const;
  /// Pixels of a place in the view.
  [[nodiscard]] QPointF at(const Eigen::Vector2d& mm) const;
  void draw_head(QPainter& painter) const;
  void draw_coil(QPainter& painter) const;
  void draw_rule(QPainter& painter, geometry::MarkRule rule) const;
  void draw_gap(QPainter& painter) const;
  void say();

  std::optional<geometry::SideView> view_;
  geometry::MarkRule chosen_ = geometry::MarkRule::drop;
};

}  // namespace scalpmark::window
