#include "geometry/surface/triangle_math.h"

#include <Eigen/Geometry>
#include <cmath>

namespace scalpmark::geometry {

using Eigen::Vector3d;

// The regions of Ericson 2004, Real-Time Collision Detection, section 5.1.5 (memory).
Vector3d closest_weights(const Vector3d& q, const Vector3d& a, const Vector3d& b, const Vector3d& c) {
  const Vector3d ab = b - a, ac = c - a, aq = q - a;
  const double d1 = ab.dot(aq), d2 = ac.dot(aq);
  if (d1 <= 0 && d2 <= 0) return {1, 0, 0};
  const Vector3d bq = q - b;
  const double d3 = ab.dot(bq), d4 = ac.dot(bq);
  if (d3 >= 0 && d4 <= d3) return {0, 1, 0};
  const double vc = d1 * d4 - d3 * d2;
  if (vc <= 0 && d1 >= 0 && d3 <= 0) {
    const double v = d1 - d3 > 0 ? d1 / (d1 - d3) : 0;
    return {1 - v, v, 0};
  }
  const Vector3d cq = q - c;
  const double d5 = ab.dot(cq), d6 = ac.dot(cq);
  if (d6 >= 0 && d5 <= d6) return {0, 0, 1};
  const double vb = d5 * d2 - d1 * d6;
  if (vb <= 0 && d2 >= 0 && d6 <= 0) {
    const double w = d2 - d6 > 0 ? d2 / (d2 - d6) : 0;
    return {1 - w, 0, w};
  }
  const double va = d3 * d6 - d5 * d4;
  if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
    const double span = (d4 - d3) + (d5 - d6);
    const double w = span > 0 ? (d4 - d3) / span : 0;
    return {0, 1 - w, w};
  }
  const double sum = va + vb + vc;
  if (!(sum > 0))
    return {1, 0, 0};  // a sliver without area: one of its corners is as near as makes no difference
  return {va / sum, vb / sum, vc / sum};
}

Vector3d clamp_weights(const Vector3d& weights) {
  const Vector3d w = weights.cwiseMax(0.0);
  return w / w.sum();
}

double corner_angle(const Vector3d& a, const Vector3d& b, const Vector3d& c) {
  const Vector3d u = b - a, v = c - a;
  return std::atan2(u.cross(v).norm(), u.dot(v));
}

Vector3d tangent_part(const Vector3d& v, const Vector3d& normal) {
  return (v - v.dot(normal) * normal).normalized();
}

}  // namespace scalpmark::geometry
