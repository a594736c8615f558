#include "viewer/sheet/page.h"

#include <QColor>
#include <QFontMetricsF>
#include <QPen>
#include <QStringList>
#include <algorithm>

#include "geometry/base/message.h"
#include "viewer/words/error.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

constexpr double footer_mm = 13;
constexpr double cell_gap_mm = 2;
constexpr double row_gap_mm = 0.9;
constexpr int text_flags = int{Qt::TextWordWrap} | int{Qt::AlignTop};
constexpr int quiet_grey = 70;

}  // namespace

QString printable(const std::string& text) {
  return QString::fromUtf8(text.data(), static_cast<int>(text.size())).simplified();
}

Pages::Pages(QPagedPaintDevice& device, const std::string& footer, int total)
    : device_(device), footer_(printable(footer)), total_(total) {
  if (!painter_.begin(&device_))
    throw ViewerError(geometry::Message::of(
        "The sheet could not be drawn; there may be too little memory. Close other programs."));
  painter_.setRenderHint(QPainter::LosslessImageRendering);
  dots_per_mm_ = device_.logicalDpiX() / 25.4;
  width_mm_ = device_.width() / dots_per_mm_;
  height_mm_ = device_.height() / dots_per_mm_;
  bottom_mm_ = height_mm_ - footer_mm;
}

void Pages::new_page() {
  footer();
  device_.newPage();
  ++count_;
  y_mm_ = 0;
}

void Pages::finish() {
  footer();
  painter_.end();
}

void Pages::footer() {
  const Style style{9, false, true, false};
  const QString page =
      total_ > 0 ? Words::tr("Page %1 of %2").arg(count_).arg(total_) : Words::tr("Page %1").arg(count_);
  const double page_mm = 24;
  const double high = text_height_mm(footer_, width_mm_ - page_mm, style);
  rule(0, height_mm_ - high - 1, width_mm_);
  text(footer_, 0, height_mm_ - high, width_mm_ - page_mm, style);
  Style right = style;
  right.to_the_right = true;
  text(page, width_mm_ - page_mm, height_mm_ - high, page_mm, right);
}

QFont Pages::font(const Style& style) const {
  QFont f("DejaVu Sans");
  f.setStyleHint(QFont::SansSerif);
  f.setPointSizeF(style.points);
  f.setBold(style.bold);
  return f;
}

QString Pages::breakable(const QString& text, double width_mm, const Style& style) const {
  const QFontMetricsF metrics(font(style), const_cast<QPagedPaintDevice*>(&device_));
  if (metrics.horizontalAdvance(text) <= dots(width_mm)) return text;
  QStringList words = text.split(' ');
  for (QString& word : words) {
    if (metrics.horizontalAdvance(word) <= dots(width_mm)) continue;
    // A place to break after every letter, without width of its own.
    for (int at = word.size() - 1; at > 0; --at)
      if (!word.at(at).isLowSurrogate()) word.insert(at, QChar(0x200b));
  }
  return words.join(' ');
}

QRectF Pages::bounds(const QString& text, double width_mm, const Style& style) const {
  const QFontMetricsF metrics(font(style), const_cast<QPagedPaintDevice*>(&device_));
  return metrics.boundingRect(QRectF(0, 0, dots(width_mm), 1e6), text_flags,
                              breakable(text, width_mm, style));
}

double Pages::text_height_mm(const QString& text, double width_mm, const Style& style) const {
  return text.isEmpty() ? 0 : bounds(text, width_mm, style).height() / dots_per_mm_;
}

double Pages::text(const QString& text, double x_mm, double y_mm, double width_mm, const Style& style) {
  if (text.isEmpty()) return 0;
  const double high = text_height_mm(text, width_mm, style);
  painter_.setFont(font(style));
  painter_.setPen(style.grey ? QColor(quiet_grey, quiet_grey, quiet_grey) : QColor(Qt::black));
  painter_.drawText(QRectF(dots(x_mm), dots(y_mm), dots(width_mm), dots(high) + 1),
                    text_flags | int{style.to_the_right ? Qt::AlignRight : Qt::AlignLeft},
                    breakable(text, width_mm, style));
  return high;
}

