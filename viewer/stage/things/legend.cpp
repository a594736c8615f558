#include "viewer/stage/things/legend.h"

#include <algorithm>
#include <cmath>

#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

void Legend::show(const Shown& shown) {
  rows_.clear();
  if (!shown.has(Thing::legend)) return;
  const auto shape = [&](Shape s, Colour c, const std::string& text) {
    rows_.push_back({Sample::shape, s, c, text});
  };
  const auto line = [&](Colour c, const std::string& text) {
    rows_.push_back({Sample::line, Shape::dot, c, text});
  };
  if (shown.has(Thing::landmarks)) shape(Shape::dot, palette::landmark, words(Words::tr("Landmark")));
  if (shown.has(Thing::start)) shape(Shape::disc, palette::start, words(Words::tr("Search start")));
  if (shown.has(Thing::hotspot)) shape(Shape::ring, palette::hotspot, words(Words::tr("Hotspot")));
  if (shown.has(Thing::treatment))
    shape(Shape::diamond, palette::treatment, words(Words::tr("Treatment site")));
  if (shown.has(Thing::alternatives))
    shape(Shape::small_diamond, paler(palette::treatment, 0.6), words(Words::tr("Other sites in use")));
  if (shown.has(Thing::tolerance) && shown.tolerance)
    line(palette::pulse, words(Words::tr("Placed by hand: half, and 95 of 100")));
  if (shown.has(Thing::edge_marks)) {
    shape(Shape::disc, palette::pulse, words(Words::tr("Pulse point")));
    shape(Shape::bar, palette::edge_mark, words(Words::tr("Edge mark, chosen rule")));
    shape(Shape::bar, paler(palette::edge_mark, 0.45), words(Words::tr("Edge mark, other rules")));
  }
  if (shown.has(Thing::grid)) {
    shape(Shape::small_disc, palette::pulse, words(Words::tr("Search grid: pulse points")));
    shape(Shape::small_bar, palette::edge_mark, words(Words::tr("Search grid: edge marks")));
  }
  if (shown.has(Thing::angle)) {
    line(palette::angle, words(Words::tr("Forward (midline direction)")));
    line(palette::front_axis, words(Words::tr("Front axis of the coil")));
  }
  if (shown.has(Thing::tapes)) line(palette::tape, words(Words::tr("Tape, a tick each cm")));
  if (shown.has(Thing::coil) && shown.has(Thing::gaps) && shown.gaps)
    line(palette::casing, words(Words::tr("Coil's outline")));
  else if (shown.has(Thing::coil))
    rows_.push_back({Sample::coil, Shape::dot, palette::windings, words(Words::tr("Coil and windings"))});
  if (shown.has(Thing::cortex) && shown.under_coil != UnderCoil::left_out)
    rows_.push_back(
        {Sample::lit, Shape::disc, palette::lit, words(Words::tr("Cortex under the coil (template)"))});
}

void Legend::draw(Overlay& overlay, const Sight& sight, const Pixel& bottom_left,
                  std::vector<Caption>& taken) const {
  if (rows_.empty()) return;
  const TextStyle style{13, false, palette::text, false};
  const double s = sight.scale, sample = 34 * s;
  double width = 0;
  for (const auto& r : rows_) width = std::max(width, overlay.measure(r.text, style).width);
  // Closer together where what is written above would be covered; then without what needs explaining least:
  // the coil, lines, and last of all marks, which mostly have their names beside them.
  double above = 0;
  for (const Caption& other : taken)
    if (other.box.left < bottom_left.x + sample + width && other.box.right > bottom_left.x &&
        other.box.top < bottom_left.y)
      above = std::max(above, other.box.bottom + 3 * s);
  const double room = bottom_left.y - above, least_row = 16 * s;
  std::vector<Row> rows = rows_;
  for (const Sample first : {Sample::coil, Sample::line, Sample::shape, Sample::lit})
    while (least_row * static_cast<double>(rows.size()) > room) {
      const auto last =
          std::find_if(rows.rbegin(), rows.rend(), [&](const Row& r) { return r.sample == first; });
      if (last == rows.rend()) break;
      rows.erase(std::next(last).base());
    }
  if (rows.empty()) return;
  const auto count = static_cast<double>(rows.size());
  const double row = std::min(room / count, 21 * s);
  const double top = bottom_left.y - row * count;
  const Box all{bottom_left.x, top, bottom_left.x + sample + width, bottom_left.y};
  overlay.box(all, palette::halo, 0.7);
  double y = top + row / 2;
  std::string all_text;
  for (const auto& r : rows) {
    const double x = bottom_left.x + 14 * s;
    switch (r.sample) {
      case Sample::shape:
        overlay.shape(r.shape, {x, y}, r.colour);
        break;
      case Sample::lit:
        overlay.box({x - 13 * s, y - 7 * s, x + 13 * s, y + 7 * s}, palette::cortex, 1);
        overlay.shape(Shape::disc, {x, y}, palette::construction);
        overlay.shape(Shape::small_disc, {x, y}, r.colour);
        break;
      case Sample::line:
        overlay.line({x - 13 * s, y}, {x + 13 * s, y}, 2, r.colour);
        break;
      case Sample::coil:
        overlay.box({x - 13 * s, y - 6 * s, x + 13 * s, y + 6 * s}, palette::casing, 0.35);
        overlay.shape(Shape::ring, {x, y}, paler(r.colour, 0.7));
        break;
    }
    const TextSize size = overlay.measure(r.text, style);
    overlay.text(r.text, {bottom_left.x + sample, y - size.height / 2}, style);
    all_text += (all_text.empty() ? "" : "; ") + r.text;
    y += row;
  }
  taken.push_back({all_text, all, true});
}

