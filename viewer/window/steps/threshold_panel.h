#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include "viewer/window/fields/number_field.h"
#include "viewer/window/session/pulse_log.h"
#include "viewer/window/steps/threshold_chart.h"

namespace scalpmark::window {

/// The threshold at the spot at hand: counted row by row, and estimated from all pulses beside it; the next
/// output offered by each; and what is written down. Proposes no output to treat with.
class ThresholdPanel : public QWidget {
  Q_OBJECT
public:
  ThresholdPanel(Session& session, PulseLog& log, QWidget* parent = nullptr);
  void show_log();

  [[nodiscard]] QLabel* counts() const { return counts_; }
  [[nodiscard]] QLabel* estimate() const { return estimate_; }
  /// Takes the output that the counting, or the estimate, would try next.
  [[nodiscard]] QPushButton* counting_next() const { return counting_next_; }
  [[nodiscard]] QPushButton* estimate_next() const { return estimate_next_; }
  [[nodiscard]] PlainField* written() const { return written_; }
  [[nodiscard]] ThresholdChart* chart() const { return chart_; }

private:
  void show_next(QPushButton* button, std::optional<int> percent, const QString& by);

  Session& session_;
  PulseLog& log_;
  QLabel *heading_, *counts_, *estimate_, *caution_;
  QPushButton *counting_next_, *estimate_next_;
  ThresholdChart* chart_;
  std::shared_ptr<const geometry::ThresholdAtSpot> drawn_;
  PlainField* written_;
};

}  // namespace scalpmark::window
