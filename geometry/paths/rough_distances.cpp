#include "geometry/paths/rough_distances.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <queue>
#include <utility>

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// How far `c` is from a source that is `a_mm` from a and `b_mm` from b, on their other side in the
/// triangle's plane; infinity where the straight way does not cross their edge.
double across_edge(const Vector3d& a, const Vector3d& b, const Vector3d& c, double a_mm, double b_mm) {
  constexpr double never = std::numeric_limits<double>::infinity();
  const Vector3d edge = b - a;
  const double length = edge.norm();
  if (!(length > 0)) return never;
  const double x = (c - a).dot(edge) / length;
  const double y = std::sqrt(std::max(0.0, (c - a).squaredNorm() - x * x));
  const double source_x = (a_mm * a_mm - b_mm * b_mm + length * length) / (2 * length);
  const double source_y = std::sqrt(std::max(0.0, a_mm * a_mm - source_x * source_x));
  if (!(y + source_y > 0)) return never;
  const double crossing = source_x + (x - source_x) * source_y / (y + source_y);
  return crossing >= 0 && crossing <= length ? std::hypot(x - source_x, y + source_y) : never;
}

}  // namespace

std::vector<double> rough_distances(const Surface& skin, const SurfacePoint& source) {
  constexpr double never = std::numeric_limits<double>::infinity();
  std::vector<double> mm(skin.vertices().size(), never);
  std::vector<bool> settled(mm.size(), false);
  using Arrival = std::pair<double, int>;
  std::priority_queue<Arrival, std::vector<Arrival>, std::greater<>> wave;
  const auto arrive = [&](int vertex, double at_mm) {
    if (!(at_mm < mm[static_cast<size_t>(vertex)])) return;
    mm[static_cast<size_t>(vertex)] = at_mm;
    wave.emplace(at_mm, vertex);
  };
  const Vector3d from = skin.position(source);
  for (const int corner : skin.triangle(source.face)) arrive(corner, (skin.vertex(corner) - from).norm());
  while (!wave.empty()) {
    const int here = wave.top().second;
    wave.pop();
    const double here_mm = mm[static_cast<size_t>(here)];
    if (settled[static_cast<size_t>(here)]) continue;
    settled[static_cast<size_t>(here)] = true;
    for (const int face : skin.faces_around(here)) {
      const Triangle& t = skin.triangle(face);
      const size_t k = t[0] == here ? 0 : t[1] == here ? 1 : 2;
      for (const auto& [next, other] :
           {std::pair{t[(k + 1) % 3], t[(k + 2) % 3]}, {t[(k + 2) % 3], t[(k + 1) % 3]}}) {
        if (settled[static_cast<size_t>(next)]) continue;
        arrive(next, here_mm + (skin.vertex(next) - skin.vertex(here)).norm());
        if (settled[static_cast<size_t>(other)])
          arrive(next, across_edge(skin.vertex(here), skin.vertex(other), skin.vertex(next), here_mm,
                                   mm[static_cast<size_t>(other)]));
      }
    }
  }
  return mm;
}

}  // namespace scalpmark::geometry
