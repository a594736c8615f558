#include "geometry/field/turns.h"

#include <Eigen/Geometry>

namespace scalpmark::geometry {

using Eigen::Vector3d;

std::vector<Turn> turns_of(const Coil& coil, const CoilFrame& frame) {
  const Vector3d right = frame.right();
  const auto turned = [&](const Vector3d& v) {
    return Vector3d(v.x() * right + v.y() * frame.front + v.z() * frame.normal);
  };
  std::vector<Turn> turns;
  for (const Winding& w : coil.windings) {
    const double pitch_mm = (w.outer_mm - w.inner_mm) / 2 / w.turns;
    Turn turn;
    turn.centre = frame.origin + turned(bent({w.centre.x(), w.centre.y(), w.height_mm}, w.bend_deg));
    turn.along = turned(bent(Vector3d::UnitX(), w.bend_deg));
    turn.across = (w.clockwise ? -1 : 1) * frame.front;
    for (int k = 0; k < w.turns; ++k) {
      turn.radius_mm = w.inner_mm / 2 + (k + 0.5) * pitch_mm;
      turns.push_back(turn);
    }
  }
  return turns;
}

}  // namespace scalpmark::geometry
