#include "viewer/practise/class_chart.h"

#include <QColor>
#include <QPen>
#include <QPointF>
#include <QPolygonF>
#include <algorithm>
#include <cmath>

#include "geometry/base/angles.h"
#include "viewer/stage/scene/palette.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

constexpr double least_reach_mm = 20, most_reach_mm = 60, reach_step_mm = 10;
constexpr double disc_mm = 1.1, diamond_mm = 1.6;  // on paper, from the middle to the rim
constexpr int light_grey = 200, frame_grey = 160;

QColor coloured(const Colour& colour) {
  return {colour.red, colour.green, colour.blue};
}

/// From mm on the skin to the paper.
struct ChartFrame {
  double middle_x_mm, middle_y_mm, paper_per_mm, outward_sign;

  [[nodiscard]] QPointF at(const Pages& pages, double forward_mm, double outward_mm) const {
    return {pages.dots(middle_x_mm + outward_sign * outward_mm * paper_per_mm),
            pages.dots(middle_y_mm - forward_mm * paper_per_mm)};
  }
};

void draw_grid(Pages& pages, const ChartFrame& frame, double reach_mm) {
  QPainter& painter = pages.painter();
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(QColor(light_grey, light_grey, light_grey), pages.dots(0.1)));
  for (double mm = -reach_mm; mm <= reach_mm; mm += reach_step_mm) {
    painter.drawLine(frame.at(pages, mm, -reach_mm), frame.at(pages, mm, reach_mm));
    painter.drawLine(frame.at(pages, -reach_mm, mm), frame.at(pages, reach_mm, mm));
  }
  painter.setPen(QPen(QColor(frame_grey, frame_grey, frame_grey), pages.dots(0.2)));
  painter.drawRect(
      QRectF(frame.at(pages, reach_mm, -reach_mm), frame.at(pages, -reach_mm, reach_mm)).normalized());
}

void draw_ellipse(Pages& pages, const ChartFrame& frame, const geometry::SkinEllipse& ellipse,
                  double weight_mm) {
  QPolygonF outline;
  const double way = geometry::radians(ellipse.long_axis_deg);
  for (int deg = 0; deg <= 360; deg += 5) {
    const double along = ellipse.long_mm * std::cos(geometry::radians(deg));
    const double beside = ellipse.short_mm * std::sin(geometry::radians(deg));
    outline << frame.at(pages, ellipse.centre.x() + along * std::cos(way) - beside * std::sin(way),
                        ellipse.centre.y() + along * std::sin(way) + beside * std::cos(way));
  }
  pages.painter().setPen(QPen(coloured(palette::pulse), pages.dots(weight_mm)));
  pages.painter().drawPolyline(outline);
}

void draw_pulses(Pages& pages, const ChartFrame& frame, const std::vector<geometry::Score>& attempts,
                 double reach_mm) {
  QPainter& painter = pages.painter();
  painter.setPen(QPen(Qt::white, pages.dots(0.2)));
  painter.setBrush(coloured(palette::pulse));
  const double disc = pages.dots(disc_mm);
  for (const geometry::Score& score : attempts) {
    if (!score.pulse) continue;
    const geometry::Offset& off = score.pulse->off;
    painter.drawEllipse(frame.at(pages, std::clamp(off.forward_mm, -reach_mm, reach_mm),
                                 std::clamp(off.outward_mm, -reach_mm, reach_mm)),
                        disc, disc);
  }
  painter.setBrush(coloured(palette::treatment));
  const QPointF aim = frame.at(pages, 0, 0);
  const double d = pages.dots(diamond_mm);
  painter.drawPolygon(
      QPolygonF({aim + QPointF(0, d), aim + QPointF(d, 0), aim - QPointF(0, d), aim - QPointF(d, 0)}));
}

}  // namespace

double chart_reach_mm(const std::vector<geometry::Score>& attempts, const geometry::Tolerance* hands) {
  double furthest = hands ? hands->most_mm : 0;
  for (const geometry::Score& score : attempts)
    if (score.pulse)
      furthest =
          std::max({furthest, std::abs(score.pulse->off.forward_mm), std::abs(score.pulse->off.outward_mm)});
  return std::clamp(reach_step_mm * std::ceil(furthest / reach_step_mm), least_reach_mm, most_reach_mm);
}

double draw_class_chart(Pages& pages, const ClassResults& results, const geometry::Tolerance* hands,
                        double x_mm, double y_mm, double size_mm) {
  const std::vector<geometry::Score> attempts = last_attempts(results);
  const double reach = chart_reach_mm(attempts, hands);
  // As seen from above with the nose up, so that the left side's outside is on the left.
  const bool left = geometry::side_of(results.answers->plan.treatment) == geometry::Side::left;
  const ChartFrame frame{x_mm + size_mm / 2, y_mm + size_mm / 2, size_mm / 2 / reach, left ? -1.0 : 1.0};
  draw_grid(pages, frame, reach);
  if (hands) {
    const geometry::Spread& spread = hands->placements > 0 ? hands->sampled : hands->first_order;
    draw_ellipse(pages, frame, spread.most, 0.2);
    draw_ellipse(pages, frame, spread.half, 0.4);
  }
  draw_pulses(pages, frame, attempts, reach);
  const QString words_below = Words::tr("From close by: forward is up, a square is %1.")
                                  .arg(QString::fromStdString(rough_length(reach_step_mm)));
  return size_mm + 0.5 +
         pages.text(words_below, x_mm, y_mm + size_mm + 0.5, size_mm, {9, false, true, false});
}

}  // namespace scalpmark::viewer
