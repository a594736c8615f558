#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry>
#include <vector>

namespace scalpmark::geometry {

/// A smooth map of space that takes one set of points to another: an affine map by least squares, and for
/// what it leaves over a thin-plate spline (Bookstein 1989, IEEE Trans Pattern Anal Mach Intell 11:567-585,
/// in space: kernel r). mm on both sides.
class ThinPlate {
public:
  /// `slack_mm` gives the spline some give, so that points placed a millimetre or two off do not crease space
  /// (ridge on the kernel, Wahba 1990, memory); 0 goes through every point. Refuses (GeometryError): counts
  /// that differ, fewer than six points, points in one plane, coordinates that are not finite.
  [[nodiscard]] static ThinPlate fit(const std::vector<Eigen::Vector3d>& from,
                                     const std::vector<Eigen::Vector3d>& to, double slack_mm = 0);

  [[nodiscard]] Eigen::Vector3d operator()(const Eigen::Vector3d& p) const;
  [[nodiscard]] const Eigen::Affine3d& affine() const { return affine_; }
  /// How far the farthest of the fitted points lands from where it should, mm.
  [[nodiscard]] double worst_mm() const { return worst_mm_; }

private:
  Eigen::Affine3d affine_ = Eigen::Affine3d::Identity();
  Eigen::Matrix3Xd knots_;                               // the points fitted from
  Eigen::Matrix3Xd weights_;                             // one column a knot
  Eigen::Affine3d whole_ = Eigen::Affine3d::Identity();  // affine_ and the affine part of the spline together
  double worst_mm_ = 0;
};

}  // namespace scalpmark::geometry
