#pragma once

#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

#include "geometry/answers/visit_answers.h"

namespace scalpmark::window {

/// The pulses at a spot as dots, answered above and not below, over the output; the chance of an answer as
/// far as it is known, as a band of 95 of 100 about its mean; and the threshold with its interval.
class ThresholdChart : public QWidget {
  Q_OBJECT
public:
  explicit ThresholdChart(QWidget* parent = nullptr);
  /// Nothing where it is null. Its curve is worked out when it comes into sight: it takes twenty
  /// milliseconds, and while pulses are logged the chart is often scrolled away.
  void show_threshold(const std::shared_ptr<const geometry::ThresholdAtSpot>& threshold);

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  struct At {
    double output_percent;
    geometry::AnswerBand band;
  };
  struct Dots {
    int output_percent, answered, missed;
  };
  void work_out();
  [[nodiscard]] QRectF area() const;
  [[nodiscard]] QPointF place(double output_percent, double chance) const;
  void paint_axes(QPainter& painter) const;
  void paint_band(QPainter& painter) const;
  void paint_threshold(QPainter& painter) const;
  void paint_dots(QPainter& painter) const;

  std::shared_ptr<const geometry::ThresholdAtSpot> threshold_;
  double low_ = 30, high_ = 70;  // percent, of the axis
  std::vector<At> curve_;
  std::vector<Dots> dots_;
  std::optional<geometry::ThresholdEstimate> estimate_;
};

}  // namespace scalpmark::window
