#include "geometry/field/meant_field.h"

#include <Eigen/Geometry>

#include "geometry/field/field_sheet.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

constexpr double lever_step_deg = 5;
/// A strongest place further off the axis than this, mm, is one of a ring: it jumps, and no lever moves it.
constexpr double of_a_ring_mm = 15;
/// Looked for so near to the axis, mm, on a coarse grid first.
constexpr double lever_reach_mm = 40, lever_grid_mm = 5;

}  // namespace

MeantField::MeantField(const Surface& skin, const CoilSetup& setup, const Placement& meant, double depth_mm)
    : skin_(skin), setup_(setup), round_(round_head(skin, meant.pulse)), depth_mm_(depth_mm) {
  const CoilPose pose = meant.pose().pose;
  radius_mm_ = (pose.pulse - depth_mm * pose.normal - round_.centre).norm();
  const SphereField field(round_.centre, turns_of(setup.model, frame_of(pose, meant.lift_mm)));
  strongest_ = strongest_on(field, sheet_on_sphere(round_, pose, radius_mm_));
  const Vector3d away = strongest_.point - pose.pulse;
  if ((away - away.dot(pose.normal) * pose.normal).norm() > of_a_ring_mm) return;
  has_lever_ = true;
  const auto moved = [&](const Tilt& more, const Tilt& less, const Vector3d& along) {
    const Vector3d by = strongest_from_axis(tilted(pose, more)) - strongest_from_axis(tilted(pose, less));
    return by.dot(along) / (2 * lever_step_deg);
  };
  lever_.right_per_roll = moved({lever_step_deg, 0}, {-lever_step_deg, 0}, pose.right());
  lever_.front_per_pitch = moved({0, lever_step_deg}, {0, -lever_step_deg}, pose.front);
}

CoilFrame MeantField::resting(const CoilPose& pose) const {
  return frame_of(pose, clearing_lift(skin_, setup_.model, pose) + setup_.lift_mm);
}

Vector3d MeantField::strongest_from_axis(const CoilPose& pose) const {
  const SphereField field(round_.centre, turns_of(setup_.model, resting(pose)));
  const FieldSheet sheet = sheet_on_sphere(round_, pose, radius_mm_, lever_grid_mm, lever_reach_mm);
  return strongest_on(field, sheet).point - (pose.pulse - depth_mm_ * pose.normal);
}

double MeantField::left(const CoilPose& pose) const {
  const Vector3d now = field_at(round_.centre, turns_of(setup_.model, resting(pose)), strongest_.point);
  return now.dot(strongest_.field) / strongest_.field.squaredNorm();
}

}  // namespace scalpmark::geometry
