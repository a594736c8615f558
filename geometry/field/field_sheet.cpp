#include "geometry/field/field_sheet.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// Of one sphere: no further round than this from where its middle is, radians; a grid would fold there.
constexpr double furthest_round = 2.4;

}  // namespace

FieldSheet sheet_on_sphere(const RoundHead& round, const CoilPose& pose, double radius_mm, double step_mm,
                           double reach_mm) {
  const Vector3d up = (pose.pulse - round.centre).normalized();
  const Vector3d along = (pose.front - pose.front.dot(up) * up).normalized(), across = along.cross(up);
  const double reach = std::min(reach_mm, furthest_round * radius_mm);
  const double row_mm = step_mm * std::sqrt(3.0) / 2;
  const int rows = static_cast<int>(std::ceil(reach / row_mm)),
            columns = static_cast<int>(std::ceil(reach / step_mm)) + 1;
  FieldSheet sheet;
  // Every place of a grid that is sheared, row by row, so that its triangles have equal sides.
  const int wide = 2 * (columns + rows) + 1, high = 2 * rows + 1;
  std::vector<int> known(static_cast<size_t>(wide) * static_cast<size_t>(high), -1);
  const auto index = [&](int i, int j) -> int& {
    return known[static_cast<size_t>(j + rows) * static_cast<size_t>(wide) +
                 static_cast<size_t>(i + columns + rows)];
  };
  for (int j = -rows; j <= rows; ++j)
    for (int i = -columns - rows; i <= columns + rows; ++i) {
      const Vector2d flat(step_mm * (i + 0.5 * j), row_mm * j);
      const double far = flat.norm();
      if (far > reach) continue;
      const double angle = far / radius_mm;
      const Vector3d way = far > 0 ? Vector3d((flat.x() * across + flat.y() * along) / far) : along;
      index(i, j) = static_cast<int>(sheet.at.size());
      sheet.at.emplace_back(round.centre + radius_mm * (std::cos(angle) * up + std::sin(angle) * way));
    }
  for (int j = -rows; j < rows; ++j)
    for (int i = -columns - rows; i < columns + rows; ++i) {
      const int a = index(i, j), b = index(i + 1, j), c = index(i, j + 1), d = index(i + 1, j + 1);
      if (a >= 0 && b >= 0 && c >= 0) sheet.triangles.push_back({a, b, c});
      if (b >= 0 && d >= 0 && c >= 0) sheet.triangles.push_back({b, d, c});
    }
  return sheet;
}

FieldSheet sheet_on_cortex(const Cortex& cortex, const Vector3d& pulse, double reach_mm) {
  const Surface& brain = cortex.surface();
  const double reach2 = reach_mm * reach_mm;
  FieldSheet sheet;
  sheet.of_brain = true;
  std::vector<int> known(brain.vertices().size(), -1);
  const auto taken = [&](int v) {
    int& index = known[static_cast<size_t>(v)];
    if (index < 0) {
      index = static_cast<int>(sheet.at.size());
      sheet.at.push_back(brain.vertex(v));
      sheet.corners.push_back(v);
    }
    return index;
  };
  for (const Triangle& t : brain.triangles()) {
    const bool near =
        std::ranges::all_of(t, [&](int v) { return (brain.vertex(v) - pulse).squaredNorm() < reach2; });
    if (near) sheet.triangles.push_back({taken(t[0]), taken(t[1]), taken(t[2])});
  }
  return sheet;
}

}  // namespace scalpmark::geometry
