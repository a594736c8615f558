#include "geometry/hands/scatter.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "geometry/base/angles.h"

namespace scalpmark::geometry {

using Eigen::Matrix2d;
using Eigen::Vector2d;

namespace {

/// Nobody draws or sees a region thinner than this, mm: a pencil line.
constexpr double pencil_line_mm = 0.5;

double normal_below(double z) {
  return 0.5 * std::erfc(-z / std::sqrt(2.0));
}

/// The share of a normal scatter, its axes those of the plane, within a circle around (0, 0).
double share_within_circle(const Vector2d& middle, const Vector2d& deviations, double radius) {
  // Slices square to the first axis, each a difference of two normal distributions.
  constexpr int slices = 240;
  constexpr double reach = 6;
  double inside = 0, all = 0;
  for (int i = 0; i < slices; ++i) {
    const double z = reach * (2 * (i + 0.5) / slices - 1);
    const double weight = std::exp(-0.5 * z * z);
    all += weight;
    const double x = middle[0] + deviations[0] * z;
    const double half_squared = radius * radius - x * x;
    if (half_squared < 0) continue;
    const double half = std::sqrt(half_squared);
    if (deviations[1] > 0)
      inside += weight * (normal_below((half - middle[1]) / deviations[1]) -
                          normal_below((-half - middle[1]) / deviations[1]));
    else if (std::abs(middle[1]) <= half)
      inside += weight;
  }
  return inside / all;
}

}  // namespace

double folded_mean(double mean, double deviation) {
  if (!(deviation > 0)) return std::abs(mean);
  const double z = mean / deviation;
  return deviation * std::sqrt(2 / pi) * std::exp(-0.5 * z * z) + mean * std::erf(z / std::sqrt(2.0));
}

Vector2d mean_of(const Scatter& scatter) {
  Vector2d mean(0, 0);
  for (const auto& c : scatter.clusters) mean += c.share * c.middle;
  return mean;
}

Matrix2d covariance_of(const Scatter& scatter) {
  const Vector2d mean = mean_of(scatter);
  Matrix2d all = scatter.covariance;
  for (const auto& c : scatter.clusters) all += c.share * (c.middle - mean) * (c.middle - mean).transpose();
  return all;
}

double mean_square(const Scatter& scatter) {
  double sum = scatter.covariance.trace();
  for (const auto& c : scatter.clusters) sum += c.share * c.middle.squaredNorm();
  return sum;
}

double mean_distance(const Scatter& scatter) {
  constexpr int directions = 360;
  double sum = 0;
  for (int i = 0; i < directions; ++i) {
    const double a = pi * (i + 0.5) / directions;
    const Vector2d way(std::cos(a), std::sin(a));
    const double deviation = std::sqrt(std::max(0.0, way.dot(scatter.covariance * way)));
    for (const auto& c : scatter.clusters) sum += c.share * folded_mean(c.middle.dot(way), deviation);
  }
  return 0.5 * pi * sum / directions;
}

Matrix2d shape_for(const Matrix2d& covariance) {
  return covariance + pencil_line_mm * pencil_line_mm * Matrix2d::Identity();
}

double share_within(const Scatter& scatter, const EllipseForm& ellipse) {
  // In the plane in which the ellipse is a circle.
  const Matrix2d to_circle = Eigen::SelfAdjointEigenSolver<Matrix2d>(ellipse.shape).operatorInverseSqrt();
  const Eigen::SelfAdjointEigenSolver<Matrix2d> axes(to_circle * scatter.covariance * to_circle);
  const Vector2d deviations = axes.eigenvalues().cwiseMax(0).cwiseSqrt();
  double share = 0;
  for (const auto& c : scatter.clusters)
    share += c.share *
             share_within_circle(axes.eigenvectors().transpose() * to_circle * (c.middle - ellipse.centre),
                                 deviations, std::sqrt(ellipse.size));
  return share;
}

EllipseForm region_holding(double share, const Scatter& scatter) {
  EllipseForm e;
  e.centre = mean_of(scatter);
  e.shape = shape_for(covariance_of(scatter));
  const auto holds = [&](double size) {
    e.size = size;
    return share_within(scatter, e) >= share;
  };
  if (holds(0)) return e;
  double low = 0, high = 1;
  constexpr double most = 1e9;
  while (!holds(high) && high < most) high *= 4;
  for (int i = 0; i < 40; ++i) {
    const double middle = 0.5 * (low + high);
    (holds(middle) ? high : low) = middle;
  }
  e.size = high;
  return e;
}

EllipseForm region_holding(double share, const std::vector<Vector2d>& points) {
  EllipseForm e;
  if (points.empty()) return e;
  const auto count = static_cast<double>(points.size());
  for (const auto& p : points) e.centre += p / count;
  Matrix2d covariance = Matrix2d::Zero();
  for (const auto& p : points)
    covariance += (p - e.centre) * (p - e.centre).transpose() / std::max(1.0, count - 1);
  e.shape = shape_for(covariance);
  const Matrix2d inverse = e.shape.inverse();
  std::vector<double> sizes;
  sizes.reserve(points.size());
  for (const auto& p : points) sizes.push_back((p - e.centre).dot(inverse * (p - e.centre)));
  e.size = quantile(std::move(sizes), share);
  return e;
}

double quantile(std::vector<double> values, double share) {
  if (values.empty()) return 0;
  const auto at = static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1));
  std::nth_element(values.begin(), values.begin() + at, values.end());
  return values[static_cast<size_t>(at)];
}

}  // namespace scalpmark::geometry
