#include "viewer/window/steps/rules_picture.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "viewer/stage/scene/palette.h"

namespace scalpmark::window {

using geometry::MarkRule;

namespace {

// What of the head is in the picture, mm: from behind the pulse point to in front of the edge, and down as
// far as the marks lie, or further where their names need it.
constexpr double from_mm = -62, to_mm = 118, least_below_mm = 52, above_mm = 26;
constexpr double coil_height_mm = 9;

QColor colour(viewer::Colour c) {
  return {c.red, c.green, c.blue};
}

QString side_gap_text(double mm) {
  return QString::fromStdString(viewer::small_length(mm));
}

/// Names stand under the curve, one below the other from the innermost mark on, so that none lies on another:
/// where each ends, lines of text under its mark.
double rows_down(MarkRule rule) {
  return rule == MarkRule::nearest ? 1 : rule == MarkRule::tape ? 2.1 : 3.2;
}
constexpr double under_mark_px = 4;

QString name_of(MarkRule rule) {
  switch (rule) {
    case MarkRule::tape:
      return RulesPicture::tr("tape");
    case MarkRule::drop:
      return RulesPicture::tr("drop");
    case MarkRule::nearest:
      break;
  }
  return RulesPicture::tr("nearest");
}

}  // namespace

RulesPicture::RulesPicture(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("The three rules, seen from beside the coil"));
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  hide();
}

QSize RulesPicture::sizeHint() const {
  return {300, heightForWidth(300)};
}

QFont RulesPicture::letters(int width) const {
  QFont type = font();
  constexpr int letters_across = 27, smallest_px = 12;
  type.setPixelSize(std::max(smallest_px, width / letters_across));
  return type;
}

int RulesPicture::heightForWidth(int width) const {
  const double scale = width / (to_mm - from_mm);
  const int line = QFontMetrics(letters(width)).height();
  double height = scale * (least_below_mm + above_mm);
  if (view_)
    for (const MarkRule rule : geometry::all_mark_rules)
      if (const auto& mark = view_->by(rule))
        height =
            std::max(height, scale * (above_mm - mark->y()) + under_mark_px + rows_down(rule) * line + 3);
  return static_cast<int>(std::lround(height));
}

void RulesPicture::show_view(const std::optional<geometry::SideView>& view, MarkRule chosen) {
  view_ = view;
  chosen_ = chosen;
  say();
  setVisible(view_.has_value());
  updateGeometry();
  update();
}

void RulesPicture::say() {
  if (!view_) return;
  QStringList parts;
  for (const MarkRule rule : geometry::all_mark_rules)
    if (const auto& mark = view_->by(rule))
      parts << tr("%1: edge %2 above its mark", "a rule, and how far its mark lies from the edge")
                   .arg(name_of(rule), side_gap_text((*mark - view_->edge).norm()));
  setAccessibleDescription(parts.join(QStringLiteral("; ")));
  setToolTip(accessibleDescription());
}

QPointF RulesPicture::at(const Eigen::Vector2d& mm) const {
  const double scale = width() / (to_mm - from_mm);
  return {scale * (mm.x() - from_mm), scale * (above_mm - mm.y())};
}

void RulesPicture::draw_head(QPainter& painter) const {
  QPainterPath head;
  bool begun = false;
  for (const auto& p : view_->skin) {
    begun ? head.lineTo(at(p)) : head.moveTo(at(p));
    begun = true;
  }
  if (!begun) return;
  QPainterPath filled = head;
  filled.lineTo(at({view_->skin.back().x(), -200}));
  filled.lineTo(at({view_->skin.front().x(), -200}));
  filled.closeSubpath();
  painter.fillPath(filled, colour(viewer::palette::skin));
  painter.setPen(QPen(colour(viewer::palette::construction), 1.4));
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(head);
}

