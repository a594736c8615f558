#include "viewer/stage/drawing/part_drawing.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <type_traits>

namespace scalpmark::viewer {

using Eigen::Vector3d;

PartDrawing::PartDrawing(vtkRenderer* renderer) : renderer_(renderer), ink_(renderer) {}

bool PartDrawing::show(const Part& part) {
  bool fresh = false;
  const auto need = [&](auto& drawing, bool wanted) {
    if (drawing || !wanted) return;
    drawing = std::make_unique<typename std::remove_reference_t<decltype(drawing)>::element_type>(renderer_);
    fresh = true;
  };
  need(body_, part.body.has_value());
  need(coil_, part.coil.has_value());
  need(gaps_, part.gaps != nullptr);
  need(through_, part.through.has_value());
  if (body_) body_->show(part.body, part.pickable);
  if (coil_) coil_->show(part.coil);
  if (gaps_) gaps_->show(part.gaps);
  if (through_) through_->show(part.through);
  ink_.actor()->SetPickable(part.pickable);
  return fresh;
}

void PartDrawing::draw_last() {
  if (body_) body_->draw_last();
  if (through_) through_->draw_last();
  if (coil_) coil_->draw_last();
  // What is seen through the skin would else be drawn over lines and marks as well.
  renderer_->RemoveActor(ink_.actor());
  renderer_->AddActor(ink_.actor());
}

void PartDrawing::wish(const std::optional<Label>& label, const Vector3d& at, const Sight& sight) {
  if (!label) return;
  LabelWish wish;
  wish.text = label->text;
  wish.anchor = sight.project(at);
  wish.clear_px = label->clear_px * sight.scale;
  wish.priority = label->priority;
  wish.may_go_far = label->may_go_far;
  wish.colour = colour_of(label->role);
  wish.bold = label->bold;
  wish.size_px = label->size_px;
  wish.aside = label->aside;
  wishes_.push_back(wish);
}

// `reach_px`: around the place, y down.
void PartDrawing::leave_free(const Vector3d& at, const Box& reach_px, const Sight& sight) {
  const Pixel middle = sight.project(at);
  const double s = sight.scale;
  symbols_.push_back({{middle.x + s * reach_px.left, middle.y + s * reach_px.top,
                       middle.x + s * reach_px.right, middle.y + s * reach_px.bottom},
                      middle});
}

void PartDrawing::leave_line_free(const Line& line, const Sight& sight) {
  constexpr double piece_px = 8;
  for (std::size_t i = 1; i < line.points.size(); ++i) {
    const Pixel a = sight.project(line.points[i - 1]), b = sight.project(line.points[i]);
    const int pieces = 1 + static_cast<int>(std::hypot(b.x - a.x, b.y - a.y) / (piece_px * sight.scale));
    for (int k = 0; k < pieces; ++k) {
      const auto at = [&](double share) {
        return Pixel{a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)};
      };
      const Pixel p = at(static_cast<double>(k) / pieces), q = at(static_cast<double>(k + 1) / pieces);
      lines_.push_back({std::min(p.x, q.x), std::min(p.y, q.y), std::max(p.x, q.x), std::max(p.y, q.y)});
    }
  }
}

void PartDrawing::draw_line(const Line& line, const geometry::Surface& skin, const Sight& sight) {
  const Colour colour = colour_of(line.role);
  if (line.dashed)
    ink_.dashes(line.points.front(), line.points.back(), line.width_px, colour, line.lift_mm);
  else
    ink_.line(line.points, line.width_px, colour, line.lift_mm);
  constexpr double tick_width_px = 1.3;
  for (const Tick& tick : line.ticks) {
    if (!in_sight(skin, tick.at, tick.normal, sight)) continue;
    const double half = sight.mm(tick.half_px);
    ink_.line({tick.at - half * tick.across, tick.at + half * tick.across}, tick_width_px, colour,
              line.lift_mm);
    wish(tick.label, tick.at, sight);
    // Beside its own tick, not along the line, where the next one is.
    const Eigen::Vector2d flat(tick.across.dot(sight.right()), -tick.across.dot(sight.up));
    if (tick.label && flat.norm() > 1e-6)
      wishes_.back().only_along = Pixel{flat.x() / flat.norm(), flat.y() / flat.norm()};
  }
  if (line.keep_clear) leave_line_free(line, sight);
  if (!line.label) return;
  double highest = std::numeric_limits<double>::infinity();
  std::optional<Vector3d> there;
  for (size_t i = 0; i < line.normals.size(); ++i) {
    const Pixel at = sight.project(line.points[i]);
    if (at.y >= highest || !in_sight(skin, line.points[i], line.normals[i], sight)) continue;
    highest = at.y;
    there = line.points[i];
  }
  if (there) wish(line.label, *there, sight);
}

void PartDrawing::draw_spot(const Spot& spot, const geometry::Surface& skin, const Sight& sight) {
  if (spot.normal && !in_sight(skin, spot.at, *spot.normal, sight)) return;
  ink_.spot(spot.at, spot.radius_px, spot.tint.value_or(colour_of(spot.role)), spot.lift_mm);
  if (!spot.label) return;
  wish(spot.label, spot.at, sight);
  const double r = spot.radius_px;
  leave_free(spot.at, {-r, -r, r, r}, sight);
}

void PartDrawing::draw(const Part& part, const geometry::Surface& skin, const Sight& sight) {
  wishes_.clear();
  symbols_.clear();
  lines_.clear();
  unseen_.clear();
  marks_.clear();
  ink_.begin(sight);
  if (gaps_) gaps_->draw(ink_, sight);
  if (through_) through_->draw(sight);
  for (const Ribbon& ribbon : part.ribbons) ink_.ribbon(ribbon);
  for (const Spot& spot : part.spots) draw_spot(spot, skin, sight);
  for (const Line& line : part.lines) draw_line(line, skin, sight);
  for (const Wedge& wedge : part.wedges) {
    if (!in_sight(skin, wedge.at, wedge.normal, sight)) continue;
    ink_.wedge(wedge);
    wish(wedge.label, wedge.at, sight);
    leave_free(wedge.at, {-wedge_half_px, -wedge_height_px, wedge_half_px, 0}, sight);
  }
  for (const Mark& mark : part.marks) {
    const Colour colour = colour_of(mark.role);
    const bool visible = in_sight(skin, mark.at, mark.normal, sight);
    marks_.push_back({mark, colour, visible});
    if (!visible && mark.label && !mark.label->aside.empty()) unseen_.push_back(mark.label->aside);
    if (!visible) continue;
    ink_.mark(mark, colour);
    wish(mark.label, mark.at, sight);
  }
  for (const PlacedWords& words : part.words)
    if (in_sight(skin, words.at, words.normal, sight)) wish(words.label, words.at, sight);
  ink_.done();
}

bool PartDrawing::has(const vtkActor* actor) const {
  return actor == ink_.actor() || (body_ && actor == body_->actor());
}

}  // namespace scalpmark::viewer
