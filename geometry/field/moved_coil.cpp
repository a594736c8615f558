#include "geometry/field/moved_coil.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <initializer_list>

#include "geometry/base/angles.h"
#include "geometry/coil/contact.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// What kept the coil off the skin as meant, cap and hair, keeps it off askew.
CoilFrame tilted_frame(const Surface& skin, const Coil& coil, const CoilField& meant, const Tilt& tilt) {
  const TiltedCoil t = tilt_coil(skin, coil, meant.laid.pose, tilt);
  const double kept_off_mm = std::max(0.0, meant.lift_mm - clearing_lift(skin, coil, meant.laid.pose));
  return {t.centre + kept_off_mm * meant.laid.pose.normal, t.pose.front, t.pose.normal};
}

CoilFrame swung_about(const CoilFrame& frame, const Vector3d& centre, const Vector3d& axis, double angle) {
  const Eigen::AngleAxisd turn(angle, axis);
  return {centre + turn * (frame.origin - centre), turn * frame.front, turn * frame.normal};
}

CoilFrame moved_frame(const Surface& skin, const Coil& coil, const CoilField& meant, CoilMoved moved,
                      double by) {
  CoilFrame frame = frame_of(meant.laid.pose, meant.lift_mm);
  const Vector3d& centre = meant.round.centre;
  const double round_mm = (frame.origin - centre).norm();
  switch (moved) {
    case CoilMoved::gap:
      frame.origin += by * frame.normal;
      break;
    case CoilMoved::roll:
      return tilted_frame(skin, coil, meant, {by, 0});
    case CoilMoved::pitch:
      return tilted_frame(skin, coil, meant, {0, by});
    case CoilMoved::ahead:
      return swung_about(frame, centre, -frame.right(), by / round_mm);
    case CoilMoved::aside:
      return swung_about(frame, centre, frame.front, by / round_mm);
    case CoilMoved::turn:
      return swung_about(frame, frame.origin, frame.normal, radians(by));
  }
  return frame;
}

}  // namespace

double field_left(const CoilField& meant, const SphereField& now) {
  const FieldThere& there = meant.map.strongest;
  return now.at(there.point).dot(there.field) / there.field.squaredNorm();
}

std::vector<MovedRatio> moved_ratios(const Surface& skin, const Coil& coil, const CoilField& meant) {
  std::vector<MovedRatio> all;
  const auto add = [&](CoilMoved moved, std::initializer_list<double> amounts) {
    for (const double by : amounts) {
      const SphereField now(meant.round.centre, turns_of(coil, moved_frame(skin, coil, meant, moved, by)));
      all.push_back({moved, by, field_left(meant, now)});
    }
  };
  add(CoilMoved::gap, {1, 2, 5, 10});
  add(CoilMoved::roll, {5, 10, 15});
  add(CoilMoved::pitch, {5, 10, 15});
  add(CoilMoved::ahead, {5, 10});
  add(CoilMoved::aside, {5, 10});
  add(CoilMoved::turn, {10, 20, 45});
  return all;
}

FieldAskew field_askew(const Surface& skin, const Coil& coil, const CoilField& meant, const Tilt& tilt) {
  const SphereField now(meant.round.centre, turns_of(coil, tilted_frame(skin, coil, meant, tilt)));
  FieldAskew askew;
  askew.strongest = strongest_on(now, meant.sheet);
  const Eigen::Vector3d by = askew.strongest.point - meant.map.strongest.point;
  askew.moved_mm = by.norm();
  askew.way = eight_ways(by, meant.laid);
  askew.left = field_left(meant, now);
  return askew;
}

}  // namespace scalpmark::geometry
