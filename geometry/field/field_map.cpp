#include "geometry/field/field_map.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

#include "geometry/base/all_cores.h"
#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/surface/triangle_math.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// Between the corners of a sphere's grid the strongest place is closed in on to this, mm.
constexpr double closed_in_mm = 0.01;
/// Around the strongest corner of a cortex, each triangle is looked at in so many rows.
constexpr int rows_in_triangle = 4;
/// What a core takes on at a time.
constexpr size_t corners_at_once = 128;

struct Strengths {
  std::vector<double> at;  ///< of the sheet's corners; less than 0 where nothing is known
  size_t strongest = 0;
};

Strengths strengths_on(const SphereField& field, const FieldSheet& sheet) {
  Strengths s;
  s.at.resize(sheet.at.size(), -1);
  const double reach2 = field.reach_mm() * field.reach_mm();
  const size_t pieces = (sheet.at.size() + corners_at_once - 1) / corners_at_once;
  on_all_cores(pieces, [&](size_t piece) {
    const size_t end = std::min(sheet.at.size(), (piece + 1) * corners_at_once);
    for (size_t i = piece * corners_at_once; i < end; ++i)
      if ((sheet.at[i] - field.centre()).squaredNorm() < reach2) s.at[i] = field.at(sheet.at[i]).norm();
  });
  for (size_t i = 0; i < s.at.size(); ++i)
    if (s.at[i] > s.at[s.strongest]) s.strongest = i;
  if (sheet.at.empty() || !(s.at[s.strongest] > 0))
    throw GeometryError(Message::of(
        "The coil's field does not reach the brain of the round model head here; move the coil."));
  return s;
}

FieldThere field_there(const SphereField& field, const Vector3d& point) {
  return {point, field.at(point)};
}

/// On a sphere, from its strongest corner, by ever smaller steps four ways.
FieldThere closed_in_on_sphere(const SphereField& field, const Vector3d& from) {
  FieldThere best = field_there(field, from);
  const double radius = (from - field.centre()).norm();
  for (double step = 2; step > closed_in_mm; step /= 2) {
    for (bool moved = true; moved;) {
      moved = false;
      const Vector3d out = (best.point - field.centre()) / radius, u = out.unitOrthogonal(), v = out.cross(u);
      for (const Vector3d& way : {u, v, Vector3d(-u), Vector3d(-v)}) {
        const Vector3d next = field.centre() + radius * (radius * out + step * way).normalized();
        const FieldThere tried = field_there(field, next);
        // By more than rounding, so that a ring of equals is not walked round.
        if (tried.strength() <= best.strength() * (1 + 1e-12)) continue;
        best = tried;
        moved = true;
        break;
      }
    }
  }
  return best;
}

/// On a cortex, in the triangles around its strongest corner.
FieldThere closed_in_on_triangles(const SphereField& field, const FieldSheet& sheet, size_t corner) {
  FieldThere best = field_there(field, sheet.at[corner]);
  for (const Triangle& t : sheet.triangles) {
    if (std::ranges::find(t, static_cast<int>(corner)) == t.end()) continue;
    for (int i = 0; i <= rows_in_triangle; ++i)
      for (int j = 0; i + j <= rows_in_triangle; ++j) {
        const double a = static_cast<double>(i) / rows_in_triangle,
                     b = static_cast<double>(j) / rows_in_triangle;
        const Vector3d at = a * sheet.at[static_cast<size_t>(t[0])] +
                            b * sheet.at[static_cast<size_t>(t[1])] +
                            (1 - a - b) * sheet.at[static_cast<size_t>(t[2])];
        if ((at - field.centre()).norm() >= field.reach_mm()) continue;
        const FieldThere tried = field_there(field, at);
        if (tried.strength() > best.strength()) best = tried;
      }
  }
  return best;
}

FieldThere strongest_near(const SphereField& field, const FieldSheet& sheet, size_t corner) {
  return sheet.of_brain ? closed_in_on_triangles(field, sheet, corner)
                        : closed_in_on_sphere(field, sheet.at[corner]);
}

/// What of a triangle has at least `level`: all of it, or one or two corners cut off where the field, taken
/// to change evenly from corner to corner, falls below.
void add_part_above(const std::array<Vector3d, 3>& at, const std::array<double, 3>& strength, double level,
                    FieldPatch& patch) {
  std::vector<Vector3d> part, cut;
  for (size_t k = 0; k < 3; ++k) {
    const size_t next = (k + 1) % 3;
    if (strength[k] >= level) part.push_back(at[k]);
    if ((strength[k] >= level) == (strength[next] >= level)) continue;
    const double share = (level - strength[k]) / (strength[next] - strength[k]);
    cut.emplace_back(at[k] + share * (at[next] - at[k]));
    part.push_back(cut.back());
  }
  if (cut.size() == 2) patch.outline.push_back({cut[0], cut[1]});
  for (size_t k = 2; k < part.size(); ++k) {
    patch.triangles.push_back({part[0], part[k - 1], part[k]});
    patch.area_cm2 += 0.5 * (part[k - 1] - part[0]).cross(part[k] - part[0]).norm() / 100;
  }
}

FieldPatch patch_of(const FieldSheet& sheet, const Strengths& strengths, double level) {
  FieldPatch patch;
  patch.strength = level;
  for (const Triangle& t : sheet.triangles) {
    std::array<double, 3> strength{};
    for (size_t k = 0; k < 3; ++k) strength[k] = strengths.at[static_cast<size_t>(t[k])];
    if (std::max({strength[0], strength[1], strength[2]}) < level) continue;
    if (std::min({strength[0], strength[1], strength[2]}) < 0) continue;
    add_part_above({sheet.at[static_cast<size_t>(t[0])], sheet.at[static_cast<size_t>(t[1])],
                    sheet.at[static_cast<size_t>(t[2])]},
                   strength, level, patch);
  }
  return patch;
}

}  // namespace

FieldThere strongest_on(const SphereField& field, const FieldSheet& sheet) {
  return strongest_near(field, sheet, strengths_on(field, sheet).strongest);
}

FieldPatch part_above(const SphereField& field, const FieldSheet& sheet, double strength) {
  return patch_of(sheet, strengths_on(field, sheet), strength);
}

FieldMap field_map(const SphereField& field, const FieldSheet& sheet, const CoilPose& pose) {
  FieldMap map;
  Strengths strengths = strengths_on(field, sheet);
  map.strongest = strongest_near(field, sheet, strengths.strongest);
  const Vector3d away = map.strongest.point - pose.pulse;
  map.from_pulse_mm = away.norm();
  map.from_axis_mm = (away - away.dot(pose.normal) * pose.normal).norm();
  const double ahead = map.strongest.field.dot(pose.front), aside = map.strongest.field.dot(pose.right());
  map.from_front_deg = degrees(std::atan2(ahead < 0 ? -aside : aside, std::abs(ahead)));
  map.half = patch_of(sheet, strengths, half_share_of_field * map.strongest.strength());
  map.seven_tenths = patch_of(sheet, strengths, seven_tenths_of_field * map.strongest.strength());
  for (double depth = 0; depth <= deepest_field_mm; depth += field_depth_step_mm) {
    const Vector3d at = pose.pulse - depth * pose.normal;
    if ((at - field.centre()).norm() < field.reach_mm())
      map.under_centre.push_back({depth, field.at(at).norm()});
  }
  map.strengths = std::move(strengths.at);
  return map;
}

}  // namespace scalpmark::geometry
