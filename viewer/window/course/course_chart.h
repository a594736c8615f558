#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "geometry/answers/course.h"

namespace scalpmark::window {

/// One measurement by visit: a dot each, those outside the limits of their stretch as squares with their
/// number, the limits as dashed lines and their centre as a thin one. A gap in the line where the marks were
/// drawn anew.
class CourseChart : public QWidget {
  Q_OBJECT
public:
  enum class Shows { distance, angle };
  explicit CourseChart(Shows shows, QWidget* parent = nullptr);
  void show_course(const geometry::Course& course);

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  [[nodiscard]] QRectF area() const;
  [[nodiscard]] QPointF place(std::size_t visit, double value) const;
  [[nodiscard]] const std::optional<geometry::ControlLimits>& limits_of(
      const geometry::CourseStretch& stretch) const;
  [[nodiscard]] double value_of(std::size_t visit) const;
  void paint_axes(QPainter& painter) const;
  void paint_stretch(QPainter& painter, const geometry::CourseStretch& stretch) const;

  Shows shows_;
  geometry::Course course_;
  double low_ = 0, high_ = 1;
};

}  // namespace scalpmark::window
