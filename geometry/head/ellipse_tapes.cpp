#include "geometry/head/ellipse_tapes.h"

#include <cmath>

#include "geometry/base/angles.h"

namespace scalpmark::geometry {

namespace {

/// Around an ellipse, from its semi-axes.
double around_ellipse(double a, double b) {
  const double h = (a - b) * (a - b) / ((a + b) * (a + b));
  return pi * (a + b) * (1 + 3 * h / (10 + std::sqrt(4 - 3 * h)));
}

}  // namespace

Eigen::Vector3d ellipse_tapes(const Eigen::Vector3d& size_mm) {
  const double length = size_mm[0] / 2, breadth = size_mm[1] / 2, height = size_mm[2];
  return {around_ellipse(length, height) / 2, around_ellipse(breadth, height) / 2,
          around_ellipse(length, breadth)};
}

}  // namespace scalpmark::geometry
