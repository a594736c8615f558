#pragma once
// Scans of heads that are known in closed form, as a scanner would see them.
#include <Eigen/Core>
#include <array>
#include <cmath>
#include <functional>

#include "tests/support/nifti_writer.h"

namespace scalpmark::tests {

inline const Eigen::Vector3d semi_axes{72, 92, 80};  // mm; an adult head's, roughly

/// First-order distance from the ellipsoid: exact on it, positive outside.
inline double outside_by(const Eigen::Vector3d& p) {
  const double f = p.cwiseQuotient(semi_axes).norm();
  if (f < 0.1) return -semi_axes.minCoeff();
  return (f - 1) * f / p.cwiseQuotient(semi_axes.cwiseProduct(semi_axes)).norm();
}

/// 1 inside, 0 outside, as a scanner with a Gaussian point spread of `blur_mm` would see a flat edge: one
/// half exactly on the surface.
inline double edge(double outside_mm, double blur_mm = 1.2) {
  return 0.5 * std::erfc(outside_mm / (blur_mm * std::sqrt(2.0)));
}

inline double head_at(const Eigen::Vector3d& p) {
  return edge(outside_by(p));
}

inline Eigen::Matrix4d placed(const Eigen::Vector3d& voxel_mm, const Eigen::Vector3d& first_voxel) {
  Eigen::Matrix4d m = Eigen::Matrix4d::Identity();
  m.topLeftCorner<3, 3>() = voxel_mm.asDiagonal();
  m.topRightCorner<3, 1>() = first_voxel;
  return m;
}

/// A scan of `intensity(world mm)` on a block that `to_world` places.
inline NiftiFile scan(const Eigen::Matrix4d& to_world, const std::array<int, 3>& size,
                      const std::function<double(const Eigen::Vector3d&)>& intensity) {
  NiftiFile file;
  file.set_sform(to_world);
  file.fill(size[0], size[1], size[2], [&](int i, int j, int k) {
    return intensity((to_world * Eigen::Vector4d(i, j, k, 1)).head<3>());
  });
  return file;
}

inline const std::array<int, 3> usual_size{100, 124, 110};
inline NiftiFile usual_scan(const std::function<double(const Eigen::Vector3d&)>& intensity) {
  return scan(placed({1.6, 1.6, 1.6}, {-79.3, -98.6, -87.1}), usual_size, intensity);
}

}  // namespace scalpmark::tests
