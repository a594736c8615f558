#include "geometry/exercise/lost_mark.h"

#include <Eigen/Dense>
#include <cmath>
#include <vector>

#include "geometry/paths/shortest_path.h"
#include "geometry/surface/triangle_math.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// The way a path goes over its last millimetres, so that the skin's grain does not count.
Vector3d way_of_arrival(const std::vector<Vector3d>& path) {
  constexpr double last_mm = 8;
  for (auto p = path.rbegin(); p != path.rend(); ++p)
    if ((path.back() - *p).norm() >= last_mm) return (path.back() - *p).normalized();
  return (path.back() - path.front()).normalized();
}

double as_written(double mm) {
  return std::round(mm);
}

}  // namespace

LostMark lost_mark(const Surface& skin, const TapeEnds& ends, const SurfacePoint& at) {
  LostMark mark;
  mark.at = at;
  for (size_t i = 0; i < ends.size(); ++i) {
    const ShortestPath path = shortest_path(skin, ends[i], at);
    mark.exact_mm[i] = path.length_mm;
    mark.arriving[i] = way_of_arrival(path.line);
  }
  mark.written = {as_written(mark.exact_mm[0]), as_written(mark.exact_mm[1]), as_written(mark.exact_mm[2]),
                  as_written(mark.exact_mm[3])};
  return mark;
}

SurfacePoint looked_for(const Surface& skin, const LostMark& mark, const TapeEnds& ends) {
  // Gauss and Newton's steps with the slopes at the mark itself: over some millimetres they hardly turn.
  constexpr int rounds = 3;
  constexpr double settled_mm = 0.05;
  const Vector3d normal = skin.smooth_normal(mark.at);
  const Vector3d x = tangent_part(mark.arriving[0], normal), y = normal.cross(x);
  Eigen::Matrix<double, 4, 2> slopes;
  for (size_t i = 0; i < ends.size(); ++i)
    slopes.row(static_cast<Eigen::Index>(i)) << mark.arriving[i].dot(x), mark.arriving[i].dot(y);
  const auto solver = slopes.colPivHouseholderQr();
  SurfacePoint at = mark.at;
  for (int round = 0; round < rounds; ++round) {
    const std::vector<double> mm = shortest_distances(skin, at, {ends.begin(), ends.end()});
    Eigen::Vector4d missing;
    for (size_t i = 0; i < ends.size(); ++i) missing[static_cast<Eigen::Index>(i)] = mark.exact_mm[i] - mm[i];
    const Eigen::Vector2d step = solver.solve(missing);
    at = skin.closest(skin.position(at) + step[0] * x + step[1] * y);
    if (step.norm() < settled_mm) break;
  }
  return at;
}

}  // namespace scalpmark::geometry
