#include "geometry/hands/marking_ways.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

bool is_edge(const CoilPart& part) {
  return part.name != "handle";
}

/// The outline's place that lies furthest along `way`; of several alike the one nearest to the middle of the
/// coil's length.
Vector3d furthest(const Coil& coil, const Vector2d& way) {
  constexpr double alike_mm = 0.01;
  std::optional<Vector3d> best;
  for (const CoilPart& part : coil.parts)
    if (is_edge(part))
      for (const Vector2d& flat : part.outline) {
        const Vector3d at = bent({flat.x(), flat.y(), part.bottom_mm}, part.bend_deg);
        const double gain = best ? way.dot((at - *best).head<2>()) : 1;
        if (gain > alike_mm || (gain > -alike_mm && std::abs(at.y()) < std::abs(best->y()))) best = at;
      }
  return best.value_or(Vector3d::Zero());
}

/// The front edge beside its middle: the foremost place of the outline at `x`.
Vector3d front_at(const Coil& coil, double x) {
  std::optional<Vector3d> best;
  for (const CoilPart& part : coil.parts) {
    if (!is_edge(part)) continue;
    const size_t corners = part.outline.size();
    for (size_t i = 0; i < corners; ++i) {
      const auto corner = [&](size_t k) {
        const Vector2d& flat = part.outline[k % corners];
        return bent({flat.x(), flat.y(), part.bottom_mm}, part.bend_deg);
      };
      const Vector3d a = corner(i), b = corner(i + 1);
      if ((a.x() - x) * (b.x() - x) > 0 || a.x() == b.x()) continue;
      const Vector3d at = a + (x - a.x()) / (b.x() - a.x()) * (b - a);
      if (!best || at.y() > best->y()) best = at;
    }
  }
  return best.value_or(furthest(coil, Vector2d(0, 1)));
}

}  // namespace

std::vector<CoilPlace> coil_places(const CoilSetup& setup, MarkingWay way, bool right_side) {
  const Vector3d front(0, setup.centre_to_edge_mm, 0);
  const Vector3d moved = front - Vector3d(0, front_at(setup.model, 0).y(), 0);
  switch (way) {
    case MarkingWay::front:
      break;
    case MarkingWay::front_line:
      return {{moved + front_at(setup.model, -front_line_mm / 2), 0},
              {moved + front_at(setup.model, front_line_mm / 2), 0}};
    case MarkingWay::front_and_side:
      return {{front, 0}, {furthest(setup.model, Vector2d(right_side ? 1 : -1, 0)), 1}};
    case MarkingWay::corners: {
      const Vector2d ahead = Vector2d(1, 1).normalized();
      return {{moved + furthest(setup.model, {-ahead.x(), ahead.y()}), 0},
              {moved + furthest(setup.model, ahead), 1}};
    }
  }
  return {{front, 0}};
}

double height_over_centre(const Coil& coil) {
  double top = 0;
  for (const CoilPart& part : coil.parts)
    if (is_edge(part)) top = std::max(top, part.top_mm);
  return top;
}

}  // namespace scalpmark::geometry
