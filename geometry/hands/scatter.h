#pragma once

#include <Eigen/Core>
#include <vector>

namespace scalpmark::geometry {

/// A flat scatter: so large a share of it lies around each middle, normal, all with one covariance. mm.
struct Scatter {
  struct Cluster {
    double share = 1;  ///< all add up to 1
    Eigen::Vector2d middle = Eigen::Vector2d::Zero();
  };
  Eigen::Matrix2d covariance = Eigen::Matrix2d::Zero();
  std::vector<Cluster> clusters{{}};
};

[[nodiscard]] Eigen::Vector2d mean_of(const Scatter& scatter);
/// Of all clusters together, about their mean, mm2.
[[nodiscard]] Eigen::Matrix2d covariance_of(const Scatter& scatter);
/// The mean squared distance from (0, 0), mm2.
[[nodiscard]] double mean_square(const Scatter& scatter);
/// The average distance from (0, 0), mm. Half the integral, over all directions, of how far off along each
/// it is on average; along a line that is a folded normal distribution's mean (Leone et al. 1961,
/// Technometrics 3:543-550, memory). One cluster in the middle: sqrt(2 / pi) times the larger standard
/// deviation times the complete elliptic integral of the second kind.
[[nodiscard]] double mean_distance(const Scatter& scatter);

/// The mean of |x| where x is normal (the folded normal distribution's).
[[nodiscard]] double folded_mean(double mean, double deviation);

/// An ellipse by its quadratic form: where (x - centre)' inverse(shape) (x - centre) is at most `size`.
struct EllipseForm {
  Eigen::Vector2d centre = Eigen::Vector2d::Zero();
  Eigen::Matrix2d shape = Eigen::Matrix2d::Identity();  ///< mm2
  double size = 0;
};

/// The shape for a region of a scatter with this covariance: its own, but nowhere thinner than a pencil line.
/// So a scatter along a line has a region of some breadth around it.
[[nodiscard]] Eigen::Matrix2d shape_for(const Eigen::Matrix2d& covariance);

/// The share of a scatter within an ellipse, 0 to 1 (to about 0.0005).
[[nodiscard]] double share_within(const Scatter& scatter, const EllipseForm& ellipse);
/// The size at which the ellipse around the scatter's mean, of the shape for it, holds that share of it: the
/// quantile of its own quadratic form, whatever its eigenvalues.
[[nodiscard]] EllipseForm region_holding(double share, const Scatter& scatter);
/// The same for points.
[[nodiscard]] EllipseForm region_holding(double share, const std::vector<Eigen::Vector2d>& points);

/// The value that `share` (0 to 1) of them do not exceed; 0 of none.
[[nodiscard]] double quantile(std::vector<double> values, double share);

}  // namespace scalpmark::geometry
