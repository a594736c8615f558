#include "viewer/sheet/find_again_table.h"

#include "viewer/words/find_again.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

SheetTable find_again_table(const geometry::Plan& plan) {
  SheetTable t{
      words(Words::tr("To find the marks again: tape in %1 from", "cm or inches"), {tape_unit_in_words()}),
      {{"", 0.24, false},
       {words(Words::tr("vertex")), 0.19, true},
       {words(Words::tr("nasion")), 0.19, true},
       {words(Words::tr("left tragus")), 0.19, true},
       {words(Words::tr("right tragus")), 0.19, true}},
      {},
      ""};
  for (const TapeToRead& tape : find_again(plan)) {
    if (t.rows.empty() || t.rows.back().front() != tape.mark) t.rows.push_back({tape.mark});
    t.rows.back().push_back(tape_number(tape.mm));
  }
  return t;
}

void draw_find_again(Pages& pages, const SheetTable& table) {
  if (table.rows.empty()) return;
  constexpr double number_points = 17, name_points = 12, heading_points = 9, between_mm = 1;
  const double wide = pages.width_mm(), top = pages.y_mm();
  double y = top + pages.text(printable(table.title), 0, top, wide, {10.5, true, false, false}) + between_mm;
  pages.rule(0, y, wide, 0.3, 60);
  y += between_mm;
  const auto row = [&](const std::vector<std::string>& cells, double points, bool bold) {
    double x = 0, high = 0;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const double cell = table.columns[i].share * wide;
      const double size = i == 0 ? name_points : points;
      high = std::max(high, pages.text(printable(cells[i]), x, y, cell, {size, bold, false, i > 0}));
      x += cell;
    }
    y += high + between_mm;
  };
  std::vector<std::string> headings;
  for (const auto& column : table.columns) headings.push_back(column.heading);
  row(headings, heading_points, false);
  for (const auto& cells : table.rows) row(cells, number_points, true);
  pages.rule(0, y, wide, 0.3, 60);
  pages.go_to(y + 4);
}

}  // namespace scalpmark::viewer
