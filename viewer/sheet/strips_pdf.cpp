#include "viewer/sheet/strips_pdf.h"

#include <QBuffer>
#include <QByteArray>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QPolygonF>
#include <algorithm>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/base/message.h"
#include "geometry/hands/strip_pieces.h"
#include "models/files/made_by.h"
#include "models/files/own_files.h"
#include "viewer/sheet/page.h"
#include "viewer/sheet/text_without_display.h"
#include "viewer/words/error.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::Strip;
using geometry::StripKind;
using geometry::StripMark;
using geometry::StripMarkKind;
using geometry::StripPiece;

namespace {

constexpr int strip_dots_per_inch = 600;
constexpr double page_margin_mm = 10, tab_mm = 12, strip_high_mm = 14, strip_row_mm = 31;
constexpr double short_mm = 40,
                 handle_mm = 60;  // a strip too short for its words has them on a handle in front
constexpr double ruler_mm = 100;  // of the lines that prove the print's size
constexpr double ruler_column_mm = 10;

QString strip_title(const Strip& strip, const StripsContent& content) {
  switch (strip.kind) {
    case StripKind::midline:
      return Words::tr("Nasion to inion over the vertex, %1")
          .arg(QString::fromStdString(tape_length(strip.length_mm)));
    case StripKind::coronal:
      return Words::tr("Left to right tragus over the vertex, %1")
          .arg(QString::fromStdString(tape_length(strip.length_mm)));
    case StripKind::around:
      return Words::tr("Around the head: Fpz, left ear, Oz, right ear, %1")
          .arg(QString::fromStdString(tape_length(strip.length_mm)));
    case StripKind::to_the_start:
      return content.backward ? Words::tr("Backward from the ear-to-ear strip to the start")
                              : Words::tr("Forward from the ear-to-ear strip to the start");
    case StripKind::to_the_site:
      return Words::tr("Forward from the hotspot to the treatment site");
  }
  return {};
}

QString strip_mark_name(const Strip& strip, const StripMark& mark) {
  switch (mark.what) {
    case StripMarkKind::landmark:
      if (mark.label == "Nz") return Words::tr("nasion");
      if (mark.label == "Iz") return Words::tr("inion");
      if (!mark.label.empty()) return QString::fromStdString(mark.label);
      return mark.at_mm < strip.length_mm / 2 ? Words::tr("left tragus") : Words::tr("right tragus");
    case StripMarkKind::half:
      return Words::tr("half: vertex");
    case StripMarkKind::out:
      return strip.kind == StripKind::coronal ? Words::tr("to the start") : Words::tr("ear-to-ear strip");
    case StripMarkKind::start:
      return Words::tr("start");
    case StripMarkKind::hotspot:
      return Words::tr("hotspot");
    case StripMarkKind::site:
      return Words::tr("site");
  }
  return {};
}

/// The length of the lines that prove the print's size, for a ruler of either unit.
QString ruler_length() {
  QString in_cm = QString::fromStdString("10" + decimal_mark() + "0 cm");
  if (length_unit() == LengthUnit::centimetre) return in_cm;
  return QStringLiteral("%1 (%2)").arg(in_cm, QString::fromStdString(tape_length(ruler_mm)));
}

/// Whose strip it is, for pages and for each piece, which is cut out. The label last: it is what may be cut
/// short.
QString whose_strip(const StripsContent& content) {
  const QString side =
      content.side == geometry::Side::left ? Words::tr("left side") : Words::tr("right side");
  const QString whose = printable(content.date) + ", " + side;
  return content.label.empty() ? whose : whose + ": " + printable(content.label);
}

/// A page in mm from the corner of what can be printed.
class StripPages {
public:
  StripPages(QPagedPaintDevice& device, const StripsContent& content)
      : pages_(device, {}, 0), device_(device), content_(content) {
    frame();
    next_mm_ +=
        1 +
        pages_.text(
            Words::tr(
                "Cut along the lines. Glue the piece with a number under it on the tab of the same number, its left end on the "
                "line before the tab. Lay a strip taut, its first line on its point, and draw at its lines: nothing is read."),
            0, next_mm_ - 2, wide(), {9, false, false, false});
  }
  Pages& pages() { return pages_; }
  /// A row for one piece; a new page where there is none left.
  double row() {
    if (next_mm_ + strip_row_mm > high()) {
      device_.newPage();
      frame();
    }
    const double y = next_mm_;
    next_mm_ += strip_row_mm;
    return y;
  }
  /// Room for something of that height, which begins a page where it does not fit.
  double room(double height_mm) {
    if (next_mm_ + height_mm > high()) {
      device_.newPage();
      frame();
    }
    const double y = next_mm_;
    next_mm_ += height_mm;
    return y;
  }
  [[nodiscard]] double wide() const { return pages_.width_mm() - ruler_column_mm; }
  void line(double x0, double y0, double x1, double y1, double weight_mm = 0.2,
            Qt::PenStyle style = Qt::SolidLine) {
    QPen pen(Qt::black, pages_.dots(weight_mm), style, Qt::FlatCap);
    pages_.painter().setPen(pen);
    pages_.painter().drawLine(point(x0, y0), point(x1, y1));
  }
  [[nodiscard]] QPointF point(double x, double y) const { return {pages_.dots(x), pages_.dots(y)}; }
  void polygon(const std::vector<Eigen::Vector2d>& outline, double x, double y) {
    QPolygonF corners;
    for (const auto& corner : outline) corners << point(x + corner.x(), y - corner.y());
    pages_.painter().setPen(QPen(Qt::black, pages_.dots(0.25)));
    pages_.painter().setBrush(Qt::NoBrush);
    pages_.painter().drawPolygon(corners);
  }
  /// A number in a box, the same on both ends that are glued on each other.
  void seam(double x, double y, int number) {
    pages_.painter().setPen(QPen(Qt::black, pages_.dots(0.2)));
    pages_.painter().setBrush(Qt::NoBrush);
    pages_.painter().drawRect(QRectF(point(x, y), QSizeF(pages_.dots(6), pages_.dots(5))));
    pages_.text(QString::number(number), x + 1.6, y + 0.4, 4, {10, true, false, false});
  }

private:
  [[nodiscard]] double high() const { return device_.height() / (device_.logicalDpiX() / 25.4); }
  void frame() {
    pages_.line_of_text(whose_strip(content_), 0, 0, wide() - ruler_mm - 4, {11, true, false, false});
    const double right = wide();
    line(right - ruler_mm, 4, right, 4, 0.2);
    for (const double x : {right - ruler_mm, right}) line(x, 2.5, x, 5.5, 0.2);
    const double column = pages_.width_mm() - 4;
    line(column, 20, column, 20 + ruler_mm, 0.2);
    for (const double y : {20.0, 20 + ruler_mm}) line(column - 1.5, y, column + 1.5, y, 0.2);
    const double below = pages_.text(
        Words::tr(
            "Measure both fine lines at the edge of this page: %1. If one is not, do not use the strips; print "
            "them again at 100 %, without fitting to the page. For this head alone; training and illustration, the "
            "device's instructions and the licensed prescriber come first.")
                .arg(ruler_length()) +
            QStringLiteral(" %1.").arg(QString::fromStdString(models::made_by())),
        0, 7, right, {9, false, false, false});
    next_mm_ = std::max(20.0, 7 + below + 3);
  }

