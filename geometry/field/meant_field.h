#pragma once

#include <Eigen/Core>

#include "geometry/coil/coil_setup.h"
#include "geometry/coil/pose.h"
#include "geometry/field/field_map.h"
#include "geometry/field/round_head.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// How far the strongest place at depth lies from the coil's axis there when the coil is tilted about its
/// pulse point, mm for each degree: to the coil's right as its right side goes down, to its front as its
/// front edge goes up (so less than 0: the field follows the lowered wires).
struct TiltLever {
  double right_per_roll = 0, front_per_pitch = 0;
};

/// A coil's field where the coil is meant to lie, looked at on the sphere that lies so deep under the skin
/// there: for asking many times what is left of it when the coil lies otherwise. Const and thread-safe.
class MeantField {
public:
  /// Refuses (GeometryError) what round_head() and field_map() refuse, and a coil without windings.
  MeantField(const Surface& skin, const CoilSetup& setup, const Placement& meant, double depth_mm);

  /// With the coil in that pose, lifted clear of the head and by the setup's lift: what is left, along the
  /// line it was to have, of the field at the place where it was to be strongest. Some 20 us and the lift.
  [[nodiscard]] double left(const CoilPose& pose) const;

  /// By central differences of 5 degrees. None (zeros) for a coil whose field is strongest in a ring.
  [[nodiscard]] const TiltLever& lever() const { return lever_; }
  [[nodiscard]] bool has_lever() const { return has_lever_; }

private:
  [[nodiscard]] CoilFrame resting(const CoilPose& pose) const;
  [[nodiscard]] Eigen::Vector3d strongest_from_axis(const CoilPose& pose) const;

  Surface skin_;
  CoilSetup setup_;
  RoundHead round_;
  double depth_mm_ = 0, radius_mm_ = 0;
  FieldThere strongest_;
  TiltLever lever_;
  bool has_lever_ = false;
};

}  // namespace scalpmark::geometry
