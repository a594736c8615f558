#include "viewer/stage/drawing/legend.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "viewer/stage/scene/field_shown.h"

namespace scalpmark::viewer {

namespace {

using Sample = LegendRow::Sample;

const TextStyle style{13, false, palette::text, false};

/// What there is room for: without what needs explaining least, first the coil, then lines, and last of all
/// marks, which mostly have their names beside them.
std::vector<LegendRow> that_fit(std::vector<LegendRow> rows, double room, double least_row) {
  for (const Sample first : {Sample::coil, Sample::line, Sample::shape, Sample::lit, Sample::field})
    while (least_row * static_cast<double>(rows.size()) > room) {
      const auto last =
          std::find_if(rows.rbegin(), rows.rend(), [&](const LegendRow& r) { return r.sample == first; });
      if (last == rows.rend()) break;
      rows.erase(std::next(last).base());
    }
  return rows;
}

/// Its windings in its outline.
void draw_coil(Overlay& overlay, double s, const LegendRow& row, double x, double y) {
  const double half = row.windings > 1 ? 13 * s : 8 * s, high = 7 * s, radius = 4.5 * s;
  overlay.box({x - half, y - high, x + half, y + high}, palette::casing, 0.25);
  for (const double side : {-1.0, 1.0}) {
    overlay.line({x - half, y + side * high}, {x + half, y + side * high}, 1.2, palette::casing);
    overlay.line({x + side * half, y - high}, {x + side * half, y + high}, 1.2, palette::casing);
  }
  constexpr int corners = 18;
  for (int winding = 0; winding < row.windings; ++winding) {
    const double middle = x + (row.windings > 1 ? (2 * winding - 1) * 5.6 * s : 0);
    const auto rim = [&](int i) {
      const double a = 2 * std::numbers::pi * i / corners;
      return Pixel{middle + radius * std::cos(a), y + radius * std::sin(a)};
    };
    for (int i = 0; i < corners; ++i) overlay.line(rim(i), rim(i + 1), 1.6, colour_of(row.role));
  }
}

void draw_rim(Overlay& overlay, double s, const Pixel& middle, double half_width, double half_height) {
  constexpr int corners = 24;
  const auto rim = [&](int i) {
    const double a = 2 * std::numbers::pi * i / corners;
    return Pixel{middle.x + half_width * s * std::cos(a), middle.y + half_height * s * std::sin(a)};
  };
  for (int i = 0; i < corners; ++i)
    overlay.line(rim(i), rim(i + 1), field_outline_px, colour_of(Role::construction));
}

/// Two tints with outlines on a piece of skin, as the stage has them.
void draw_patch(Overlay& overlay, double s, Colour colour, double x, double y) {
  constexpr double wide = 11, wide_high = 6.5, core = 5.5, core_high = 3;
  overlay.box({x - 14 * s, y - 8.5 * s, x + 14 * s, y + 8.5 * s}, palette::skin, 1);
  overlay.ellipse({x, y}, wide * s, wide_high * s, colour, field_wide_opacity);
  overlay.ellipse({x, y}, core * s, core_high * s, colour, field_core_opacity);
  draw_rim(overlay, s, {x, y}, wide, wide_high);
  draw_rim(overlay, s, {x, y}, core, core_high);
}

void draw_sample(Overlay& overlay, double s, const LegendRow& row, double x, double y) {
  const Colour colour = colour_of(row.role);
  switch (row.sample) {
    case Sample::shape:
      overlay.shape(row.shape, {x, y}, colour);
      break;
    case Sample::lit:
      overlay.box({x - 13 * s, y - 7 * s, x + 13 * s, y + 7 * s}, palette::cortex, 1);
      overlay.box({x - 6 * s, y - 4 * s, x + 6 * s, y + 4 * s}, colour, 1);
      break;
    case Sample::line:
      overlay.line({x - 13 * s, y}, {x + 13 * s, y}, 2, colour);
      break;
    case Sample::field:
      draw_patch(overlay, s, colour, x, y);
      break;
    case Sample::coil:
      draw_coil(overlay, s, row, x, y);
      break;
  }
}

}  // namespace

void draw_legend(Overlay& overlay, const Sight& sight, const std::vector<LegendRow>& all_rows,
                 const Pixel& bottom_left, std::vector<Caption>& taken) {
  if (all_rows.empty()) return;
  const double s = sight.scale, sample = 34 * s;
  double width = 0;
  for (const auto& r : all_rows) width = std::max(width, overlay.measure(r.text, style).width);
  // Closer together where what is written above would be covered.
  double above = 0;
  for (const Caption& other : taken)
    if (other.box.left < bottom_left.x + sample + width && other.box.right > bottom_left.x &&
        other.box.top < bottom_left.y)
      above = std::max(above, other.box.bottom + 3 * s);
  const double room = bottom_left.y - above;
  const std::vector<LegendRow> rows = that_fit(all_rows, room, 16 * s);
  if (rows.empty()) return;
  const auto count = static_cast<double>(rows.size());
  const double row = std::min(room / count, 21 * s);
  const double top = bottom_left.y - row * count;
  const Box all{bottom_left.x, top, bottom_left.x + sample + width, bottom_left.y};
  overlay.box(all, palette::halo, 0.7);
  double y = top + row / 2;
  std::string all_text;
  for (const auto& r : rows) {
    draw_sample(overlay, s, r, bottom_left.x + 14 * s, y);
    const TextSize size = overlay.measure(r.text, style);
    overlay.text(r.text, {bottom_left.x + sample, y - size.height / 2}, style);
    all_text += (all_text.empty() ? "" : "; ") + r.text;
    y += row;
  }
  taken.push_back({all_text, all, true});
}

double draw_numbers(Overlay& overlay, const Sight& sight, const NumberTable& table, const Pixel& top_left,
                    std::vector<Caption>& taken) {
  const double s = sight.scale;
  const TextStyle strong{14, true, palette::text, false}, plain{14, false, palette::text, false},
      quiet{13, false, palette::quiet_text, false};
  double y = top_left.y;
  double right = top_left.x;
  const auto put = [&](const std::string& text, double x, const TextStyle& style, bool to_the_right) {
    const TextSize size = overlay.measure(text, style);
    overlay.text(text, {to_the_right ? x - size.width : x, y}, style);
    right = std::max(right, to_the_right ? x : x + size.width);
    return size.height;
  };
  y += put(table.where, top_left.x, strong, false) + 2 * s;
  y += put(table.angle, top_left.x, plain, false) + 2 * s;
  y += put(table.reach, top_left.x, plain, false) + 6 * s;
  // Columns for English, further apart where a translation needs it.
  double name_px = 0, pulse_px = 0, edge_px = 0;
  for (size_t i = 0; i < table.rows.size(); ++i) {
    const TextStyle& style = i == 0 ? quiet : plain;
    name_px = std::max(name_px, overlay.measure(table.rows[i].name, style).width);
    pulse_px = std::max(pulse_px, overlay.measure(table.rows[i].pulse, style).width);
    edge_px = std::max(edge_px, overlay.measure(table.rows[i].edge, style).width);
  }
  const double pulse_end = top_left.x + std::max(165 * s, name_px + pulse_px + 8 * s);
  const double edge_end = std::max(top_left.x + 245 * s, pulse_end + edge_px + 8 * s);
  for (size_t i = 0; i < table.rows.size(); ++i) {
    const TextStyle& style = i == 0 ? quiet : plain;
    put(table.rows[i].name, top_left.x, style, false);
    put(table.rows[i].pulse, pulse_end, style, true);
    y += put(table.rows[i].edge, edge_end, style, true) + 2 * s;
  }
  taken.push_back(
      {table.where + "; " + table.angle + "; " + table.reach, {top_left.x, top_left.y, right, y}});
  return y;
}

}  // namespace scalpmark::viewer
