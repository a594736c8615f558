#include "viewer/sheet/sheet.h"

#include <QBuffer>
#include <QByteArray>
#include <QPageLayout>
#include <QPageSize>
#include <QPainterPath>
#include <QPdfWriter>
#include <QPolygonF>
#include <algorithm>
#include <array>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include "geometry/base/message.h"
#include "models/files/made_by.h"
#include "models/files/own_files.h"
#include "models/files/safe_file.h"
#include "viewer/sheet/date.h"
#include "viewer/sheet/find_again_table.h"
#include "viewer/sheet/page.h"
#include "viewer/sheet/text_without_display.h"
#include "viewer/stage/scene/palette.h"
#include "viewer/stage/scene/shapes.h"
#include "viewer/words/error.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

constexpr double margin_mm = 15, column_gap_mm = 6, block_gap_mm = 4.5;
constexpr int sheet_dots_per_inch = 600;

QImage image_of(const SheetView& view) {
  return QImage(reinterpret_cast<const uchar*>(view.rgb.data()), view.width, view.height, 3 * view.width,
                QImage::Format_RGB888)
      .copy();
}

/// A strong line over a thin one.
std::vector<Eigen::Vector2d> two_lines_px() {
  std::vector<Eigen::Vector2d> out;
  for (const auto& [y, half] : {std::pair(4.0, 1.3), std::pair(-4.0, 0.75)})
    for (const Eigen::Vector2d& corner :
         {Eigen::Vector2d(-13, y - half), Eigen::Vector2d(13, y - half), Eigen::Vector2d(13, y + half),
          Eigen::Vector2d(-13, y - half), Eigen::Vector2d(13, y + half), Eigen::Vector2d(-13, y + half)})
      out.push_back(corner);
  return out;
}

/// What each shape in the views means.
double legend(Pages& pages, double x_mm, double y_mm, double width_mm) {
  struct Entry {
    std::optional<Shape> shape;  ///< none: two lines, as the spread of trials by hand is drawn
    Colour colour;
    QString text;
  };
  const std::array entries{
      Entry{Shape::dot, palette::landmark, Words::tr("Landmark")},
      Entry{Shape::disc, palette::pulse, Words::tr("Pulse point")},
      Entry{Shape::hollow_disc, palette::pulse, Words::tr("Where the pulse was wanted")},
      Entry{Shape::bar, palette::edge_mark, Words::tr("Edge mark")},
      Entry{Shape::ring, palette::hotspot, Words::tr("Hotspot")},
      Entry{Shape::diamond, palette::treatment, Words::tr("Treatment site")},
      Entry{std::nullopt, palette::pulse, Words::tr("Trials by hand: half, and 95 of 100")}};
  constexpr double row_mm = 5.2, sample_mm = 9, mm_per_px = 0.2;
  QPainter& painter = pages.painter();
  double y = y_mm;
  y += pages.text(Words::tr("In the pictures"), x_mm, y, width_mm, {10.5, true, false, false}) + 1;
  pages.rule(x_mm, y, width_mm, 0.3, 60);
  y += 1;
  const double column = width_mm / 2, text_mm = column - sample_mm - 1;
  const auto high = [&](size_t i) {
    return i < entries.size() ? pages.text_height_mm(entries[i].text, text_mm, {}) + 1.2 : 0;
  };
  for (size_t i = 0; i < entries.size(); ++i) {
    const Entry& e = entries[i];
    const double x = x_mm + (i % 2 == 0 ? 0 : column);
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(e.colour.red, e.colour.green, e.colour.blue));
    const std::vector<Eigen::Vector2d> corners = e.shape ? triangles_px(*e.shape) : two_lines_px();
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (size_t k = 0; k + 2 < corners.size(); k += 3) {
      QPolygonF triangle;
      for (size_t j = 0; j < 3; ++j)
        triangle << QPointF(pages.dots(x + sample_mm / 2 + mm_per_px * corners[k + j].x()),
                            pages.dots(y + row_mm / 2 - mm_per_px * corners[k + j].y()));
      path.addPolygon(triangle);
      path.closeSubpath();
    }
    painter.drawPath(path.simplified());
    pages.text(e.text, x + sample_mm + 1, y + 0.6, text_mm, {});
    if (i % 2 == 1 || i + 1 == entries.size()) y += std::max({row_mm, high(i), i % 2 == 1 ? high(i - 1) : 0});
  }
  return y - y_mm;
}

