// The plan's tapes with a tick at every centimetre, a longer one at every fifth, counted from each tape's
// start.
#include <algorithm>
#include <cmath>

#include "viewer/stage/things/things.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

ShowThing show_tapes;

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

/// The first `length_mm` of a line.
std::vector<Vector3d> cut(std::vector<Vector3d> points, double length_mm) {
  double left_mm = std::max(0.0, length_mm);
  for (size_t i = 1; i < points.size(); ++i) {
    const Vector3d step = points[i] - points[i - 1];
    if (step.norm() >= left_mm) {
      if (left_mm > 0) points[i] = points[i - 1] + left_mm / step.norm() * step;
      points.resize(left_mm > 0 ? i + 1 : i);
      break;
    }
    left_mm -= step.norm();
  }
  return points;
}

Tick tick(const Showing& now, const std::vector<Vector3d>& points, const std::vector<double>& along,
          double mm, bool with_digit) {
  Tick tick;
  tick.at = at_length(points, along, mm);
  tick.normal = now.normal_at(tick.at);
  const Vector3d way = at_length(points, along, std::min(along.back(), mm + 2)) -
                       at_length(points, along, std::max(0.0, mm - 2));
  tick.across = tick.normal.cross(way);
  tick.half_px = with_digit ? 5 : 3;
  return tick;
}

/// One of the steps the case asks for, not one of the head's three tapes.
bool is_walked(const std::string& name) {
  return name == "lateral" || name == "anterior" || name == "treatment";
}

/// Figures stand at every so many ticks of the head's tapes; where a step is walked over them they count each
/// of its own ticks instead, from where it starts.
bool has_figure(const std::string& name, int count, int digits_every, bool any_walked) {
  if (count == 0 || name == "circumference") return false;
  return is_walked(name) || (!any_walked && count % digits_every == 0);
}

Line laid(const Showing& now, const std::string& name, const std::vector<Vector3d>& points, bool any_walked) {
  const bool walked = is_walked(name);
  Line line;
  line.keep_clear = walked;
  line.width_px = walked ? 2.6 : 1.5;
  line.role = walked ? Role::construction : Role::tape;
  line.lift_mm = walked ? 1.8 : 1.4;
  line.name = name;
  if (points.size() < 2) return line;
  const auto along = lengths_along(points);
  const double length = along.back();
  const int steps = std::max(1, static_cast<int>(std::ceil(length / corner_every_mm)));
  for (int i = 0; i <= steps; ++i) line.points.push_back(at_length(points, along, length * i / steps));
  // Digits as on a tape: every fifth centimetre, every second inch.
  const double every_mm = tape_tick_mm();
  const int digits_every = length_unit() == LengthUnit::inch ? 2 : 5;
  for (int count = 0; every_mm * count <= length + 1e-6; ++count) {
    Tick t = tick(now, points, along, every_mm * count, count % digits_every == 0);
    if (t.across.norm() <= 1e-9) continue;
    t.across.normalize();
    if (has_figure(name, count, digits_every, any_walked)) {
      Label label;
      label.text = std::to_string(count);
      label.clear_px = 5;
      label.priority = 5;
      label.role = walked ? Role::construction : Role::tape;
      label.size_px = 13;
      t.label = label;
    }
    line.ticks.push_back(std::move(t));
  }
  return line;
}

}  // namespace

Part show_tapes(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::tapes;
  const Shown& shown = now.shown;
  if (!shown.has(Thing::tapes)) return part;
  const auto being_laid = [&](const geometry::PlanLine& line) {
    return shown.laying && shown.laying->lines.contains(line.name);
  };
  const auto length = [](const geometry::PlanLine& line) {
    return line.points.empty() ? 0 : lengths_along(line.points).back();
  };
  const bool any_walked = std::any_of(now.plan.lines.begin(), now.plan.lines.end(), [&](const auto& line) {
    return is_walked(line.name) && shown.has_line(line.name);
  });
  double left_mm = 0;  // of what is laid so far
  for (const auto& line : now.plan.lines)
    if (shown.has_line(line.name) && being_laid(line)) left_mm += shown.laying->share * length(line);
  for (const auto& line : now.plan.lines) {
    if (!shown.has_line(line.name)) continue;
    const bool whole = !being_laid(line) || shown.laying->share >= 1;
    part.lines.push_back(laid(now, line.name, whole ? line.points : cut(line.points, left_mm), any_walked));
    if (!whole) left_mm -= length(line);
  }
  around.legend.push_back({LegendRow::Sample::line, Shape::dot, Role::tape,
                           words(Words::tr("Tape, a tick each %1", "cm or inch"), {one_tape_unit()}),
                           at_tapes_in_legend});
  return part;
}

}  // namespace scalpmark::viewer