  Pages pages_;
  QPagedPaintDevice& device_;
  const StripsContent& content_;
  double next_mm_ = 0;
};

/// Half centimetres, or quarters of an inch, as on a tape, from the strip's own beginning.
void draw_scale(StripPages& page, const StripPiece& piece, double x, double bottom) {
  const int parts = length_unit() == LengthUnit::centimetre ? 2 : 4;
  const double part_mm = tape_tick_mm() / parts;
  for (int i = static_cast<int>(std::ceil(piece.from_mm / part_mm - 1e-9)); part_mm * i <= piece.to_mm + 1e-9;
       ++i) {
    const double at = x + part_mm * i - piece.from_mm;
    page.line(at, bottom, at, bottom - (i % parts == 0 ? 3 : 1.6), 0.1);
  }
}

/// Names stand to the right of their mark, or to the left where the piece ends; those that would lie on the
/// one before go a row down.
void draw_marks(StripPages& page, const Strip& strip, const StripPiece& piece, double x, double y) {
  constexpr double beside_mm = 0.8, letter_mm = 2.05;
  const double end = x + piece.to_mm - piece.from_mm;
  double taken[2] = {-1e9, -1e9};  // where the names of each row end
  for (const StripMark& mark : strip.marks) {
    if (mark.at_mm < piece.from_mm - 1e-9 || mark.at_mm > piece.to_mm + 1e-9) continue;
    const double at = x + mark.at_mm - piece.from_mm;
    page.line(at, y, at, y + strip_high_mm, 0.3);
    const QString name = strip_mark_name(strip, mark) + " " + QString::fromStdString(tape_number(mark.at_mm));
    const double wide = letter_mm * name.size() + 2;
    const bool before = at + beside_mm + wide > end && at - wide > x;
    const double left = before ? at - beside_mm - wide : at + beside_mm;
    const int row = left > taken[0] ? 0 : 1;
    page.pages().text(name, left, y + (row == 0 ? 0.6 : 4.5), wide,
                      {9, mark.what != StripMarkKind::landmark, false, before});
    taken[row] = left + wide;
  }
}

/// In small letters between two marks, where there is most room: what is cut out says whose it is.
void draw_whose(StripPages& page, const Strip& strip, const StripsContent& content, const StripPiece& piece,
                double x, double y) {
  double from = piece.from_mm, best_from = from, best = 0;
  const auto until = [&](double at) {
    if (at - from > best) {
      best = at - from;
      best_from = from;
    }
    from = at;
  };
  for (const StripMark& mark : strip.marks)
    if (mark.at_mm > piece.from_mm && mark.at_mm < piece.to_mm) until(mark.at_mm);
  until(piece.to_mm);
  page.pages().line_of_text(whose_strip(content), x + best_from - piece.from_mm + 1, y + 8.5, best - 2,
                            {6, false, false, false});
}

/// Of a strip too short for them, the words: in front of its end, on paper that is cut out with it.
void draw_handle(StripPages& page, const Strip& strip, const StripsContent& content, double x, double y) {
  const double end = x + strip.length_mm, bottom = y + strip_high_mm, far = end + handle_mm;
  page.line(end + 1, y, far, y, 0.1, Qt::DashLine);
  page.line(end + 1, bottom, far, bottom, 0.1, Qt::DashLine);
  page.line(far, y, far, bottom, 0.1, Qt::DashLine);
  const auto name = [&](const StripMark& mark) {
    return strip_mark_name(strip, mark) + " " + QString::fromStdString(tape_number(mark.at_mm));
  };
  const auto say = [&](const QString& text, double below, double points, bool bold) {
    page.pages().line_of_text(text, end + 1, y + below, handle_mm - 2, {points, bold, false, false});
  };
  say(Words::tr("this line: %1").arg(name(strip.marks.back())), 0.6, 9, true);
  say(Words::tr("left end: %1").arg(name(strip.marks.front())), 5.2, 9, true);
  say(whose_strip(content), 10, 6, false);
}

int draw_strip(StripPages& page, const Strip& strip, const StripsContent& content, int seam) {
  const auto pieces = geometry::strip_pieces(strip.length_mm, page.wide() - tab_mm - 2, seam);
  for (const StripPiece& piece : pieces) {
    const double top = page.row();
    const QString part = pieces.size() == 1 ? QString()
                                            : Words::tr(", piece %1 of %2")
                                                  .arg(&piece - pieces.data() + 1)
                                                  .arg(static_cast<int>(pieces.size()));
    page.pages().text(strip_title(strip, content) + part, 0, top, page.wide(), {10, true, false, false});
    const double x = 1, y = top + 6, long_mm = piece.to_mm - piece.from_mm, bottom = y + strip_high_mm;
    page.line(x, y, x + long_mm, y);
    page.line(x, bottom, x + long_mm, bottom);
    page.line(x, y, x, bottom);
    page.line(x + long_mm, y, x + long_mm, bottom);
    draw_scale(page, piece, x, bottom);
    if (strip.length_mm < short_mm) {
      draw_handle(page, strip, content, x, y);
      continue;
    }
    draw_marks(page, strip, piece, x, y);
    draw_whose(page, strip, content, piece, x, y);
    if (piece.glued_before > 0) page.seam(x + 1.5, bottom + 1, piece.glued_before);
    if (piece.glued_behind > 0) {
      // The tab stays on: the next piece is glued over it, its beginning on this piece's last line.
      page.line(x + long_mm + 1, y, x + long_mm + tab_mm, y, 0.1, Qt::DashLine);
      page.line(x + long_mm + 1, bottom, x + long_mm + tab_mm, bottom, 0.1, Qt::DashLine);
      page.line(x + long_mm + tab_mm, y, x + long_mm + tab_mm, bottom, 0.1, Qt::DashLine);
      page.seam(x + long_mm + 3, y + 4.5, piece.glued_behind);
    }
  }
  return seam + static_cast<int>(pieces.size()) - 1;
}

/// The card: a line to lie along the midline, the front axis at its angle, and along it the tape to draw.
/// Seen from above, the nose up.
void draw_card(StripPages& page, const StripsContent& content) {
  constexpr double card_wide = 120, least_high = 85, beside_mm = 12;
  const double length = content.tape_to_draw_mm.value_or(content.centre_to_edge_mm);
  const double angle = geometry::radians(content.angle_deg);
  const double card_high = std::max({least_high, std::abs(length * std::cos(angle)) + 2 * beside_mm,
                                     content.centre_to_edge_mm + 2 * beside_mm});
  const double top = page.room(card_high + 14);
  page.pages().text(
      Words::tr(
          "Angle card: lay the long line along the midline's direction, the nose end to the nose; fold the "
          "second half behind the first"),
      0, top, page.wide(), {10, true, false, false});
  const double y = top + 6;
  for (const double x : {1.0, 1 + card_wide}) {
    page.line(x, y, x + card_wide, y);
    page.line(x, y + card_high, x + card_wide, y + card_high);
    page.line(x, y, x, y + card_high);
    page.line(x + card_wide, y, x + card_wide, y + card_high, x > 1 ? 0.2 : 0.1,
              x > 1 ? Qt::SolidLine : Qt::DashLine);
  }
  // Toward the midline is to the right on the left side, and to the left on the right side.
  const double inward = content.side == geometry::Side::left ? 1 : -1;
  const double low = y + card_high - beside_mm;
  const double cx = 1 + card_wide / 2 - 0.5 * inward * std::sin(angle) * length,
               cy = std::cos(angle) < 0 ? y + beside_mm : low;
  page.line(cx, low, cx, y + 3, 0.3);
  page.pages().text(Words::tr("nose"), cx + 1.5, y + 3, 20, {9, true, false, false});
  const Eigen::Vector2d along(inward * std::sin(angle), -std::cos(angle)), across(-along.y(), along.x());
  const Eigen::Vector2d from(cx, cy), to = from + length * along;
  page.line(from.x(), from.y(), to.x(), to.y(), 0.3);
  for (const auto& [at, half] : {std::pair{from, 3.0}, std::pair{to, 8.0}}) {
    const Eigen::Vector2d a = at - half * across, b = at + half * across;
    page.line(a.x(), a.y(), b.x(), b.y(), 0.4);
  }
  page.pages().text(Words::tr("front axis, %1").arg(QString::fromStdString(coil_angle(content.angle_deg))), 3,
                    y + card_high - 12, 35, {9, false, false, false});
  page.pages().text(Words::tr("pulse point wanted to edge mark: %1 of tape")
                        .arg(QString::fromStdString(tape_length(length))),
                    3, y + 2, 40, {9, false, false, false});
  // The back: the coil's front half in plan, its centre where the lines cross on the front.
  const double bx = 1 + 1.5 * card_wide, by = low;
  page.pages().painter().save();
  page.pages().painter().setClipRect(QRectF(
      page.point(1 + card_wide, y), QSizeF(page.pages().dots(card_wide), page.pages().dots(card_high))));
  for (const geometry::CoilPart& part : content.coil) page.polygon(part.outline, bx, by);
  page.pages().painter().restore();
  page.line(bx - 3, by, bx + 3, by, 0.3);
  page.line(bx, by - content.centre_to_edge_mm, bx, by + 3, 0.2);
  page.pages().text(Words::tr("the coil's front, centre to front edge %1")
                        .arg(QString::fromStdString(tape_length(content.centre_to_edge_mm))),
                    3 + card_wide, y + card_high - 14, 45, {9, false, false, false});
  for (const double left : {3.0, 3 + card_wide})
    page.pages().line_of_text(whose_strip(content), left, y + card_high - 3.4, card_wide - 6,
                              {6, false, false, false});
}

}  // namespace