void heading(Pages& pages, const SheetContent& content) {
  const double wide = pages.width_mm();
  pages.text(Words::tr("Placement sheet"), 0, 0, wide * 0.6, {16, true, false, false});
  pages.text(printable(content.date), wide * 0.6, 1.6, wide * 0.4, {10.5, false, false, true});
  double y = 8.5;
  y += pages.line_of_text(printable(content.label), 0, y, wide, {11, true, false, false}) + 1.5;
  y += pages.text(printable(content.head + " " + content.head_note), 0, y, wide, {}) + 6;
  // Room for initials: lines to write on.
  const std::array who{Words::tr("Set up by"), Words::tr("Checked by"), Words::tr("Prescriber")};
  const double each = wide / 3;
  for (size_t i = 0; i < who.size(); ++i) {
    const double x = each * static_cast<double>(i);
    pages.text(who[i], x, y - 3.6, 22, {9, false, true, false});
    pages.rule(x + 22, y, each - 26, 0.2, 60);
  }
  pages.go_to(y + 3.5);
}

/// Sentences with a dash before each, over the whole width.
void sentences(Pages& pages, const QString& title, const std::vector<std::string>& all) {
  if (all.empty()) return;
  constexpr double indent_mm = 4, between_mm = 0.8;
  const double wide = pages.width_mm();
  // A short list stays together.
  constexpr double short_mm = 60;
  double height = 0;
  for (const auto& sentence : all)
    height += pages.text_height_mm(printable(sentence), wide - indent_mm, {}) + between_mm;
  const double first = pages.text_height_mm(printable(all.front()), wide - indent_mm, {});
  pages.need(8 + (height < short_mm ? height : first));
  pages.move_down(pages.text(title, 0, pages.y_mm(), wide, {10.5, true, false, false}) + 1);
  pages.rule(0, pages.y_mm(), wide, 0.3, 60);
  pages.move_down(1);
  for (const auto& sentence : all) {
    const QString text = printable(sentence);
    pages.need(pages.text_height_mm(text, wide - indent_mm, {}));
    pages.text(QString(QChar(0x2013)), 0, pages.y_mm(), indent_mm, {});
    pages.move_down(pages.text(text, indent_mm, pages.y_mm(), wide - indent_mm, {}) + between_mm);
  }
  pages.move_down(block_gap_mm - between_mm);
}

void block(Pages& pages, const SheetTable& table) {
  pages.need(pages.table_height_mm(table, pages.width_mm()));
  pages.move_down(pages.table(table, 0, pages.y_mm(), pages.width_mm()) + block_gap_mm);
}

/// Two tables side by side, the left one with that share of the width.
void blocks(Pages& pages, const SheetTable& left, const SheetTable& right, double share) {
  const double wide = pages.width_mm() - column_gap_mm, first = share * wide, second = wide - first;
  pages.need(std::max(pages.table_height_mm(left, first), pages.table_height_mm(right, second)));
  const double high = std::max(pages.table(left, 0, pages.y_mm(), first),
                               pages.table(right, first + column_gap_mm, pages.y_mm(), second));
  pages.move_down(high + block_gap_mm);
}

/// Lines to fill in at each visit to come, as many as there is room for.
void visits_to_come(Pages& pages, bool first) {
  constexpr double head_mm = 12, row_mm = 8;
  constexpr int most = 8, fewest = 3;
  const int rows = std::min(most, static_cast<int>((pages.left_mm() - head_mm) / row_mm));
  if (rows < fewest) return;
  const double wide = pages.width_mm();
  pages.move_down(pages.text(first ? Words::tr("Visits") : Words::tr("Visits to come"), 0, pages.y_mm(), wide,
                             {10.5, true, false, false}) +
                  1);
  pages.rule(0, pages.y_mm(), wide, 0.3, 60);
  const std::array<std::pair<QString, double>, 4> columns{{{Words::tr("Date"), 0},
                                                           {Words::tr("Initials"), 0.2},
                                                           {Words::tr("Marks found again with"), 0.35},
                                                           {Words::tr("Remarks"), 0.72}}};
  for (const auto& [text, share] : columns)
    pages.text(text, share * wide, pages.y_mm() + 1, 0.36 * wide, {9, false, true, false});
  pages.move_down(6);
  for (int i = 0; i < rows; ++i) {
    pages.rule(0, pages.y_mm(), wide);
    pages.move_down(row_mm);
  }
  pages.rule(0, pages.y_mm(), wide);
}

