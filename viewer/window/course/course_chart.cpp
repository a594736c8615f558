#include "viewer/window/course/course_chart.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "viewer/stage/scene/palette.h"
#include "viewer/words/numbers.h"

namespace scalpmark::window {

namespace {

constexpr int course_chart_height_px = 190;
constexpr double visit_dot_px = 4;

}  // namespace

CourseChart::CourseChart(Shows shows, QWidget* parent) : QWidget(parent), shows_(shows) {
  setMinimumHeight(course_chart_height_px);
  setMinimumWidth(280);
  setAccessibleName(shows == Shows::distance ? tr("Distance from the site by visit")
                                             : tr("Angle off by visit"));
}

const std::optional<geometry::ControlLimits>& CourseChart::limits_of(
    const geometry::CourseStretch& stretch) const {
  return shows_ == Shows::distance ? stretch.distance : stretch.angle;
}

double CourseChart::value_of(std::size_t visit) const {
  const geometry::VisitOffset& offset = *course_.offsets[visit];
  return shows_ == Shows::distance ? offset.pulse_off_mm : offset.angle_off_deg;
}

void CourseChart::show_course(const geometry::Course& course) {
  course_ = course;
  low_ = shows_ == Shows::distance ? 0 : -5;
  high_ = shows_ == Shows::distance ? 10 : 5;
  for (const geometry::CourseStretch& stretch : course_.stretches) {
    for (const std::size_t visit : stretch.measured) {
      low_ = std::min(low_, value_of(visit));
      high_ = std::max(high_, value_of(visit));
    }
    if (const auto& limits = limits_of(stretch)) {
      high_ = std::max(high_, limits->high);
      if (shows_ == Shows::angle) low_ = std::min(low_, limits->low);
    }
  }
  high_ = std::ceil(high_ / 5) * 5;
  low_ = std::floor(low_ / 5) * 5;
  update();
}

QRectF CourseChart::area() const {
  return QRectF(rect()).adjusted(40, 26, -12, -36);
}

QPointF CourseChart::place(std::size_t visit, double value) const {
  const QRectF inside = area();
  const auto count = static_cast<double>(std::max<std::size_t>(course_.offsets.size(), 1));
  return {inside.left() + inside.width() * (static_cast<double>(visit) + 0.5) / count,
          inside.bottom() - inside.height() * (value - low_) / (high_ - low_)};
}

void CourseChart::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  QFont font = painter.font();
  font.setPixelSize(13);
  painter.setFont(font);
  paint_axes(painter);
  for (const geometry::CourseStretch& stretch : course_.stretches) paint_stretch(painter, stretch);
}

void CourseChart::paint_axes(QPainter& painter) const {
  const QRectF inside = area();
  painter.setPen(QPen(palette().color(QPalette::WindowText), 1));
  painter.drawText(QRectF(0, 2, width(), 20), Qt::AlignCenter,
                   shows_ == Shows::distance
                       ? tr("Pulse from the site, %1").arg(QString::fromStdString(viewer::small_unit()))
                       : tr("Angle off, degrees"));
  painter.drawText(QRectF(0, height() - 18, width(), 18), Qt::AlignCenter, tr("visit"));
  painter.drawLine(inside.bottomLeft(), inside.bottomRight());
  painter.drawLine(inside.bottomLeft(), inside.topLeft());
  const double step = high_ - low_ > 30 ? 10 : 5;
  for (double value = low_; value <= high_ + 1e-9; value += step) {
    const double y = place(0, value).y();
    painter.drawLine(QPointF(inside.left() - 4, y), QPointF(inside.left(), y));
    painter.drawText(QRectF(0, y - 9, inside.left() - 7, 18), Qt::AlignRight | Qt::AlignVCenter,
                     shows_ == Shows::distance ? QString::fromStdString(viewer::small_number(value))
                                               : QString::number(value));
  }
  const std::size_t count = course_.offsets.size();
  const std::size_t every = count > 20 ? 5 : count > 10 ? 2 : 1;
  for (std::size_t visit = 0; visit < count; ++visit)
    if (visit == 0 || (visit + 1) % every == 0)
      painter.drawText(QRectF(place(visit, low_).x() - 20, inside.bottom() + 3, 40, 16), Qt::AlignCenter,
                       QString::number(visit + 1));
}

void CourseChart::paint_stretch(QPainter& painter, const geometry::CourseStretch& stretch) const {
  const QColor ink = palette().color(QPalette::WindowText);
  const viewer::Colour& blue = viewer::okabe_ito::blue;
  if (const auto& limits = limits_of(stretch)) {
    const double from = place(stretch.first, 0).x() - 6;
    const double to = place(stretch.first + stretch.count - 1, 0).x() + 6;
    const auto across = [&](double value, Qt::PenStyle style, double width_px) {
      painter.setPen(QPen(ink, width_px, style));
      painter.drawLine(QPointF(from, place(0, value).y()), QPointF(to, place(0, value).y()));
    };
    across(limits->high, Qt::DashLine, 1.4);
    if (shows_ == Shows::angle) across(limits->low, Qt::DashLine, 1.4);
    across(limits->centre, Qt::SolidLine, 1);
  }
  QPolygonF line;
  for (const std::size_t visit : stretch.measured) line << place(visit, value_of(visit));
  painter.setPen(QPen(QColor(blue.red, blue.green, blue.blue), 1.6));
  painter.drawPolyline(line);
  const auto& limits = limits_of(stretch);
  for (std::size_t i = 0; i < stretch.measured.size(); ++i) {
    const QPointF at = line[static_cast<int>(i)];
    const bool outside =
        limits && std::find(limits->outside.begin(), limits->outside.end(), i) != limits->outside.end();
    painter.setPen(QPen(ink, 1));
    painter.setBrush(outside ? QBrush(ink) : QBrush(QColor(blue.red, blue.green, blue.blue)));
    if (outside)
      painter.drawRect(
          QRectF(at.x() - visit_dot_px, at.y() - visit_dot_px, 2 * visit_dot_px, 2 * visit_dot_px));
    else
      painter.drawEllipse(at, visit_dot_px, visit_dot_px);
    painter.setBrush(Qt::NoBrush);
    if (outside)
      painter.drawText(QRectF(at.x() - 20, at.y() - 22, 40, 16), Qt::AlignCenter,
                       QString::number(stretch.measured[i] + 1));
  }
}

}  // namespace scalpmark::window
