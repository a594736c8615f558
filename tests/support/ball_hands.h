#pragma once
// What hands do on a ball, in closed form.
#include <Eigen/Dense>
#include <cmath>
#include <functional>
#include <vector>

#include "tests/support/ball_tolerance.h"

namespace scalpmark::tests {

/// The whole procedure on a perfect sphere whose tragi, nasion and inion lie on the equator, in closed form
/// (great circles, small circles, rotations): patient's left, tape rule. What may be off is handed in. The
/// coil is laid by least squares of what is missed: its edge off its mark, the site mark off its centre line,
/// its angle off the eye's, each over its standard deviation.
struct Sphere {
  double lateral = 50, anterior = 10, distance = 50, reach = 60, angle_deg = 45;
  double lay_reach = 60, eye_deg = 45;
  double edge_sd = 0.05, site_sd = 0.05, eye_sd_deg = 0.05;
  /// The cap put on again, about the ball's middle: over the top toward the nose and toward the right, mm,
  /// and turned, the nose's side to the right.
  double cap_forward = 0, cap_side = 0, cap_turn_deg = 0;

  static Eigen::Vector3d forward(const Eigen::Vector3d& n) {
    return n.cross(Eigen::Vector3d::UnitX()).normalized();
  }
  static Eigen::Vector3d outward(const Eigen::Vector3d& n) { return n.cross(forward(n)); }
  static Eigen::Vector3d go(const Eigen::Vector3d& n, const Eigen::Vector3d& way, double mm) {
    return std::cos(mm / R) * n + std::sin(mm / R) * way;
  }
  static Eigen::Vector3d front(const Eigen::Vector3d& n, double angle_deg) {
    const double a = angle_deg * M_PI / 180;
    return std::cos(a) * forward(n) - std::sin(a) * outward(n);
  }
  /// Along the parasagittal circle, radius R sqrt(1 - x2).
  static Eigen::Vector3d go_forward(const Eigen::Vector3d& n, double mm) {
    return Eigen::AngleAxisd(-mm / (R * std::sqrt(1 - n.x() * n.x())), Eigen::Vector3d::UnitX()) * n;
  }
  Eigen::Vector3d site() const {
    const Eigen::Vector3d start = go_forward({-std::sin(lateral / R), 0, std::cos(lateral / R)}, anterior);
    return go_forward(start, distance);
  }
  Eigen::Vector3d with_cap(const Eigen::Vector3d& n) const {
    const Eigen::Vector3d by(-cap_forward / R, cap_side / R, -cap_turn_deg * M_PI / 180);
    if (by.isZero(0)) return n;
    return Eigen::AngleAxisd(by.norm(), by.normalized()) * n;
  }
  Eigen::Vector4d misses(const Eigen::Vector3d& n, double deg, const Eigen::Vector3d& site_mark,
                         const Eigen::Vector3d& edge_mark) const {
    const Eigen::Vector3d d = R * (edge_mark - go(n, front(n, deg), lay_reach));
    const Eigen::Vector3d greater = front(n, deg + 90);
    return {d.dot(forward(edge_mark)) / edge_sd, d.dot(outward(edge_mark)) / edge_sd,
            R * (site_mark - n).dot(greater) / site_sd, (eye_deg - deg) / eye_sd_deg};
  }
  Eigen::Vector3d pulse() const {
    const Eigen::Vector3d made_at = site();
    const Eigen::Vector3d edge_mark = with_cap(go(made_at, front(made_at, angle_deg), reach));
    const Eigen::Vector3d site_mark = with_cap(made_at);
    // Gauss and Newton, slopes by small differences.
    Eigen::Vector3d n = made_at;
    double deg = angle_deg;
    constexpr double small = 1e-5;
    for (int round = 0; round < 30; ++round) {
      const Eigen::Vector3d f = forward(n), o = outward(n);
      const Eigen::Vector4d now = misses(n, deg, site_mark, edge_mark);
      Eigen::Matrix<double, 4, 3> slope;
      slope.col(0) = (misses((n + small * f).normalized(), deg, site_mark, edge_mark) - now) / small;
      slope.col(1) = (misses((n + small * o).normalized(), deg, site_mark, edge_mark) - now) / small;
      slope.col(2) = (misses(n, deg + small, site_mark, edge_mark) - now) / small;
      const Eigen::Vector3d step = -slope.colPivHouseholderQr().solve(now);
      n = (n + step[0] * f + step[1] * o).normalized();
      deg += step[2];
    }
    return R * n;
  }
};

/// Mean squares of the closed form's offsets from the planned pulse by central differences.
inline Eigen::Matrix2d expected(const std::vector<std::function<void(Sphere&, double)>>& slips,
                                const Sphere& sure = Sphere()) {
  const Eigen::Vector3d aim = sure.pulse(), n = aim.normalized();
  const auto off = [&](const std::function<void(Sphere&, double)>& slip, double by) {
    Sphere s = sure;
    slip(s, by);
    const Eigen::Vector3d d = s.pulse() - aim;
    return Eigen::Vector2d(d.dot(Sphere::forward(n)), d.dot(Sphere::outward(n)));
  };
  Eigen::Matrix2d sum = Eigen::Matrix2d::Zero();
  for (const auto& slip : slips) {
    const Eigen::Vector2d d = 0.5 * (off(slip, 1) - off(slip, -1));
    sum += d * d.transpose();
  }
  return sum;
}

}  // namespace scalpmark::tests
