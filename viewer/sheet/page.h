#pragma once

#include <QFont>
#include <QImage>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QRectF>
#include <QString>
#include <string>

#include "viewer/sheet/content.h"

namespace scalpmark::viewer {

/// The pages of the sheet while they are drawn: a place that moves down, and a new page where what comes does
/// not fit. Lengths on paper in mm.
class Pages {
public:
  /// On a PDF or a printer. `total` pages are announced in the footers (0 while counting).
  Pages(QPagedPaintDevice& device, const std::string& footer, int total);

  [[nodiscard]] double width_mm() const { return width_mm_; }
  [[nodiscard]] double y_mm() const { return y_mm_; }
  /// Free height above the footer.
  [[nodiscard]] double left_mm() const { return bottom_mm_ - y_mm_; }
  [[nodiscard]] int count() const { return count_; }
  [[nodiscard]] QPainter& painter() { return painter_; }
  /// mm to the painter's units.
  [[nodiscard]] double dots(double mm) const { return mm * dots_per_mm_; }

  void move_down(double mm) { y_mm_ += mm; }
  void go_to(double y_mm) { y_mm_ = y_mm; }
  void new_page();
  /// Starts a new page unless that much is free.
  void need(double mm) {
    if (mm > left_mm()) new_page();
  }
  void finish();

  struct Style {
    double points = 9;
    bool bold = false;
    bool grey = false;
    bool to_the_right = false;
  };
  [[nodiscard]] double text_height_mm(const QString& text, double width_mm, const Style& style) const;
  /// Wraps the text within the width; returns its height.
  double text(const QString& text, double x_mm, double y_mm, double width_mm, const Style& style);
  /// One line, shortened with an ellipsis to the width; returns its height.
  double line_of_text(const QString& text, double x_mm, double y_mm, double width_mm, const Style& style);
  void rule(double x_mm, double y_mm, double width_mm, double weight_mm = 0.15, int grey = 120);
  void image(const QImage& picture, double x_mm, double y_mm, double width_mm, double height_mm);

  [[nodiscard]] double table_height_mm(const SheetTable& table, double width_mm) const;
  /// Draws it there; returns its height.
  double table(const SheetTable& table, double x_mm, double y_mm, double width_mm);

private:
  [[nodiscard]] QFont font(const Style& style) const;
  /// The text, with places to break in words that are wider than the line.
  [[nodiscard]] QString breakable(const QString& text, double width_mm, const Style& style) const;
  [[nodiscard]] QRectF bounds(const QString& text, double width_mm, const Style& style) const;
  /// How a cell is set; the heading's row is number -1.
  [[nodiscard]] static Style cell_style(const SheetTable& table, int row, std::size_t column);
  [[nodiscard]] double row_height_mm(const std::vector<std::string>& cells, const SheetTable& table, int row,
                                     double width_mm) const;
  void footer();

  QPagedPaintDevice& device_;
  QPainter painter_;
  QString footer_;
  int total_ = 0, count_ = 1;
  double dots_per_mm_ = 1, width_mm_ = 0, height_mm_ = 0, bottom_mm_ = 0, y_mm_ = 0;
};

/// Text from a case or a file: UTF-8, control characters and runs of spaces made single spaces.
[[nodiscard]] QString printable(const std::string& text);

}  // namespace scalpmark::viewer