StripsContent strips_content(const geometry::Case& the_case, const geometry::Plan& plan) {
  StripsContent content;
  content.label = the_case.label;
  content.side = the_case.side;
  content.backward = the_case.search.anterior_mm < 0;
  content.angle_deg = the_case.coil.angle_deg;
  content.centre_to_edge_mm = the_case.coil.centre_to_edge_mm;
  content.tape_to_draw_mm = plan.start.tape_to_draw_mm;
  content.coil = the_case.coil.model.parts;
  return content;
}

std::string strips_pdf(const std::vector<Strip>& strips, const StripsContent& content, Paper paper) {
  const TextWithoutDisplay text;
  QByteArray bytes;
  QBuffer out(&bytes);
  out.open(QIODevice::WriteOnly);
  QPdfWriter writer(&out);
  writer.setPageSize(QPageSize(paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
  writer.setPageOrientation(QPageLayout::Landscape);
  writer.setPageMargins(QMarginsF(page_margin_mm, page_margin_mm, page_margin_mm, page_margin_mm),
                        QPageLayout::Millimeter);
  writer.setResolution(strip_dots_per_inch);
  writer.setTitle(Words::tr("Strips"));
  writer.setCreator(models::own_name);
  {
    StripPages page(writer, content);
    int seam = 1;
    for (const Strip& strip : strips) seam = draw_strip(page, strip, content, seam);
    draw_card(page, content);
  }
  if (bytes.isEmpty())
    throw ViewerError(
        geometry::Message::of("The strips could not be drawn; close other programs and try again."));
  return bytes.toStdString();
}

}  // namespace scalpmark::viewer
