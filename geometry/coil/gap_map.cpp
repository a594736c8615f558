#include "geometry/coil/gap_map.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "geometry/base/error.h"
#include "geometry/coil/underside.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// An edge of the map this many steps long hangs between two pieces of skin, not on one.
constexpr double longest_steps = 9;

struct RimPlace {
  Vector2d at{0, 0};
  double height_mm = 0;
};

/// The nearest place of any outline within `reach_mm`.
std::optional<RimPlace> rim_near(const std::vector<Underside>& pieces, const Vector2d& at, double reach_mm) {
  std::optional<RimPlace> nearest;
  double away = reach_mm;
  for (const Underside& piece : pieces)
    for (size_t i = 0; i < piece.outline.size(); ++i) {
      const Vector2d& a = piece.outline[i];
      const Vector2d along = piece.outline[(i + 1) % piece.outline.size()] - a;
      const double length2 = along.squaredNorm();
      const double share = length2 > 0 ? std::clamp((at - a).dot(along) / length2, 0.0, 1.0) : 0;
      const Vector2d there = a + share * along;
      if ((there - at).norm() >= away) continue;
      away = (there - at).norm();
      nearest = RimPlace{there, piece.height_at(there)};
    }
  return nearest;
}

}  // namespace

GapMap gap_map(const Surface& skin, const Coil& coil, const Contact& contact, double step_mm) {
  if (!(step_mm >= 1 && step_mm <= 10))
    throw GeometryError(Message::of("The steps of the gap map must be from 1 to 10 mm; correct them."));
  std::vector<Underside> pieces = undersides(coil);
  pieces.erase(
      std::remove_if(pieces.begin(), pieces.end(), [](const Underside& piece) { return piece.is_wall; }),
      pieces.end());
  GapMap map;
  if (pieces.empty()) return map;
  Vector2d low = pieces.front().outline.front(), high = low;
  for (const Underside& piece : pieces)
    for (const auto& p : piece.outline) {
      low = low.cwiseMin(p);
      high = high.cwiseMax(p);
    }
  // Whole steps from the coil's centre, one beyond the rim on each side.
  const auto step_of = [&](double mm) { return static_cast<int>(std::floor(mm / step_mm)); };
  const int left = step_of(low.x()) - 1, back = step_of(low.y()) - 1;
  const int columns = step_of(high.x()) + 3 - left, rows = step_of(high.y()) + 3 - back;

  struct Place {
    bool inside = false;
    int corner = -1;
  };
  std::vector<Place> places(static_cast<size_t>(columns) * static_cast<size_t>(rows));
  const auto place = [&](int i, int j) -> Place& {
    return places[static_cast<size_t>(j) * static_cast<size_t>(columns) + static_cast<size_t>(i)];
  };
  const Vector3d right = contact.pose.right();
  for (int j = 0; j < rows; ++j)
    for (int i = 0; i < columns; ++i) {
      Vector2d at((left + i) * step_mm, (back + j) * step_mm);
      auto height = lowest_over(pieces, at);
      place(i, j).inside = height.has_value();
      if (!height) {
        const auto rim = rim_near(pieces, at, std::sqrt(2.0) * step_mm);
        if (!rim) continue;
        at = rim->at;
        height = rim->height_mm;
      }
      const Vector3d from = contact.pose.pulse + at.x() * right + at.y() * contact.pose.front +
                            (contact.lift_mm + *height) * contact.pose.normal;
      const auto hit = skin.ray_hit(from, -contact.pose.normal, deepest_gap_mm);
      if (!hit) continue;
      place(i, j).corner = static_cast<int>(map.corners.size());
      map.corners.push_back({at, skin.position(hit->point), hit->distance_mm});
    }

  const auto add = [&](const Place& a, const Place& b, const Place& c) {
    if (a.corner < 0 || b.corner < 0 || c.corner < 0 || !(a.inside || b.inside || c.inside)) return;
    const auto& p = map.corners[static_cast<size_t>(a.corner)].skin;
    const auto& q = map.corners[static_cast<size_t>(b.corner)].skin;
    const auto& r = map.corners[static_cast<size_t>(c.corner)].skin;
    if (std::max({(p - q).norm(), (q - r).norm(), (r - p).norm()}) > longest_steps * step_mm) return;
    map.triangles.push_back({a.corner, b.corner, c.corner});
  };
  for (int j = 0; j + 1 < rows; ++j)
    for (int i = 0; i + 1 < columns; ++i) {
      add(place(i, j), place(i + 1, j), place(i + 1, j + 1));
      add(place(i, j), place(i + 1, j + 1), place(i, j + 1));
    }
  return map;
}

}  // namespace scalpmark::geometry
