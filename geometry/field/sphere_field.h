#pragma once

#include <Eigen/Core>
#include <memory>
#include <vector>

#include "geometry/field/turns.h"

namespace scalpmark::geometry {

/// The field that a coil induces in a round head, V/m for a current that changes by 1 A/us, in the head's
/// frame. The head conducts alike at the same distance from its centre, whatever its conductivities; it ends
/// anywhere between the point asked for and the wires. No radial part, so nothing at the centre.
///
/// Line integral over the wires (Heller and van Hulsteyn 1992, Biophys J 63:129-138; the same by reciprocity
/// from the magnetic field of a dipole in a sphere, Sarvas 1987, Phys Med Biol 32:11-22). With the point r
/// and a wire's element dl at R, both from the centre, and a = |r - R|, the part square to r of
///   -(mu0 / 4 pi) dI/dt * closed integral of [dl / a - R (R . dl) (a + |R|) / (|R| F)],
///   F = a (|R| a + R . R - r . R).
/// Around a circle by the trapezoid rule, with as many nodes as this point is near: its error falls by
/// exp(-nodes * eta) with cosh(eta) = (distances along, across and radius squared) / (2 across * radius)
/// (Trefethen and Weideman 2014, SIAM Rev 56:385-458). Within 1e-6 of the strongest (tested).
class SphereField {
public:
  /// mm, head's frame. Refuses (GeometryError) a coil without windings, and a centre on a wire.
  SphereField(const Eigen::Vector3d& centre, const std::vector<Turn>& turns);

  /// Refuses (GeometryError) a point further from the centre than the nearest wire.
  [[nodiscard]] Eigen::Vector3d at(const Eigen::Vector3d& point) const;

  [[nodiscard]] const Eigen::Vector3d& centre() const { return centre_; }
  /// From the centre to the nearest wire, mm: further out there is no answer.
  [[nodiscard]] double reach_mm() const { return reach_mm_; }

private:
  struct Wire;
  Eigen::Vector3d centre_;
  double reach_mm_ = 0;
  std::shared_ptr<const std::vector<Wire>> wires_;
};

/// The same for one point, without what a SphereField works out first for many. Refuses as its at().
[[nodiscard]] Eigen::Vector3d field_at(const Eigen::Vector3d& centre, const std::vector<Turn>& turns,
                                       const Eigen::Vector3d& point);

}  // namespace scalpmark::geometry
