#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/surface/section.h"
#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// A taut measuring tape lying in a plane: the section of the skin by the plane, with hollows bridged (its
/// convex hull). Lengths are along the tape, mm.
class Tape {
public:
  /// The tape from `a` to `b` in the plane through `a`, `over` and `b`, on the side of `over`.
  /// Refuses (GeometryError) three points in a line, and a plane section that does not lead from a to b.
  static Tape over(const Surface& skin, const SurfacePoint& a, const SurfacePoint& over,
                   const SurfacePoint& b);

  /// The tape of `length_mm` from `start` in the plane with unit `normal`, heading to the side of `heading`.
  /// Refuses (GeometryError) a skin that ends before the tape does.
  static Tape along(const Surface& skin, const SurfacePoint& start, const Eigen::Vector3d& normal,
                    const Eigen::Vector3d& heading, double length_mm);

  [[nodiscard]] double length_mm() const { return length_mm_; }
  /// The skin point `mm` from the start (clamped to the tape). Where the tape bridges a hollow: the point of
  /// the section below it, nearest to the tape.
  [[nodiscard]] SectionPoint at_mm(double mm) const;
  [[nodiscard]] SectionPoint at(double fraction) const { return at_mm(fraction * length_mm_); }
  /// The reverse: how far along the tape (0 to 1) the place nearest to `q` lies.
  [[nodiscard]] double fraction_of(const Eigen::Vector3d& q) const;
  /// The tape itself (on the skin, or in the air where it bridges), for drawing.
  [[nodiscard]] std::vector<Eigen::Vector3d> line() const;
  /// The part between two lengths along it (either order), ends included.
  [[nodiscard]] std::vector<Eigen::Vector3d> line_between(double from_mm, double to_mm) const;

private:
  Tape(const Surface& skin, std::vector<SectionPoint> section, std::vector<size_t> touching);

  Surface skin_;                       ///< shares the caller's triangles
  std::vector<SectionPoint> section_;  ///< the skin under the tape, from start to end
  std::vector<size_t> touching_;       ///< indices into section_ where the tape touches, ascending
  std::vector<double> along_mm_;       ///< tape length at each of touching_
  double length_mm_ = 0;
};

}  // namespace scalpmark::geometry
