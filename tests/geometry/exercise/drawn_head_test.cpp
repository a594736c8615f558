#include "geometry/exercise/drawn_head.h"

#include <Eigen/Dense>
#include <catch2/catch.hpp>
#include <cmath>
#include <vector>

#include "geometry/base/ranges.h"

using namespace scalpmark::geometry;
using Eigen::Matrix3d;
using Eigen::Vector3d;

namespace {

Vector3d tapes_of(std::uint32_t number) {
  const MeasuredTapes tapes = drawn_tapes(number);
  return {*tapes.nasion_inion_mm, *tapes.tragus_tragus_mm, *tapes.circumference_mm};
}

/// Half an ellipse over the top, or all of one around, by the complete elliptic integral of the second kind.
double around(double a, double b) {
  const double long_mm = std::max(a, b), short_mm = std::min(a, b);
  return 4 * long_mm * std::comp_ellint_2(std::sqrt(1 - short_mm * short_mm / (long_mm * long_mm)));
}
Vector3d tapes_of_size(const Vector3d& size) {
  const double l = size[0] / 2, b = size[1] / 2, h = size[2];
  return {around(l, h) / 2, around(b, h) / 2, around(l, b)};
}

}  // namespace

TEST_CASE("the same number draws the same head for a whole class, another number another") {
  CHECK(tapes_of(7) == tapes_of(7));
  CHECK((tapes_of(7) - tapes_of(8)).norm() > 1);
}

TEST_CASE("heads drawn for many numbers are sized as large surveys found adults") {
  constexpr int count = 20000;
  std::vector<Vector3d> all;
  Vector3d mean = Vector3d::Zero();
  for (std::uint32_t number = 0; number < count; ++number) {
    all.push_back(tapes_of(number));
    mean += all.back() / count;
    CHECK(ranges::nasion_inion_mm.holds(all.back()[0]));
    CHECK(ranges::tragus_tragus_mm.holds(all.back()[1]));
    CHECK(ranges::circumference_mm.holds(all.back()[2]));
  }
  Matrix3d covariance = Matrix3d::Zero();
  for (const Vector3d& tapes : all) covariance += (tapes - mean) * (tapes - mean).transpose() / (count - 1);
  const Vector3d sd = covariance.diagonal().cwiseSqrt();
  // Large anthropometric surveys (memory): nasion-inion 360 (15); tragus-tragus men 352 (13), women 341 (14);
  // circumference men 574 (16), women 561 (18). Men and women as often: the mean of both, and a spread that
  // the difference of their means widens. What is beyond 3 spreads is left out, which narrows a normal
  // distribution's spread to 0.987 of itself (elementary: truncated normal).
  const double narrowed = 0.987;
  const Vector3d survey_mean{360, 346.5, 567.5};
  const Vector3d survey_sd{narrowed * 15,
                           std::sqrt(narrowed * narrowed * (13 * 13 + 14 * 14) / 2 + 5.5 * 5.5),
                           std::sqrt(narrowed * narrowed * (16 * 16 + 18 * 18) / 2 + 6.5 * 6.5)};
  for (int k = 0; k < 3; ++k) {
    INFO(k);
    CHECK(mean[k] == Approx(survey_mean[k]).margin(0.4));
    CHECK(sd[k] == Approx(survey_sd[k]).epsilon(0.02));
  }
  // How they go together within men and within women: as the tapes of ellipsoids 194 long, 150.5 broad and
  // 128.5 high whose length, breadth and height vary by 7, 5 and 6 mm each on its own (surveys, memory;
  // elliptic integrals). What men and women differ by adds to tragus-tragus and circumference together.
  Matrix3d slope;
  const Vector3d size{194, 150.5, 128.5};
  for (int k = 0; k < 3; ++k)
    slope.col(k) =
        (tapes_of_size(size + 0.5 * Vector3d::Unit(k)) - tapes_of_size(size - 0.5 * Vector3d::Unit(k)));
  const Matrix3d ellipsoids = slope * Vector3d(49, 25, 36).asDiagonal() * slope.transpose();
  const auto share = [&](int i, int j) {
    return ellipsoids(i, j) / std::sqrt(ellipsoids(i, i) * ellipsoids(j, j));
  };
  const Vector3d within{15, std::sqrt((13 * 13 + 14 * 14) / 2.0), std::sqrt((16 * 16 + 18 * 18) / 2.0)};
  const auto expected = [&](int i, int j, double between) {
    return narrowed * narrowed * share(i, j) * within[i] * within[j] + between;
  };
  CHECK(covariance(0, 1) == Approx(expected(0, 1, 0)).epsilon(0.06));
  CHECK(covariance(0, 2) == Approx(expected(0, 2, 0)).epsilon(0.08));
  CHECK(covariance(1, 2) == Approx(expected(1, 2, 5.5 * 6.5)).epsilon(0.08));
  CHECK(share(0, 2) > 0.3);
}