/// Draws the whole sheet; returns its number of pages.
int draw(const SheetContent& content, const std::vector<SheetView>& views, int total,
         QPagedPaintDevice& onto) {
  Pages pages(onto, content.not_this + " " + models::made_by() + ".", total);
  heading(pages, content);
  draw_find_again(pages, content.find_again);

  const double half = (pages.width_mm() - column_gap_mm) / 2, right = half + column_gap_mm;
  constexpr double caption_mm = 5;
  const auto view_height = [&](const SheetView& v) { return half * v.height / v.width; };
  const auto put_view = [&](const SheetView& v, double x) {
    pages.image(image_of(v), x, pages.y_mm(), half, view_height(v));
    pages.text(printable(v.caption), x, pages.y_mm() + view_height(v) + 0.5, half, {9, false, true, false});
  };
  for (size_t i = 0; i + 1 < views.size(); i += 2) {
    const double high = std::max(view_height(views[i]), view_height(views[i + 1])) + caption_mm;
    pages.need(high);
    put_view(views[i], 0);
    put_view(views[i + 1], right);
    pages.move_down(high + 2);
  }
  // Beside the odd view, and below it: legend, measures, search; coil and treatment.
  double left_y = pages.y_mm(), right_y = pages.y_mm();
  if (views.size() % 2 == 1) {
    const SheetView& v = views.back();
    pages.need(view_height(v) + caption_mm);
    left_y = right_y = pages.y_mm();
    put_view(v, 0);
    left_y += view_height(v) + caption_mm + 2;
  }
  right_y += legend(pages, right, right_y, half) + block_gap_mm;
  // A table too high for its column goes below, over the whole width.
  std::vector<const SheetTable*> below;
  const auto in_column = [&](const SheetTable& table, double x, double& y) {
    if (y + pages.table_height_mm(table, half) > pages.y_mm() + pages.left_mm()) {
      below.push_back(&table);
      return;
    }
    y += pages.table(table, x, y, half) + block_gap_mm;
  };
  in_column(content.treatment, right, right_y);
  in_column(content.measures, right, right_y);
  in_column(content.coil, 0, left_y);
  in_column(content.search, 0, left_y);
  pages.go_to(std::max(left_y, right_y));
  for (const SheetTable* table : below) block(pages, *table);

  block(pages, content.tapes);
  if (!content.to_draw.rows.empty()) block(pages, content.to_draw);
  block(pages, content.rules);
  if (content.cortex.rows.empty())
    block(pages, content.alternatives);
  else
    blocks(pages, content.cortex, content.alternatives, 0.54);
  if (!content.field.rows.empty()) block(pages, content.field);
  sentences(pages, Words::tr("Warnings of this plan"), content.warnings);
  sentences(pages, Words::tr("Cautions"), content.cautions);
  if (!content.answers.rows.empty()) block(pages, content.answers);
  for (const SheetTable& table : content.visits) block(pages, table);
  visits_to_come(pages, content.visits.empty());
  pages.finish();
  return pages.count();
}

}  // namespace

std::optional<Paper> paper_named(std::string_view name) {
  std::string lower(name);
  std::transform(lower.begin(), lower.end(), lower.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  if (lower == "a4") return Paper::a4;
  if (lower == "letter") return Paper::letter;
  return {};
}

std::string sheet_pdf(const SheetContent& content, const std::vector<SheetView>& views, Paper paper) {
  const TextWithoutDisplay text;
  // Once to count the pages, once to keep.
  int pages = 0;
  QByteArray bytes;
  for (int round = 0; round < 2; ++round) {
    bytes.clear();
    QBuffer out(&bytes);
    out.open(QIODevice::WriteOnly);
    QPdfWriter writer(&out);
    writer.setPageSize(QPageSize(paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageMargins(QMarginsF(margin_mm, margin_mm, margin_mm, margin_mm), QPageLayout::Millimeter);
    writer.setResolution(sheet_dots_per_inch);
    writer.setTitle(Words::tr("Placement sheet"));
    writer.setCreator(models::own_name);
    pages = draw(content, views, pages, writer);
  }
  if (bytes.isEmpty())
    throw ViewerError(
        geometry::Message::of("The sheet could not be drawn; close other programs and try again."));
  return bytes.toStdString();
}

void paint_sheet(const SheetContent& content, const std::vector<SheetView>& views, QPagedPaintDevice& onto) {
  onto.setPageMargins(QMarginsF(margin_mm, margin_mm, margin_mm, margin_mm), QPageLayout::Millimeter);
  QByteArray bytes;
  QBuffer out(&bytes);
  out.open(QIODevice::WriteOnly);
  QPdfWriter writer(&out);
  writer.setPageLayout(onto.pageLayout());
  writer.setResolution(onto.logicalDpiX());
  const int pages = draw(content, views, 0, writer);
  draw(content, views, pages, onto);
}

void write_sheet(const std::filesystem::path& file, const models::CaseFile& case_file,
                 const models::LoadedHead& loaded, const geometry::Plan& plan, Paper paper) {
  const auto by_hand = off_by_hand(loaded.head, case_file.the_case, plan);
  const SheetContent content = sheet_content(case_file, loaded, plan, date_today(), by_hand);
  const auto views = sheet_views(loaded.head, case_file.the_case, plan, by_hand);
  models::write_whole(file, sheet_pdf(content, views, paper));
}

}  // namespace scalpmark::viewer