double Pages::line_of_text(const QString& text, double x_mm, double y_mm, double width_mm,
                           const Style& style) {
  const QFontMetricsF metrics(font(style), &device_);
  return this->text(metrics.elidedText(text, Qt::ElideRight, dots(width_mm)), x_mm, y_mm, width_mm, style);
}

void Pages::rule(double x_mm, double y_mm, double width_mm, double weight_mm, int grey) {
  painter_.setPen(QPen(QColor(grey, grey, grey), dots(weight_mm)));
  painter_.drawLine(QPointF(dots(x_mm), dots(y_mm)), QPointF(dots(x_mm + width_mm), dots(y_mm)));
}

void Pages::image(const QImage& picture, double x_mm, double y_mm, double width_mm, double height_mm) {
  const QRectF frame(dots(x_mm), dots(y_mm), dots(width_mm), dots(height_mm));
  painter_.drawImage(frame, picture);
  painter_.setPen(QPen(QColor(160, 160, 160), dots(0.15)));
  painter_.setBrush(Qt::NoBrush);
  painter_.drawRect(frame);
}

Pages::Style Pages::cell_style(const SheetTable& table, int row, std::size_t column) {
  const bool bold = row >= 0 && table.bold.contains({static_cast<std::size_t>(row), column});
  return {9, bold, row < 0, table.columns[column].number};
}

double Pages::row_height_mm(const std::vector<std::string>& cells, const SheetTable& table, int row,
                            double width_mm) const {
  double high = 0;
  for (size_t i = 0; i < cells.size() && i < table.columns.size(); ++i)
    high = std::max(high, text_height_mm(printable(cells[i]), table.columns[i].share * width_mm - cell_gap_mm,
                                         cell_style(table, row, i)));
  return high + 2 * row_gap_mm;
}

namespace {

std::vector<std::string> headings(const SheetTable& table) {
  std::vector<std::string> row;
  bool any = false;
  for (const auto& c : table.columns) {
    row.push_back(c.heading);
    any = any || !c.heading.empty();
  }
  return any ? row : std::vector<std::string>();
}

constexpr int heading_row = -1;
constexpr Pages::Style title_style{10.5, true, false, false};
constexpr Pages::Style note_style{9, false, true, false};

}  // namespace

double Pages::table_height_mm(const SheetTable& table, double width_mm) const {
  double high = text_height_mm(printable(table.title), width_mm, title_style) + 1;
  const auto head = headings(table);
  if (!head.empty()) high += row_height_mm(head, table, heading_row, width_mm);
  for (size_t i = 0; i < table.rows.size(); ++i)
    high += row_height_mm(table.rows[i], table, static_cast<int>(i), width_mm);
  if (!table.note.empty()) high += 1 + text_height_mm(printable(table.note), width_mm, note_style);
  return high;
}

double Pages::table(const SheetTable& table, double x_mm, double y_mm, double width_mm) {
  double y = y_mm;
  y += text(printable(table.title), x_mm, y, width_mm, title_style) + 1;
  const auto put = [&](const std::vector<std::string>& cells, int row) {
    double x = x_mm;
    for (size_t i = 0; i < cells.size() && i < table.columns.size(); ++i) {
      const auto& column = table.columns[i];
      const double wide = column.share * width_mm - cell_gap_mm;
      // Numbers end at the column's end; words begin at its start.
      text(printable(cells[i]), column.number ? x + cell_gap_mm : x, y + row_gap_mm, wide,
           cell_style(table, row, i));
      x += column.share * width_mm;
    }
    y += row_height_mm(cells, table, row, width_mm);
  };
  rule(x_mm, y, width_mm, 0.3, 60);
  const auto head = headings(table);
  if (!head.empty()) {
    put(head, heading_row);
    rule(x_mm, y, width_mm);
  }
  for (size_t i = 0; i < table.rows.size(); ++i) {
    put(table.rows[i], static_cast<int>(i));
    rule(x_mm, y, width_mm, 0.1, 190);
  }
  if (!table.note.empty()) y += 1 + text(printable(table.note), x_mm, y + 1, width_mm, note_style);
  return y - y_mm;
}

}  // namespace scalpmark::viewer
