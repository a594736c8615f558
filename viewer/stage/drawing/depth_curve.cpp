#include "viewer/stage/drawing/depth_curve.h"

#include <algorithm>
#include <cmath>

#include "viewer/stage/drawing/free_corner.h"

namespace scalpmark::viewer {

namespace {

// Pixels of a picture 800 high.
constexpr double plot_width_px = 150, plot_height_px = 64, curve_pad_px = 6, tick_px = 3;
constexpr double most_of_it_on_head = 0.1;
const TextStyle curve_title{14, true, palette::text, false}, curve_text{13, false, palette::text, false};

}  // namespace

void draw_depth_curve(Overlay& overlay, const DepthCurve& curve, const Box& free, const Coverage& head,
                      std::vector<Caption>& taken) {
  if (curve.points.size() < 2) return;
  const double s = overlay.scale(), pad = curve_pad_px * s;
  const double deepest_mm = curve.points.back().x();
  const TextSize title = overlay.measure(curve.title, curve_title),
                 text = overlay.measure("100 %", curve_text),
                 depth = overlay.measure(curve.depth, curve_text);
  const double plot_width = plot_width_px * s, plot_height = plot_height_px * s;
  const double width = 2 * pad + std::max({title.width, text.width + 6 * s + plot_width, depth.width});
  const double height = 2 * pad + title.height + 6 * s + plot_height + tick_px * s + 2 * text.height;
  const Box box = free_corner(width, height, 8 * s, free, head, taken);
  // Rather no curve than one over the head or over what is written.
  const auto in_the_way = [&](const Caption& c) { return c.box.overlaps(box); };
  if (head.share(box) > most_of_it_on_head || std::any_of(taken.begin(), taken.end(), in_the_way)) return;
  overlay.box(box, palette::halo, 0.8);
  overlay.text(curve.title, {box.left + pad, box.top + pad}, curve_title);
  const double left = box.left + pad + text.width + 6 * s, top = box.top + pad + title.height + 6 * s,
               bottom = top + plot_height;
  const auto x_of = [&](double mm) { return left + plot_width * mm / deepest_mm; };
  const auto y_of = [&](double share) { return bottom - plot_height * std::clamp(share, 0.0, 1.0); };
  overlay.line({left, bottom}, {left + plot_width, bottom}, 1, palette::text);
  overlay.line({left, top}, {left, bottom}, 1, palette::text);
  for (const double share : {0.5, 1.0}) {
    const std::string percent = std::to_string(std::lround(100 * share)) + " %";
    const TextSize size = overlay.measure(percent, curve_text);
    overlay.line({left - tick_px * s, y_of(share)}, {left, y_of(share)}, 1, palette::text);
    overlay.text(percent, {left - 5 * s - size.width, y_of(share) - size.height / 2}, curve_text);
  }
  constexpr double tick_mm = 20;
  for (double mm = 0; mm <= deepest_mm; mm += tick_mm) {
    const std::string cm = std::to_string(std::lround(mm / 10));
    const TextSize size = overlay.measure(cm, curve_text);
    overlay.line({x_of(mm), bottom}, {x_of(mm), bottom + tick_px * s}, 1, palette::text);
    overlay.text(cm, {x_of(mm) - size.width / 2, bottom + tick_px * s}, curve_text);
  }
  overlay.text(curve.depth, {left + plot_width - depth.width, bottom + tick_px * s + text.height},
               curve_text);
  for (size_t i = 1; i < curve.points.size(); ++i)
    overlay.line({x_of(curve.points[i - 1].x()), y_of(curve.points[i - 1].y())},
                 {x_of(curve.points[i].x()), y_of(curve.points[i].y())}, 2, palette::text);
  taken.push_back({curve.title + "; " + curve.depth, box});
}

}  // namespace scalpmark::viewer
