#include "geometry/brain/thin_plate.h"

#include <Eigen/Dense>
#include <algorithm>

#include "geometry/base/error.h"

namespace scalpmark::geometry {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::Vector3d;

namespace {

constexpr Index fewest = 6;
/// Points flatter than this share of their extent are taken to lie in one plane.
constexpr double flat_share = 1e-3;

}  // namespace

ThinPlate ThinPlate::fit(const std::vector<Vector3d>& from, const std::vector<Vector3d>& to,
                         double slack_mm) {
  const auto n = static_cast<Index>(from.size());
  if (from.size() != to.size() || n < fewest)
    throw GeometryError(Message::of(
        "A smooth map needs at least %1 pairs of points, the same number on both sides.", fewest));
  MatrixXd homogeneous(n, 4), target(n, 3);
  ThinPlate map;
  map.knots_.resize(3, n);
  for (Index i = 0; i < n; ++i) {
    const Vector3d &a = from[static_cast<size_t>(i)], &b = to[static_cast<size_t>(i)];
    if (!a.allFinite() || !b.allFinite())
      throw GeometryError(Message::of("A point of a smooth map is not a number; place it again."));
    map.knots_.col(i) = a;
    homogeneous.row(i) << a.transpose(), 1;
    target.row(i) = b.transpose();
  }
  const MatrixXd centred = map.knots_.colwise() - map.knots_.rowwise().mean();
  const Vector3d spread = Eigen::JacobiSVD<MatrixXd>(centred).singularValues();
  if (!(spread[2] > flat_share * spread[0]))
    throw GeometryError(
        Message::of("The points of a smooth map lie in one plane; they must go round the head."));

  const MatrixXd affine = homogeneous.colPivHouseholderQr().solve(target);  // 4 x 3
  map.affine_.matrix().topRows<3>() = affine.transpose();

  // [K P; P' 0] with the kernel -r, which makes K positive where P' is 0; the slack adds to K's diagonal.
  MatrixXd system = MatrixXd::Zero(n + 4, n + 4), right = MatrixXd::Zero(n + 4, 3);
  for (Index i = 0; i < n; ++i)
    for (Index j = 0; j < n; ++j)
      system(i, j) = i == j ? slack_mm : -(map.knots_.col(i) - map.knots_.col(j)).norm();
  system.topRightCorner(n, 4) = homogeneous;
  system.bottomLeftCorner(4, n) = homogeneous.transpose();
  right.topRows(n) = target - homogeneous * affine;
  const Eigen::FullPivLU<MatrixXd> factors(system);
  if (!factors.isInvertible())
    throw GeometryError(Message::of("Two points of a smooth map lie in one place; place them apart."));
  const MatrixXd solved = factors.solve(right);
  map.weights_ = solved.topRows(n).transpose();
  map.whole_ = map.affine_;
  map.whole_.matrix().topRows<3>() += solved.bottomRows(4).transpose();
  for (Index i = 0; i < n; ++i)
    map.worst_mm_ = std::max(map.worst_mm_, (map(map.knots_.col(i)) - to[static_cast<size_t>(i)]).norm());
  return map;
}

Vector3d ThinPlate::operator()(const Vector3d& p) const {
  Vector3d out = whole_ * p;
  for (Index i = 0; i < knots_.cols(); ++i) out -= (p - knots_.col(i)).norm() * weights_.col(i);
  return out;
}

}  // namespace scalpmark::geometry
