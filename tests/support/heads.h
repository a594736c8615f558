#pragma once

#include <Eigen/Geometry>
#include <cmath>

#include "geometry/head/head.h"
#include "tests/support/shapes.h"

namespace scalpmark::tests {

/// The idealised head of the 10-20 literature: a sphere with nasion and inion on the equator front and back,
/// the tragi on the equator left and right.
inline geometry::Head sphere_head(double radius_mm = 90, int level = 7) {
  return {sphere(radius_mm, level),
          {{0, radius_mm, 0}, {0, -radius_mm, 0}, {-radius_mm, 0, 0}, {radius_mm, 0, 0}}};
}

/// A smooth lopsided head: the sphere bulged and sheared so that left and right, front and back all differ.
inline Eigen::Vector3d lopsided(const Eigen::Vector3d& p) {
  const Eigen::Vector3d n = p.normalized();
  const double bulge = 1 + 0.06 * n.x() + 0.05 * n.y() * n.x() + 0.04 * n.z() * n.y() + 0.03 * n.x() * n.z();
  return {76 * bulge * n.x() + 3 * n.z(), 97 * bulge * n.y() + 2 * n.x(), 92 * bulge * n.z()};
}

inline geometry::Head lopsided_head(int level = 6) {
  const geometry::Surface ball = sphere(1, level);
  std::vector<Eigen::Vector3d> moved = ball.vertices();
  for (auto& v : moved) v = lopsided(v);
  const auto at = [](double x, double y, double z) { return lopsided(Eigen::Vector3d(x, y, z)); };
  return {ball.moved(std::move(moved)),
          {at(0.02, 1, -0.05), at(-0.03, -1, -0.1), at(-1, 0.05, -0.2), at(1, -0.04, -0.25)}};
}

/// The same head in another pose and scale.
inline geometry::Head moved_head(const geometry::Head& head, const Eigen::Affine3d& motion) {
  std::vector<Eigen::Vector3d> moved = head.skin().vertices();
  for (auto& v : moved) v = motion * v;
  const auto& f = head.fiducials().at;
  return {head.skin().moved(std::move(moved)),
          {motion * f.nasion, motion * f.inion, motion * f.left_tragus, motion * f.right_tragus}};
}

}  // namespace scalpmark::tests
