#include "viewer/window/frame/box_style.h"

#include <QPainter>
#include <QPen>
#include <QPolygonF>
#include <QStyleOption>
#include <algorithm>

namespace scalpmark::window {

BoxStyle::BoxStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

void BoxStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                             const QWidget* widget) const {
  if (element != PE_IndicatorCheckBox) {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    return;
  }
  const double side = std::min(option->rect.width(), option->rect.height()) - 1.5;
  const QRectF box(option->rect.center().x() + 0.5 - side / 2, option->rect.center().y() + 0.5 - side / 2,
                   side, side);
  const bool on = (option->state & State_On) != 0, enabled = (option->state & State_Enabled) != 0;
  const QPalette::ColorGroup group = enabled ? QPalette::Active : QPalette::Disabled;
  const QColor line = option->palette.color(group, QPalette::Text);
  const QColor fill = on && enabled ? option->palette.color(QPalette::Highlight)
                                    : option->palette.color(group, QPalette::Base);
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->setPen(QPen(on && enabled ? fill : line, 1.3));
  painter->setBrush(fill);
  painter->drawRoundedRect(box, 2.5, 2.5);
  if (on) {
    painter->setPen(QPen(enabled ? option->palette.color(QPalette::HighlightedText) : line, side / 7,
                         Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const auto at = [&](double x, double y) { return QPointF(box.left() + x * side, box.top() + y * side); };
    painter->drawPolyline(QPolygonF{at(0.22, 0.53), at(0.42, 0.73), at(0.78, 0.29)});
  }
  painter->restore();
}

}  // namespace scalpmark::window
