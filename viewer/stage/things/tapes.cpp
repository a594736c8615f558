#include "viewer/stage/things/tapes.h"

#include <algorithm>
#include <cmath>

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

/// Drawn lines need no more than a corner every two millimetres.
constexpr double corner_every_mm = 2;

/// Length from the first corner to each.
std::vector<double> lengths_along(const std::vector<Vector3d>& line) {
  std::vector<double> along(line.size(), 0.0);
  for (size_t i = 1; i < line.size(); ++i) along[i] = along[i - 1] + (line[i] - line[i - 1]).norm();
  return along;
}

Vector3d at_length(const std::vector<Vector3d>& line, const std::vector<double>& along, double mm) {
  const auto next = static_cast<size_t>(std::upper_bound(along.begin(), along.end(), mm) - along.begin());
  if (next == 0) return line.front();
  if (next >= line.size()) return line.back();
  const double step = along[next] - along[next - 1];
  const double share = step > 0 ? (mm - along[next - 1]) / step : 0;
  return line[next - 1] + share * (line[next] - line[next - 1]);
}

}  // namespace

Tapes::Laid Tapes::lay(const geometry::Head& head, const geometry::PlanLine& line) {
  Laid laid;
  laid.from = line;
  laid.walked = line.name == "lateral" || line.name == "anterior" || line.name == "treatment";
  if (line.points.size() < 2) return laid;
  const auto along = lengths_along(line.points);
  const double length = along.back();
  const int steps = std::max(1, static_cast<int>(std::ceil(length / corner_every_mm)));
  for (int i = 0; i <= steps; ++i) laid.line.push_back(at_length(line.points, along, length * i / steps));
  for (int cm = 0; 10.0 * cm <= length + 1e-6; ++cm) {
    const Vector3d at = at_length(line.points, along, 10.0 * cm);
    const Vector3d way = at_length(line.points, along, std::min(length, 10.0 * cm + 2)) -
                         at_length(line.points, along, std::max(0.0, 10.0 * cm - 2));
    const Vector3d normal = calm_normal(head.skin(), at);
    const Vector3d across = normal.cross(way);
    if (across.norm() > 1e-9) laid.ticks.push_back({at, across.normalized(), normal, cm, false});
  }
  return laid;
}

void Tapes::show(const geometry::Head& head, const geometry::Plan& plan, const Shown& shown) {
  shown_ = shown.has(Thing::tapes);
  const void* skin = &head.skin().vertices();
  std::vector<Laid> laid;
  for (size_t i = 0; i < plan.lines.size(); ++i) {
    // The head's own tapes stay where they are while a case is edited; keep what did not change.
    const auto same = std::find_if(laid_.begin(), laid_.end(), [&](const Laid& old) {
      return old.from.name == plan.lines[i].name && old.from.points == plan.lines[i].points;
    });
    laid.push_back(skin == skin_ && same != laid_.end() ? *same : lay(head, plan.lines[i]));
  }
  laid_ = std::move(laid);
  skin_ = skin;
}

void Tapes::draw(const geometry::Head& head, const Sight& sight) {
  ink_.begin(sight);
  for (auto& tape : laid_) {
    for (auto& t : tape.ticks) t.visible = shown_ && in_sight(head.skin(), t.at, t.normal, sight);
    if (!shown_) continue;
    const Colour colour = tape.walked ? palette::construction : palette::tape;
    const double lift = tape.walked ? 1.8 : 1.4;
    ink_.line(tape.line, tape.walked ? 2.6 : 1.5, colour, lift);
    for (const auto& t : tape.ticks) {
      const double half = sight.mm(t.cm % 5 == 0 ? 5 : 3);
      if (t.visible) ink_.line({t.at - half * t.across, t.at + half * t.across}, 1.3, colour, lift);
    }
  }
  ink_.done();
}

void Tapes::wish(std::vector<LabelWish>& labels, const Sight& sight) const {
  for (const auto& tape : laid_) {
    if (tape.walked || tape.from.name == "circumference") continue;
    for (const auto& t : tape.ticks) {
      if (!t.visible || t.cm == 0 || t.cm % 5 != 0) continue;
      LabelWish wish;
      wish.text = std::to_string(t.cm);
      wish.anchor = sight.project(t.at);
      wish.clear_px = 5 * sight.scale;
      wish.priority = 5;
      wish.colour = palette::tape;
      wish.size_px = 13;
      labels.push_back(wish);
    }
  }
}

}  // namespace scalpmark::viewer
