#include "viewer/stage/drawing/gap_drawing.h"

#include <vtkProperty.h>

#include <algorithm>
#include <array>
#include <limits>

#include "viewer/stage/drawing/free_corner.h"
#include "viewer/stage/drawing/triangles.h"
#include "viewer/stage/scene/gap_colours.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

/// Toward the eye: over the skin's facets, under tapes and marks.
constexpr double map_over_skin_mm = 0.9, lines_over_skin_mm = 1.4;
constexpr double level_px = 0.9;
/// Past the scale's end there is no colour: further down the skin turns away from the coil.
constexpr double last_drawn_mm = gap_scale_top_mm;

// The block of the scale, pixels of a picture 800 high.
constexpr double bar_width_px = 200, bar_height_px = 12, pad_px = 6;
const TextStyle gap_title_style{14, true, palette::text, false}, tick_style{13, false, palette::text, false},
    strong_style{13, true, palette::text, false};

/// What of a triangle is near enough: all of it, or one or two corners cut off.
std::vector<geometry::GapMap::Corner> near_part(const geometry::GapMap& map,
                                                const std::array<int, 3>& triangle) {
  std::vector<geometry::GapMap::Corner> near;
  for (size_t k = 0; k < 3; ++k) {
    const auto& a = map.corners[static_cast<size_t>(triangle[k])];
    const auto& b = map.corners[static_cast<size_t>(triangle[(k + 1) % 3])];
    if (a.gap_mm <= last_drawn_mm) near.push_back(a);
    if ((a.gap_mm <= last_drawn_mm) == (b.gap_mm <= last_drawn_mm)) continue;
    const double share = (last_drawn_mm - a.gap_mm) / (b.gap_mm - a.gap_mm);
    near.push_back({a.at + share * (b.at - a.at), a.skin + share * (b.skin - a.skin), last_drawn_mm});
  }
  return near;
}

void fill(vtkPolyData& data, const geometry::GapMap& map) {
  std::vector<float> coordinates;
  std::vector<unsigned char> shades;
  coordinates.reserve(9 * map.triangles.size());
  shades.reserve(9 * map.triangles.size());
  const auto put = [&](const geometry::GapMap::Corner& corner) {
    for (int i = 0; i < 3; ++i) coordinates.push_back(static_cast<float>(corner.skin[i]));
    const Colour c = gap_colour(corner.gap_mm);
    shades.insert(shades.end(), {c.red, c.green, c.blue});
  };
  for (const auto& triangle : map.triangles) {
    const auto near = near_part(map, triangle);
    for (size_t k = 2; k < near.size(); ++k)
      for (const size_t corner : {size_t{0}, k - 1, k}) put(near[corner]);
  }
  set_triangles(data, coordinates, shades, 3);
}

/// The coloured bar with its ticks and figures.
void draw_bar(Overlay& overlay, const GapScale& scale, double from, double y) {
  const double s = overlay.scale(), bar = bar_width_px * s;
  constexpr int pieces = 100;
  for (int i = 0; i < pieces; ++i)
    overlay.box({from + bar * i / pieces, y, from + bar * (i + 1) / pieces, y + bar_height_px * s},
                gap_colour((i + 0.5) * gap_scale_top_mm / pieces), 1);
  for (const GapScale::Tick& tick : scale.ticks) {
    const double at = from + bar * tick.mm / gap_scale_top_mm;
    overlay.line({at, y}, {at, y + (bar_height_px + 3) * s}, 1, palette::text);
    const TextSize size = overlay.measure(tick.text, tick_style);
    overlay.text(tick.text, {at - size.width / 2, y + (bar_height_px + 3) * s}, tick_style);
  }
}

}  // namespace

GapDrawing::GapDrawing(vtkRenderer* renderer) {
  mapper_->SetInputData(data_);
  actor_->SetMapper(mapper_);
  actor_->GetProperty()->LightingOff();
  actor_->PickableOff();
  actor_->SetVisibility(0);
  renderer->AddActor(actor_);
}

void GapDrawing::show(const std::shared_ptr<const GapsShown>& gaps) {
  if (gaps == gaps_) return;
  gaps_ = gaps;
  actor_->SetVisibility(gaps_ && !gaps_->map.triangles.empty());
  if (gaps_) fill(*data_, gaps_->map);
}

void GapDrawing::draw(Ink& ink, const Sight& sight) {
  const Vector3d over = map_over_skin_mm * sight.toward_eye;
  actor_->SetPosition(over.x(), over.y(), over.z());
  if (!gaps_) return;
  for (const auto& ends : gaps_->level_lines)
    ink.line({ends[0], ends[1]}, level_px, palette::construction, lines_over_skin_mm);
}

void draw_gap_scale(Overlay& overlay, const GapScale& scale, const Box& free, const Coverage& head,
                    std::vector<Caption>& taken) {
  const double s = overlay.scale(), pad = pad_px * s, bar = bar_width_px * s;
  const TextSize title_size = overlay.measure(scale.title, gap_title_style);
  const TextSize tick_size = overlay.measure("50", tick_style);
  double width = std::max(bar + tick_size.width, title_size.width), text_height = 0;
  for (const auto& line : scale.rows) {
    const TextSize size = overlay.measure(line.text, line.strong ? strong_style : tick_style);
    width = std::max(width, size.width);
    text_height += size.height + 2 * s;
  }
  const double half = 0.5 * wedge_height_px * s, row = std::max(tick_size.height, 2 * half);
  width += 2 * pad;
  const double height = 2 * pad + title_size.height + 4 * s + bar_height_px * s + 3 * s + tick_size.height +
                        4 * s + text_height + row;
  const Box box = free_corner(width, height, 8 * s, free, head, taken);

  overlay.box(box, palette::halo, 0.8);
  double y = box.top + pad;
  const double x = box.left + pad;
  overlay.text(scale.title, {x, y}, gap_title_style);
  y += title_size.height + 4 * s;
  draw_bar(overlay, scale, x + 4 * s, y);
  y += (bar_height_px + 3) * s + tick_size.height + 4 * s;
  const double middle = y + row / 2;
  overlay.wedge({x + s + half, middle + half}, palette::text);
  overlay.text(scale.touches, {x + 2 * half + 8 * s, middle - tick_size.height / 2}, tick_style);
  y += row;
  std::string all = scale.title;
  for (const auto& line : scale.rows) {
    const TextStyle& style = line.strong ? strong_style : tick_style;
    overlay.text(line.text, {x, y + 2 * s}, style);
    y += overlay.measure(line.text, style).height + 2 * s;
    all += "; " + line.text;
  }
  taken.push_back({all, box});
}

}  // namespace scalpmark::viewer
