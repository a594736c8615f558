#include "geometry/paths/empty_ball.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace scalpmark::geometry {

using Eigen::Vector3d;

double length_around(const EmptyBall& ball, const Vector3d& a, const Vector3d& b) {
  const double straight = (b - a).norm();
  const Vector3d to_a = a - ball.centre, to_b = b - ball.centre;
  const double r = ball.radius_mm, along = to_a.dot(a - b);
  // The straight line passes the ball where it comes nearest to the centre beyond an end of it, or far
  // enough.
  if (r <= 0 || along <= 0 || along >= straight * straight) return straight;
  if (to_a.squaredNorm() - along * along / (straight * straight) >= r * r) return straight;
  const double from_a = std::max(to_a.norm(), r), from_b = std::max(to_b.norm(), r);
  const double cosine = std::clamp(to_a.dot(to_b) / (to_a.norm() * to_b.norm()), -1.0, 1.0);
  const double arc = std::acos(cosine) - std::acos(r / from_a) - std::acos(r / from_b);
  return std::sqrt(from_a * from_a - r * r) + std::sqrt(from_b * from_b - r * r) + r * std::max(0.0, arc);
}

EmptyBall ball_between(const Surface& skin, const Vector3d& a, const Vector3d& b) {
  // Tried on one corner in many, since the nearest of all is slow to find from deep inside; then made true.
  const auto& corners = skin.vertices();
  constexpr size_t looked_at = 1000;
  const size_t apart = std::max<size_t>(1, corners.size() / looked_at);
  const auto roughly = [&](const Vector3d& centre) {
    double nearest = std::numeric_limits<double>::infinity();
    for (size_t v = 0; v < corners.size(); v += apart)
      nearest = std::min(nearest, (corners[v] - centre).squaredNorm());
    return EmptyBall{centre, std::sqrt(nearest)};
  };
  const double straight = (b - a).norm();
  EmptyBall best = roughly(0.5 * (a + b));
  double best_mm = length_around(best, a, b);
  // Uphill from the middle of the chord, in ever smaller steps.
  for (double step = straight / 4; step > straight / 40; step /= 2)
    for (bool better = true; better;) {
      better = false;
      for (int axis = 0; axis < 3; ++axis)
        for (const double way : {-step, step}) {
          const EmptyBall tried = roughly(best.centre + way * Vector3d::Unit(axis));
          const double mm = length_around(tried, a, b);
          if (!(mm > best_mm * 1.001)) continue;
          best = tried;
          best_mm = mm;
          better = true;
        }
    }
  // A little smaller than it could be, so that rounding lets no triangle in.
  constexpr double rounding_mm = 1e-9;
  best.radius_mm = (skin.position(skin.closest(best.centre)) - best.centre).norm() - rounding_mm;
  return best;
}

}  // namespace scalpmark::geometry
