#pragma once

#include <QProxyStyle>

namespace scalpmark::window {

/// Qt's Fusion with boxes to tick whose outline and tick can be seen from where staff stand: Fusion draws
/// both in a shade of the ground.
class BoxStyle : public QProxyStyle {
  Q_OBJECT
public:
  BoxStyle();
  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
};

}  // namespace scalpmark::window
