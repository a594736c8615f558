#include "viewer/page/part_json.h"

#include <array>
#include <cmath>
#include <cstdio>

namespace scalpmark::viewer {

using Eigen::Vector3d;
using nlohmann::ordered_json;

namespace {

constexpr double place_steps = 1e2, direction_steps = 1e4, px_steps = 1e2;
/// Around every mark, as on the stage (drawing/ink).
constexpr double halo_px = 1.5;

double stepped(double value, double steps) {
  return std::round(value * steps) / steps + 0.0;  // adding zero turns -0 into 0
}

ordered_json label_json(const Label& label) {
  ordered_json out;
  out["text"] = label.text;
  out["clear"] = stepped(label.clear_px, px_steps);
  out["priority"] = label.priority;
  if (label.may_go_far) out["far"] = true;
  out["colour"] = colour_json(label.role);
  if (label.bold) out["bold"] = true;
  out["size"] = label.size_px;
  if (!label.aside.empty()) out["aside"] = label.aside;
  return out;
}

void add_label(ordered_json& out, const std::optional<Label>& label) {
  if (label) out["label"] = label_json(*label);
}

ordered_json mark_json(const Mark& mark) {
  ordered_json out;
  out["thing"] = name_of(mark.thing);
  out["name"] = mark.name;
  out["shape"] = static_cast<int>(mark.shape);
  out["colour"] = colour_json(mark.role);
  out["layer"] = mark.layer();
  out["at"] = place_json(mark.at);
  out["normal"] = direction_json(mark.normal);
  out["along"] = direction_json(mark.along);
  add_label(out, mark.label);
  return out;
}

ordered_json tick_json(const Tick& tick) {
  ordered_json out;
  out["at"] = place_json(tick.at);
  out["across"] = direction_json(tick.across);
  out["normal"] = direction_json(tick.normal);
  out["half"] = tick.half_px;
  add_label(out, tick.label);
  return out;
}

ordered_json line_json(const Line& line) {
  ordered_json out;
  if (!line.name.empty()) out["name"] = line.name;
  out["points"] = places_json(line.points);
  out["px"] = line.width_px;
  out["colour"] = colour_json(line.role);
  out["lift"] = line.lift_mm;
  if (line.dashed) out["dashed"] = true;
  if (line.keep_clear) out["clear"] = true;
  for (const Tick& tick : line.ticks) out["ticks"].push_back(tick_json(tick));
  if (line.label && !line.normals.empty()) {
    add_label(out, line.label);
    out["normals"] = ordered_json::array();
    for (const Vector3d& n : line.normals)
      for (const double v : n) out["normals"].push_back(stepped(v, direction_steps));
  }
  return out;
}

ordered_json spot_json(const Spot& spot) {
  ordered_json out;
  out["at"] = place_json(spot.at);
  out["px"] = spot.radius_px;
  out["colour"] = colour_json(spot.role);
  out["lift"] = spot.lift_mm;
  if (spot.normal) out["normal"] = direction_json(*spot.normal);
  add_label(out, spot.label);
  return out;
}

ordered_json flat_json(const std::vector<Eigen::Vector2d>& corners) {
  ordered_json out = ordered_json::array();
  for (const auto& p : corners)
    for (const double v : p) out.push_back(stepped(v, px_steps));
  return out;
}

}  // namespace

ordered_json place_json(const Vector3d& at) {
  return {stepped(at.x(), place_steps), stepped(at.y(), place_steps), stepped(at.z(), place_steps)};
}

ordered_json direction_json(const Vector3d& way) {
  return {stepped(way.x(), direction_steps), stepped(way.y(), direction_steps),
          stepped(way.z(), direction_steps)};
}

ordered_json places_json(const std::vector<Vector3d>& places) {
  ordered_json out = ordered_json::array();
  for (const Vector3d& p : places)
    for (const double v : p) out.push_back(stepped(v, place_steps));
  return out;
}

std::string colour_json(Role role) {
  const Colour c = colour_of(role);
  std::array<char, 8> text{};
  std::snprintf(text.data(), text.size(), "#%02x%02x%02x", c.red, c.green, c.blue);
  return text.data();
}

ordered_json part_json(const Part& part) {
  ordered_json out;
  out["thing"] = name_of(part.thing);
  for (const Spot& spot : part.spots) out["spots"].push_back(spot_json(spot));
  for (const Line& line : part.lines)
    if (!line.points.empty()) out["lines"].push_back(line_json(line));
  for (const Mark& mark : part.marks) out["marks"].push_back(mark_json(mark));
  for (const PlacedWords& words : part.words) {
    ordered_json placed;
    placed["at"] = place_json(words.at);
    placed["normal"] = direction_json(words.normal);
    placed["label"] = label_json(words.label);
    out["words"].push_back(std::move(placed));
  }
  return out;
}

ordered_json shapes_json() {
  ordered_json all = ordered_json::array();
  for (int i = 0; i <= static_cast<int>(Shape::pencil_cross); ++i) {
    const auto shape = static_cast<Shape>(i);
    ordered_json out;
    out["triangles"] = flat_json(triangles_px(shape));
    out["halo"] = flat_json(triangles_px(shape, halo_px));
    out["reach"] = reach_px(shape);
    if (faces_eye(shape)) out["upright"] = true;
    all.push_back(std::move(out));
  }
  return all;
}

}  // namespace scalpmark::viewer
