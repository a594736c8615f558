#pragma once

#include <Eigen/Core>
#include <array>
#include <vector>

#include "geometry/coil/pose.h"
#include "geometry/field/field_sheet.h"
#include "geometry/field/sphere_field.h"

namespace scalpmark::geometry {

/// A field's strength and way at a place. V/m for 1 A/us.
struct FieldThere {
  Eigen::Vector3d point = Eigen::Vector3d::Zero();
  Eigen::Vector3d field = Eigen::Vector3d::Zero();
  [[nodiscard]] double strength() const { return field.norm(); }
};

/// The part of a sheet where the field is at least so strong.
struct FieldPatch {
  double strength = 0;  ///< V/m for 1 A/us
  double area_cm2 = 0;
  std::vector<std::array<Eigen::Vector3d, 3>> triangles;
  std::vector<std::array<Eigen::Vector3d, 2>> outline;  ///< pieces of it, in no order
};

/// The two patches that are told of: half of the strongest, and 71 % (half of its square).
inline constexpr double half_share_of_field = 0.5, seven_tenths_of_field = 0.71;

/// Under the coil's centre, so deep along the coil's axis from the skin.
struct FieldAtDepth {
  double depth_mm = 0;
  double field = 0;  ///< V/m for 1 A/us
};

/// What a coil does on a sheet. Nobody's own field: in a round model head.
struct FieldMap {
  FieldThere strongest;
  double from_pulse_mm = 0;  ///< of the strongest place, straight to the skin point under the coil's centre
  double from_axis_mm = 0;   ///< and to the coil's axis
  /// Of the strongest field, from the coil's front axis as seen from above, positive toward the coil's right;
  /// -90 to 90, since it is a line with two ends: which end is the way of the current is the device's.
  double from_front_deg = 0;
  FieldPatch half, seven_tenths;
  std::vector<double> strengths;  ///< at the sheet's corners; less than 0 out of the field's reach
  std::vector<FieldAtDepth> under_centre;
};

/// As deep as the curve under the centre goes, and its steps, mm.
inline constexpr double deepest_field_mm = 60, field_depth_step_mm = 2;

/// The strongest place is looked for between the sheet's corners as well. Leaves out what of a sheet lies
/// further from the round head's centre than the wires. Refuses (GeometryError) a sheet that has nothing
/// else, and a coil without field on it.
[[nodiscard]] FieldMap field_map(const SphereField& field, const FieldSheet& sheet, const CoilPose& pose);

/// Only the strongest place.
[[nodiscard]] FieldThere strongest_on(const SphereField& field, const FieldSheet& sheet);

/// Only the part where the field has at least that strength, V/m for 1 A/us; none where it is weaker
/// everywhere.
[[nodiscard]] FieldPatch part_above(const SphereField& field, const FieldSheet& sheet, double strength);

}  // namespace scalpmark::geometry
