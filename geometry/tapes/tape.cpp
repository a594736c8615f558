#include "geometry/tapes/tape.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "geometry/base/error.h"
#include "geometry/surface/triangle_math.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

double turn(const Vector2d& a, const Vector2d& b, const Vector2d& c) {
  return cross(b - a, c - b);
}

/// A section passing this near the third point is the one meant, mm.
constexpr double over_tolerance_mm = 0.05;

/// How far the skin under a tape may pass from the third point, mm: that point may lie across a hole of the
/// widest kind that is bridged, not on the far side of the head.
constexpr double beside_third_point_mm = 30;

double distance_to(const std::vector<SectionPoint>& points, const Vector3d& q) {
  return nearest_on_line(
             0, points.size() - 1, [&](size_t i) { return points[i].at; }, q)
      .distance;
}

/// Where a string over the section from its first to its last point touches it: the convex hull of what rises
/// over the chord (Andrew's monotone chain), without the chord itself.
std::vector<size_t> taut_between(const std::vector<SectionPoint>& section, const Vector3d& normal,
                                 const Vector3d& over) {
  const Vector3d a = section.front().at, b = section.back().at;
  const Vector3d chord = (b - a).normalized();
  Vector3d rise = normal.cross(chord);
  if (rise.dot(over - a) < 0) rise = -rise;
  std::vector<Vector2d> flat(section.size());
  std::vector<size_t> order;
  order.reserve(section.size());
  for (size_t i = 0; i < section.size(); ++i) {
    const Vector3d d = section[i].at - a;
    flat[i] = {d.dot(chord), d.dot(rise)};
    if (i == 0 || i + 1 == section.size()) flat[i].y() = 0;
    if (i == 0 || i + 1 == section.size() || flat[i].y() > 0) order.push_back(i);
  }
  std::sort(order.begin(), order.end(), [&](size_t i, size_t j) {
    return flat[i].x() != flat[j].x() ? flat[i].x() < flat[j].x() : flat[i].y() < flat[j].y();
  });
  std::vector<size_t> hull;
  const auto sweep = [&](auto begin, auto end) {
    const size_t base = hull.size();
    for (auto it = begin; it != end; ++it) {
      while (hull.size() >= base + 2 && turn(flat[hull[hull.size() - 2]], flat[hull.back()], flat[*it]) <= 0)
        hull.pop_back();
      hull.push_back(*it);
    }
  };
  sweep(order.begin(), order.end());
  sweep(order.rbegin(), order.rend());
  // A simple section meets its hull in the order it runs, so sorting by index orders the touching points.
  hull.push_back(0);
  hull.push_back(section.size() - 1);
  std::sort(hull.begin(), hull.end());
  hull.erase(std::unique(hull.begin(), hull.end()), hull.end());
  return hull;
}

/// A string pulled taut over a growing section: the points where it touches so far, seen in the section's
/// plane with the skin's outside above.
class GrowingString {
public:
  explicit GrowingString(const Vector2d& start) : touching_{0}, flat_{start}, along_{0} {}

  /// How many touching points stay, and the string's length, if it went on to `p`.
  struct Reach {
    size_t kept;
    double length_mm;
  };
  [[nodiscard]] Reach to(const Vector2d& p) const {
    size_t kept = flat_.size();
    while (kept >= 2 && turn(flat_[kept - 2], flat_[kept - 1], p) >= 0) --kept;
    return {kept, along_[kept - 1] + (p - flat_[kept - 1]).norm()};
  }
  void extend(size_t index, const Vector2d& p) {
    const Reach reach = to(p);
    touching_.resize(reach.kept);
    flat_.resize(reach.kept);
    along_.resize(reach.kept);
    touching_.push_back(index);
    flat_.push_back(p);
    along_.push_back(reach.length_mm);
  }
  [[nodiscard]] const std::vector<size_t>& touching() const { return touching_; }

private:
  std::vector<size_t> touching_;
  std::vector<Vector2d> flat_;
  std::vector<double> along_;
};

}  // namespace

Tape::Tape(const Surface& skin, std::vector<SectionPoint> section, std::vector<size_t> touching)
    : skin_(skin), section_(std::move(section)), touching_(std::move(touching)) {
  along_mm_.reserve(touching_.size());
  for (size_t i = 0; i < touching_.size(); ++i) {
    if (i > 0) length_mm_ += (section_[touching_[i]].at - section_[touching_[i - 1]].at).norm();
    along_mm_.push_back(length_mm_);
  }
}