void NumberTable::show(const geometry::Case& entered, const geometry::Placement& placement,
                       const Shown& shown) {
  rows_.clear();
  where_.clear();
  if (!shown.has(Thing::numbers)) return;
  where_ = words(Words::tr("Coil %1", "where it lies"), {where_shown(shown)});
  angle_ = words(Words::tr("%1 to the midline, edge at %2"),
                 {in_degrees(placement.angle_deg), in_cm(entered.coil.centre_to_edge_mm)});
  const auto& p = placement.pulse_tape;
  const auto& e = placement.edge_mark_tape;
  // What is still being worked out keeps its place, so that the table does not come and go.
  using From = geometry::TapeFrom;
  const auto length = [](const std::optional<From>& from, double From::*what) {
    return from ? cm((*from).*what) : words(Words::tr("not yet"));
  };
  const auto pulse = [&](double From::*what) { return length(p, what); };
  const auto edge = [&](double From::*what) {
    return placement.mark ? length(e, what) : words(Words::tr("none", "no edge mark"));
  };
  rows_ = {{words(Words::tr("cm of tape from")), words(Words::tr("pulse")), words(Words::tr("edge mark"))},
           {words(Words::tr("vertex")), pulse(&From::vertex_mm), edge(&From::vertex_mm)},
           {words(Words::tr("nasion")), pulse(&From::nasion_mm), edge(&From::nasion_mm)},
           {words(Words::tr("left tragus")), pulse(&From::left_tragus_mm), edge(&From::left_tragus_mm)},
           {words(Words::tr("right tragus")), pulse(&From::right_tragus_mm), edge(&From::right_tragus_mm)}};
}

double NumberTable::draw(Overlay& overlay, const Sight& sight, const Pixel& top_left,
                         std::vector<Caption>& taken) const {
  if (where_.empty()) return top_left.y;
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
  y += put(where_, top_left.x, strong, false) + 2 * s;
  y += put(angle_, top_left.x, plain, false) + 6 * s;
  // Columns for English, further apart where a translation needs it.
  double name_px = 0, pulse_px = 0, edge_px = 0;
  for (size_t i = 0; i < rows_.size(); ++i) {
    const TextStyle& style = i == 0 ? quiet : plain;
    name_px = std::max(name_px, overlay.measure(rows_[i].name, style).width);
    pulse_px = std::max(pulse_px, overlay.measure(rows_[i].pulse, style).width);
    edge_px = std::max(edge_px, overlay.measure(rows_[i].edge, style).width);
  }
  const double pulse_end = top_left.x + std::max(165 * s, name_px + pulse_px + 8 * s);
  const double edge_end = std::max(top_left.x + 245 * s, pulse_end + edge_px + 8 * s);
  for (size_t i = 0; i < rows_.size(); ++i) {
    const TextStyle& style = i == 0 ? quiet : plain;
    put(rows_[i].name, top_left.x, style, false);
    put(rows_[i].pulse, pulse_end, style, true);
    y += put(rows_[i].edge, edge_end, style, true) + 2 * s;
  }
  taken.push_back({where_ + "; " + angle_, {top_left.x, top_left.y, right, y}});
  return y;
}

}  // namespace scalpmark::viewer