void RulesPicture::draw_coil(QPainter& painter) const {
  const QRectF body(at({view_->back_mm, view_->face_mm + coil_height_mm}),
                    at({view_->edge.x(), view_->face_mm}));
  QColor casing = colour(viewer::palette::casing);
  casing.setAlpha(90);
  painter.setPen(QPen(colour(viewer::palette::casing), 1.4));
  painter.setBrush(casing);
  painter.drawRect(body);
  painter.setPen(colour(viewer::palette::text));
  painter.drawText(body.intersected(rect()).translated(0, -1), Qt::AlignCenter, tr("coil"));
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour(viewer::palette::pulse));
  painter.drawEllipse(at({0, 0}), 4, 4);
  painter.setPen(colour(viewer::palette::text));
  painter.drawText(QRectF(at({-30, -3}), at({30, -16})), Qt::AlignHCenter | Qt::AlignTop, tr("pulse"));
}

void RulesPicture::draw_rule(QPainter& painter, MarkRule rule) const {
  const auto& mark = view_->by(rule);
  if (!mark) return;
  const bool chosen = rule == chosen_;
  const QColor ink = colour(chosen ? viewer::palette::edge_mark : viewer::palette::construction);
  QPen pen(ink, chosen ? 2 : 1.2);
  if (rule == MarkRule::tape) {
    // The tape itself, along the skin.
    QPainterPath tape;
    bool begun = false;
    for (const auto& p : view_->skin) {
      if (p.x() < 0 || p.x() > mark->x()) continue;
      const QPointF here = at(p) - QPointF(0, 2);
      begun ? tape.lineTo(here) : tape.moveTo(here);
      begun = true;
    }
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(tape);
  } else {
    pen.setStyle(rule == MarkRule::drop ? Qt::DashLine : Qt::DotLine);
    painter.setPen(pen);
    painter.drawLine(at(view_->edge), at(*mark));
  }
  // A short bar on the skin, as on the stage, here seen end on: across the curve.
  painter.setPen(QPen(ink, chosen ? 4 : 2.4));
  painter.drawLine(at(*mark) + QPointF(0, -4), at(*mark) + QPointF(0, 4));
  QFont font = painter.font();
  font.setBold(chosen);
  painter.setFont(font);
  painter.setPen(colour(viewer::palette::text));
  const int height = painter.fontMetrics().height();
  const QPointF text = at(*mark) + QPointF(-8, under_mark_px + (rows_down(rule) - 1) * height);
  const QRectF box(text - QPointF(painter.fontMetrics().horizontalAdvance(name_of(rule)), 0),
                   QSizeF(painter.fontMetrics().horizontalAdvance(name_of(rule)) + 2, height));
  painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter, name_of(rule));
  painter.setPen(QPen(colour(viewer::palette::quiet_text), 0.8));
  painter.drawLine(QPointF(box.right() + 1, box.center().y()), at(*mark) + QPointF(0, 5));
  font.setBold(false);
  painter.setFont(font);
}

void RulesPicture::draw_gap(QPainter& painter) const {
  const auto& mark = view_->by(chosen_);
  if (!mark) return;
  const QPointF middle = at(0.5 * (*mark + view_->edge));
  painter.setPen(colour(viewer::palette::text));
  const QString length = side_gap_text((*mark - view_->edge).norm());
  QString gap = tr("gap %1").arg(length);
  const QRectF room(middle + QPointF(8, -10),
                    QSizeF(width() - middle.x() - 11, painter.fontMetrics().height()));
  if (painter.fontMetrics().horizontalAdvance(gap) > room.width()) gap = length;
  painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, gap);
}

void RulesPicture::paintEvent(QPaintEvent*) {
  if (!view_) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(letters(width()));
  // The stage's own ground and colours, in a dark window too: the same things have the same look.
  painter.fillRect(rect(), colour(viewer::palette::background));
  draw_head(painter);
  draw_coil(painter);
  for (const MarkRule rule : geometry::all_mark_rules)
    if (rule != chosen_) draw_rule(painter, rule);
  draw_rule(painter, chosen_);
  draw_gap(painter);
  painter.setPen(QPen(colour(viewer::palette::quiet_text), 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

}  // namespace scalpmark::window