Tape Tape::over(const Surface& skin, const SurfacePoint& a, const SurfacePoint& over, const SurfacePoint& b) {
  const Vector3d from = skin.position(a), middle = skin.position(over), to = skin.position(b);
  const Vector3d n = (middle - from).cross(to - from);
  // Under a hundredth of a degree off a line, the plane would be rounding.
  if (!(n.norm() > 1e-4 * (middle - from).norm() * (to - from).norm()))
    throw GeometryError(
        Message::of("A tape needs a third point beside its two ends; the three points lie in one line."));
  const Vector3d normal = n.normalized();
  std::vector<SectionPoint> best;
  double best_distance = std::numeric_limits<double>::infinity();
  for (const double way : {1.0, -1.0}) {
    const Section section = follow_section(skin, a, normal, way * (middle - from), {.until = to});
    auto cut = cut_section(skin, section, b);
    if (cut.empty()) continue;
    const double distance = distance_to(cut, middle);
    if (distance < best_distance) {
      best_distance = distance;
      best = std::move(cut);
    }
    if (best_distance < over_tolerance_mm) break;
  }
  if (best.empty() || best_distance > beside_third_point_mm)
    throw GeometryError(Message::of(
        "The skin has no unbroken line for a tape between two of the points; the surface ends or has a hole there."));
  auto touching = taut_between(best, normal, middle);
  return {skin, std::move(best), std::move(touching)};
}

Tape Tape::along(const Surface& skin, const SurfacePoint& start, const Vector3d& normal,
                 const Vector3d& heading, double length_mm) {
  const Vector3d from = skin.position(start);
  if (!(length_mm > 0)) return {skin, {{start, from}, {start, from}}, {0, 1}};
  const Vector3d out = tangent_part(skin.smooth_normal(start), normal);
  Vector3d ahead = normal.cross(out);
  if (ahead.dot(heading) < 0) ahead = -ahead;
  const auto flat = [&](const Vector3d& q) { return Vector2d((q - from).dot(ahead), (q - from).dot(out)); };
  // A taut string is shorter than the skin under it; on a scalp by little, so this reach is seldom short.
  double reach_mm = 1.2 * length_mm + 5;
  for (;;) {
    Section section = follow_section(skin, start, normal, ahead, {.reach_mm = reach_mm});
    auto& points = section.points;
    GrowingString string(flat(from));
    for (size_t i = 1; i < points.size(); ++i) {
      const Vector2d p = flat(points[i].at);
      if (string.to(p).length_mm < length_mm) {
        string.extend(i, p);
        continue;
      }
      // The string's length grows with t on the last stretch; halving to well under a micron.
      double low = 0, high = 1;
      const Vector2d q = flat(points[i - 1].at);
      for (int step = 0; step < 48; ++step) {
        const double t = 0.5 * (low + high);
        (string.to(q + t * (p - q)).length_mm < length_mm ? low : high) = t;
      }
      SectionPoint last = between(skin, points, i - 1, 0.5 * (low + high));
      points.resize(i);
      points.push_back(last);
      string.extend(i, flat(last.at));
      return {skin, std::move(points), string.touching()};
    }
    if (section.reached_border || section.closed)
      throw GeometryError(Message::of("The skin ends before the tape does; shorten the distance."));
    reach_mm *= 2;
  }
}

SectionPoint Tape::at_mm(double mm) const {
  mm = std::clamp(mm, 0.0, length_mm_);
  const auto after = std::upper_bound(along_mm_.begin(), along_mm_.end(), mm);
  const size_t j =
      std::clamp<size_t>(static_cast<size_t>(after - along_mm_.begin()), 1, along_mm_.size() - 1);
  const size_t first = touching_[j - 1], last = touching_[j];
  const double stretch = along_mm_[j] - along_mm_[j - 1];
  const double t = stretch > 0 ? (mm - along_mm_[j - 1]) / stretch : 0.0;
  if (last == first + 1) return between(skin_, section_, first, t);
  const Vector3d in_air = section_[first].at + t * (section_[last].at - section_[first].at);
  const OnLine below = nearest_on_line(
      first, last, [&](size_t i) { return section_[i].at; }, in_air);
  return between(skin_, section_, below.segment, below.t);
}

double Tape::fraction_of(const Vector3d& q) const {
  if (!(length_mm_ > 0)) return 0;
  const OnLine hit = nearest_on_line(
      0, touching_.size() - 1, [&](size_t i) { return section_[touching_[i]].at; }, q);
  const double from = along_mm_[hit.segment], to = along_mm_[hit.segment + 1];
  return (from + hit.t * (to - from)) / length_mm_;
}

std::vector<Vector3d> Tape::line() const {
  std::vector<Vector3d> line;
  line.reserve(touching_.size());
  for (const size_t i : touching_) line.push_back(section_[i].at);
  return line;
}

std::vector<Vector3d> Tape::line_between(double from_mm, double to_mm) const {
  const double low = std::min(from_mm, to_mm), high = std::max(from_mm, to_mm);
  std::vector<Vector3d> line{at_mm(low).at};
  for (size_t i = 0; i < touching_.size(); ++i)
    if (along_mm_[i] > low && along_mm_[i] < high) line.push_back(section_[touching_[i]].at);
  line.push_back(at_mm(high).at);
  if (from_mm > to_mm) std::reverse(line.begin(), line.end());
  return line;
}

}  // namespace scalpmark::geometry
