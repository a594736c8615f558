#include "viewer/window/steps/threshold_chart.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <map>

#include "viewer/stage/scene/palette.h"

namespace scalpmark::window {

namespace {

constexpr int chart_height_px = 204, curve_points = 48;
constexpr double margin_percent = 8, least_width_percent = 20;
constexpr double dot_px = 3.2, dot_step_px = 7.5;

QColor colour_in_chart(const viewer::Colour& c, int alpha = 255) {
  return {c.red, c.green, c.blue, alpha};
}

}  // namespace

ThresholdChart::ThresholdChart(QWidget* parent) : QWidget(parent) {
  setFixedHeight(chart_height_px);
  setAccessibleName(tr("Answers against output"));
}

void ThresholdChart::show_threshold(const std::shared_ptr<const geometry::ThresholdAtSpot>& threshold) {
  threshold_ = threshold;
  curve_.clear();
  setVisible(threshold != nullptr);
  update();
}

void ThresholdChart::work_out() {
  std::map<int, Dots> by_output;
  for (const geometry::Pulse& pulse : threshold_->pulses) {
    Dots& dots = by_output.try_emplace(pulse.output_percent, Dots{pulse.output_percent, 0, 0}).first->second;
    ++(pulse.answered ? dots.answered : dots.missed);
  }
  dots_.clear();
  for (const auto& each : by_output) dots_.push_back(each.second);
  estimate_ = threshold_->belief.estimate();
  low_ = dots_.front().output_percent - margin_percent;
  high_ = dots_.back().output_percent + margin_percent;
  const double lacking = std::max(0.0, least_width_percent - (high_ - low_));
  low_ = std::max(1.0, std::floor(low_ - lacking / 2));
  high_ = std::min(100.0, std::ceil(high_ + lacking / 2));
  for (int i = 0; i <= curve_points; ++i) {
    const double at = low_ + (high_ - low_) * i / curve_points;
    curve_.push_back({at, threshold_->belief.answers_at(at)});
  }
}

QRectF ThresholdChart::area() const {
  return QRectF(rect()).adjusted(46, 14, -8, -50);
}

QPointF ThresholdChart::place(double output_percent, double chance) const {
  const QRectF inside = area();
  return {inside.left() + inside.width() * (output_percent - low_) / (high_ - low_),
          inside.bottom() - inside.height() * chance};
}

void ThresholdChart::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  QFont font = painter.font();
  font.setPixelSize(12);
  painter.setFont(font);
  if (!threshold_) return;
  if (curve_.empty()) work_out();
  paint_band(painter);
  paint_axes(painter);
  paint_threshold(painter);
  paint_dots(painter);
}

void ThresholdChart::paint_axes(QPainter& painter) const {
  const QRectF inside = area();
  painter.setPen(QPen(palette().color(QPalette::WindowText), 1));
  painter.drawLine(inside.bottomLeft(), inside.bottomRight());
  painter.drawLine(inside.bottomLeft(), inside.topLeft());
  for (const double chance : {0.0, 0.5, 1.0}) {
    const QPointF at = place(low_, chance);
    painter.drawLine(at, at - QPointF(4, 0));
    painter.drawText(QRectF(0, at.y() - 9, inside.left() - 7, 18), Qt::AlignRight | Qt::AlignVCenter,
                     tr("%1 %").arg(100 * chance, 0, 'f', 0));
  }
  const int step = high_ - low_ > 45 ? 10 : 5;
  for (int at = static_cast<int>(std::ceil(low_ / step)) * step; at <= high_; at += step) {
    const QPointF tick = place(at, 0);
    painter.drawLine(tick, tick + QPointF(0, 4));
    painter.drawText(QRectF(tick.x() - 20, tick.y() + 4, 40, 15), Qt::AlignCenter, QString::number(at));
  }
  painter.drawText(QRectF(0, height() - 32, width(), 16), Qt::AlignCenter, tr("output, %"));
  painter.drawText(QRectF(0, height() - 17, width(), 16), Qt::AlignCenter,
                   tr("dots: pulses; shaded: chance of an answer"));
}

void ThresholdChart::paint_band(QPainter& painter) const {
  QPolygonF band;
  QPainterPath mean;
  for (const At& at : curve_) {
    band << place(at.output_percent, at.band.high);
    const QPointF middle = place(at.output_percent, at.band.mean);
    if (mean.elementCount() == 0)
      mean.moveTo(middle);
    else
      mean.lineTo(middle);
  }
  for (auto at = curve_.rbegin(); at != curve_.rend(); ++at) band << place(at->output_percent, at->band.low);
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour_in_chart(viewer::okabe_ito::sky_blue, 110));
  painter.drawPolygon(band);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(colour_in_chart(viewer::okabe_ito::blue), 2));
  painter.drawPath(mean);
}

void ThresholdChart::paint_threshold(QPainter& painter) const {
  if (!estimate_) return;
  const QRectF inside = area();
  const auto kept = [&](double percent) { return std::clamp(percent, low_, high_); };
  painter.setPen(QPen(palette().color(QPalette::WindowText), 1.4, Qt::DashLine));
  const QPointF foot = place(kept(estimate_->mean_percent), 0);
  painter.drawLine(foot, QPointF(foot.x(), inside.top()));
  painter.setPen(QPen(palette().color(QPalette::WindowText), 3));
  painter.drawLine(place(kept(estimate_->low_percent), 0.5), place(kept(estimate_->high_percent), 0.5));
}

void ThresholdChart::paint_dots(QPainter& painter) const {
  painter.setPen(QPen(palette().color(QPalette::WindowText), 1));
  const auto row = [&](const Dots& dots, int count, bool answered) {
    // Answered ones hang from the top, filled; the others stand on the axis, hollow.
    painter.setBrush(answered ? QBrush(palette().color(QPalette::WindowText))
                              : QBrush(palette().color(QPalette::Base)));
    const double room = area().height() / 2 - dot_px;
    const double step = count > 1 ? std::min(dot_step_px, room / (count - 1)) : 0;
    for (int i = 0; i < count; ++i) {
      const QPointF end = place(dots.output_percent, answered ? 1 : 0);
      const double away = dot_px + 1 + step * i;
      painter.drawEllipse(QPointF(end.x(), end.y() + (answered ? away : -away)), dot_px, dot_px);
    }
  };
  for (const Dots& dots : dots_) {
    row(dots, dots.answered, true);
    row(dots, dots.missed, false);
  }
}

}  // namespace scalpmark::window
