#include "geometry/field/round_head.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <vector>

#include "geometry/base/error.h"

namespace scalpmark::geometry {

using Eigen::Matrix4d;
using Eigen::Vector3d;
using Eigen::Vector4d;

namespace {

/// So many triangles of the whole head are enough.
constexpr size_t triangles_looked_at = 8000;
constexpr size_t fewest_pieces = 12;
constexpr double least_radius_mm = 40, most_radius_mm = 250;
/// Tukey's constant, and what turns a median into a standard deviation of normal errors.
constexpr double tukey = 4.685, median_to_sd = 1.4826;
/// Scales no smaller than this, mm: a perfect sphere has none.
constexpr double least_scale_mm = 0.1;
constexpr int most_fit_rounds = 40;
constexpr double fit_settled_mm = 1e-5;

struct Piece {
  Vector3d at;  ///< from the point it is all around
  double area, weight;
};

std::vector<Piece> pieces_near(const Surface& skin, const Vector3d& around) {
  const size_t count = skin.triangles().size(), step = std::max<size_t>(1, count / triangles_looked_at);
  std::vector<Piece> pieces;
  for (size_t i = 0; i < count; i += step) {
    const int f = static_cast<int>(i);
    const Vector3d at = (skin.corner(f, 0) + skin.corner(f, 1) + skin.corner(f, 2)) / 3 - around;
    if (at.squaredNorm() > fitted_mm * fitted_mm) continue;
    const double area = skin.face_area(f);
    pieces.push_back({at, area, area});
  }
  return pieces;
}

[[noreturn]] void not_round() {
  throw GeometryError(
      Message::of("The skin around the coil is not round enough for the round model head; move the coil."));
}

/// |p - c|^2 = r^2 is linear in c and r^2 - |c|^2; then centre and radius.
Vector4d algebraic(const std::vector<Piece>& pieces) {
  Matrix4d normal = Matrix4d::Zero();
  Vector4d right = Vector4d::Zero();
  for (const Piece& p : pieces) {
    const Vector4d row(2 * p.at.x(), 2 * p.at.y(), 2 * p.at.z(), 1);
    normal += p.weight * row * row.transpose();
    right += p.weight * p.at.squaredNorm() * row;
  }
  const Eigen::FullPivLU<Matrix4d> lu(normal);
  if (!lu.isInvertible()) not_round();
  Vector4d fit = lu.solve(right);
  fit[3] = std::sqrt(std::max(0.0, fit[3] + fit.head<3>().squaredNorm()));
  return fit;
}

double miss(const Piece& piece, const Vector4d& fit) {
  return (piece.at - fit.head<3>()).norm() - fit[3];
}

void weigh_pieces(std::vector<Piece>& pieces, const Vector4d& fit) {
  std::vector<double> misses;
  misses.reserve(pieces.size());
  for (const Piece& p : pieces) misses.push_back(std::abs(miss(p, fit)));
  auto sorted = misses;
  const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
  std::nth_element(sorted.begin(), middle, sorted.end());
  const double reach = tukey * std::max(least_scale_mm, median_to_sd * *middle);
  for (size_t i = 0; i < pieces.size(); ++i) {
    const double share = misses[i] / reach;
    pieces[i].weight = share < 1 ? pieces[i].area * std::pow(1 - share * share, 2) : 0;
  }
}

/// One step of Gauss and Newton.
Vector4d fit_step(const std::vector<Piece>& pieces, const Vector4d& fit) {
  Matrix4d normal = Matrix4d::Zero();
  Vector4d right = Vector4d::Zero();
  for (const Piece& p : pieces) {
    if (p.weight == 0) continue;
    const Vector3d out = p.at - fit.head<3>();
    Vector4d row;
    row << -out.normalized(), -1;
    normal += p.weight * row * row.transpose();
    right -= p.weight * (out.norm() - fit[3]) * row;
  }
  const Eigen::FullPivLU<Matrix4d> lu(normal);
  if (!lu.isInvertible()) not_round();
  return lu.solve(right);
}

}  // namespace

RoundHead round_head(const Surface& skin, const Vector3d& around) {
  std::vector<Piece> pieces = pieces_near(skin, around);
  if (pieces.size() < fewest_pieces)
    throw GeometryError(
        Message::of("There is too little skin around the coil for the round model head; move the coil."));
  Vector4d fit = algebraic(pieces);
  for (int round = 0; round < most_fit_rounds; ++round) {
    weigh_pieces(pieces, fit);
    const Vector4d by = fit_step(pieces, fit);
    fit += by;
    if (by.cwiseAbs().maxCoeff() < fit_settled_mm) break;
  }
  // Inside the skin, not in front of it.
  const Vector3d outward = skin.smooth_normal(skin.closest(around));
  if (!(fit[3] >= least_radius_mm && fit[3] <= most_radius_mm) || !(fit.head<3>().dot(outward) < 0))
    not_round();
  double squares = 0, weights = 0;
  for (const Piece& p : pieces) {
    squares += p.weight * miss(p, fit) * miss(p, fit);
    weights += p.weight;
  }
  return {around + fit.head<3>(), fit[3], std::sqrt(squares / weights)};
}

}  // namespace scalpmark::geometry
