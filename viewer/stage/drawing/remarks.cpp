#include "viewer/stage/drawing/remarks.h"

#include <algorithm>
#include <string>

#include "viewer/stage/drawing/captions.h"

namespace scalpmark::viewer {

namespace {

using Weight = Remark::Weight;

TextStyle style_of(Weight weight, double share) {
  const bool quiet = weight == Weight::quiet;
  return {(quiet ? 13.0 : 14.0) * share, weight == Weight::heading,
          quiet ? palette::quiet_text : palette::text, false};
}

struct Row {
  std::string text;
  TextStyle style;
  double height, above;
};

std::vector<Row> rows_of(Overlay& overlay, const std::vector<Remark>& remarks, double share, double width) {
  std::vector<Row> rows;
  for (const Remark& remark : remarks) {
    const TextStyle style = style_of(remark.weight, share);
    double above = (remark.weight == Weight::heading ? 8 : 2) * overlay.scale();
    for (std::string& line : wrapped(overlay, remark.text, style, width)) {
      const double height = overlay.measure(line, style).height;
      rows.push_back({std::move(line), style, height, rows.empty() ? 0 : above});
      above = 2 * overlay.scale();
    }
  }
  return rows;
}

double height_of(const std::vector<Row>& rows, bool closed_up) {
  double height = 0;
  for (const Row& row : rows) height += row.height + (closed_up ? 0 : row.above);
  return height;
}

/// One less; no half of one, which could be another number.
void leave_one_out(std::vector<Remark>& remarks) {
  static const std::string more = " \u2026";
  const auto plain = std::find_if(remarks.rbegin(), remarks.rend(),
                                  [](const Remark& r) { return r.weight == Weight::plain; });
  const auto least = plain == remarks.rend() ? std::prev(remarks.end()) : std::prev(plain.base());
  const auto after = remarks.erase(least);
  if (after == remarks.begin()) return;
  std::string& before = std::prev(after)->text;
  if (!before.ends_with(more)) before += more;
}

}  // namespace

void draw_remarks(Overlay& overlay, const Sight& sight, const std::vector<Remark>& remarks, const Box& place,
                  std::vector<Caption>& taken) {
  constexpr double least_px = 12, step = 0.95;
  std::vector<Remark> said = remarks;
  double share = 1;
  std::vector<Row> rows = rows_of(overlay, said, share, place.width());
  const bool close_up = height_of(rows, false) > place.height();
  while (!rows.empty() && height_of(rows, close_up) > place.height()) {
    if (style_of(Weight::quiet, share * step).size_px * sight.scale >= least_px)
      share *= step;
    else
      leave_one_out(said);
    rows = rows_of(overlay, said, share, place.width());
  }
  if (rows.empty()) return;
  double y = place.top, widest = 0;
  for (const Row& row : rows) {
    y += close_up ? 0 : row.above;
    overlay.text(row.text, {place.left, y}, row.style);
    widest = std::max(widest, overlay.measure(row.text, row.style).width);
    y += row.height;
  }
  std::string all;
  for (const Remark& remark : said) all += (all.empty() ? "" : "; ") + remark.text;
  taken.push_back({all, {place.left, place.top, place.left + widest, y}});
}

}  // namespace scalpmark::viewer
